package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.HeatingValue;
import fairflame.quantity.Length;
import fairflame.quantity.Measure;
import fairflame.quantity.Pressure;
import java.util.Map;
import java.util.Optional;

/** Reads a layout from JSON text; the format is docs/formats/layout.schema.json. Every measure carries its unit. */
public final class LayoutReader {
    private final GasTables tables;

    /** A reader that knows the sizes and fittings of these tables. */
    public LayoutReader(GasTables tables) {
        this.tables = tables;
    }

    /** Reads one layout; refusals name the field, and the edge adds the file. */
    public Layout read(String json) {
        var fields = JsonFields.of(json)
                .only("site", "gas", "altitude", "source", "drop", "segments", "regulators", "appliances", "diversity");
        var gas = gas(fields.object("gas"));
        return new Layout(
                fields.text("site"),
                gas,
                fields.readOptional("altitude", Length::parse).orElse(Length.ofFeet(0)),
                source(fields.object("source"), gas),
                fields.objects("segments").stream().map(this::segment).toList(),
                fields.objects("regulators").stream()
                        .map(one -> regulator(one, gas))
                        .toList(),
                fields.objects("appliances").stream().map(this::appliance).toList(),
                fields.optionalObject("drop").map(LayoutReader::drop).orElse(DesignDrop.ofCode()),
                fields.optionalObject("diversity").map(LayoutReader::diversity));
    }

    private static Gas gas(JsonFields fields) {
        fields.only("fuel", "specificGravity", "heatingValue");
        var fuel = fields.read("fuel", Fuel::parse);
        return fields.make(() -> Gas.of(
                fuel, fields.number("specificGravity"), fields.readOptional("heatingValue", HeatingValue::parse)));
    }

    private static Source source(JsonFields fields, Gas gas) {
        fields.only("kind", "node", "pressure", "firing", "capacity");
        return fields.make(() -> new Source(
                fields.read("kind", Source.Kind::parse),
                fields.text("node"),
                fields.read("pressure", Pressure::parse),
                fields.readOptional("firing", Pressure::parse),
                fields.readOptional("capacity", text -> capacity(text, gas))));
    }

    /** Meters are stamped with a flow, tank regulators often with a heat rate. */
    private static GasFlow capacity(String text, Gas gas) {
        try {
            return GasFlow.parse(text);
        } catch (Refusal noFlow) {
            try {
                return HeatRate.of(Measure.parse(Dimension.HEAT_RATE, text)).flow(gas.heatingValue());
            } catch (Refusal noHeat) {
                throw Refusal.malformed("capacity", text, "a gas flow such as 630cfh or a heat rate such as 850kbtu/h");
            }
        }
    }

    private Segment segment(JsonFields fields) {
        fields.only("id", "from", "to", "material", "size", "length", "fittings", "fittingsLength", "place");
        return fields.make(() -> {
            var material = fields.read("material", Material::parse);
            var pipe = fields.read("size", text -> tables.known(new Pipe(material, text)));
            return new Segment(fields.text("id"), fields.text("from"), fields.text("to"), pipe, route(fields));
        });
    }

    private Route route(JsonFields fields) {
        return new Route(
                fields.read("length", Length::parse),
                new Fittings(
                        fields.optionalObject("fittings").map(this::counts).orElse(Map.of()),
                        fields.readOptional("fittingsLength", Length::parse).orElse(Length.ofFeet(0))),
                fields.readOptional("place", Place::parse).orElse(Place.INDOORS));
    }

    private Map<String, Integer> counts(JsonFields fields) {
        var counts = fields.counts();
        fields.make(() -> {
            counts.keySet().forEach(tables::fittingWords);
            return counts;
        });
        return counts;
    }

    private static LineRegulator regulator(JsonFields fields, Gas gas) {
        fields.only("id", "before", "outlet", "capacity", "minimumInlet");
        return fields.make(() -> {
            var outlet = fields.read("outlet", Pressure::parse);
            return new LineRegulator(
                    fields.text("id"),
                    fields.text("before"),
                    outlet,
                    fields.read("capacity", text -> capacity(text, gas)),
                    fields.readOptional("minimumInlet", Pressure::parse)
                            .orElseGet(() -> LineRegulator.minimumInletFor(outlet)));
        });
    }

    private Appliance appliance(JsonFields fields) {
        fields.only("id", "node", "input", "minimum", "maximum", "inputAtSite", "ownLine");
        return fields.make(() -> new Appliance(
                fields.text("id"),
                fields.text("node"),
                fields.read("input", HeatRate::parse),
                new InletRange(fields.read("minimum", Pressure::parse), fields.read("maximum", Pressure::parse)),
                fields.readOptional("inputAtSite", HeatRate::parse),
                ownLine(fields)));
    }

    private Optional<Route> ownLine(JsonFields fields) {
        return fields.optionalObject("ownLine")
                .map(line -> line.only("length", "fittings", "fittingsLength", "place"))
                .map(line -> line.make(() -> route(line)));
    }

    private static DesignDrop drop(JsonFields fields) {
        fields.only("low", "elevated");
        var code = DesignDrop.ofCode();
        return new DesignDrop(
                fields.readOptional("low", Pressure::parse).orElse(code.low()),
                fields.readOptional("elevated", Pressure::parse).orElse(code.elevated()));
    }

    private static Diversity diversity(JsonFields fields) {
        fields.only("share", "reason");
        return fields.make(() -> new Diversity(
                fields.read(
                        "share",
                        text -> Measure.parse(Dimension.SHARE, text).value().doubleValue() / 100),
                fields.text("reason")));
    }
}
