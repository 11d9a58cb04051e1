package fairflame.visit;

import fairflame.Refusal;
import fairflame.diagnosis.BypassLead;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Gate;
import fairflame.diagnosis.GateAnswer;
import fairflame.diagnosis.Knowledge;
import fairflame.diagnosis.RatingPlate;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Release;
import fairflame.gas.Fuel;
import fairflame.quantity.Dimension;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Measure;
import fairflame.quantity.Pressure;
import fairflame.quantity.Unit;
import fairflame.quote.LicensedPerson;
import fairflame.quote.Party;
import fairflame.wording.Language;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;

/**
 * Reads a visit from its JSON text. Every value carries its unit; unknown fields are refused. The format is described
 * in docs/formats/visit.md and visit.schema.json.
 */
public final class VisitFile {
    /** The format's name and edition, in every file. */
    public static final String FORMAT = "fairflame-visit-1";

    /** Field of the customer: the language that the customer reads. */
    static final String LANGUAGE = "language";

    private static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    private static final String[] FIELDS = {
        "format",
        "id",
        "date",
        "technician",
        "customer",
        "site",
        "jurisdiction",
        "heater",
        "complaint",
        "gates",
        "readings",
        "bypassLeads",
        "releases",
        "layout",
        "repair",
        "decision",
        "price"
    };

    private final Knowledge knowledge;
    private final CurrencyUnit currency;

    public VisitFile(Knowledge knowledge, CurrencyUnit currency) {
        this.knowledge = knowledge;
        this.currency = currency;
    }

    /** The visit in a text; refused as a whole when any field is. */
    public VisitRecord read(String json) {
        var top = Fields.of(json).only(FIELDS);
        top.word("format", Set.of(FORMAT));
        var id = top.text("id");
        if (!id.matches(ID)) {
            throw Refusal.malformed("field id", id, "up to 40 letters, digits, dots and dashes");
        }
        var prices = new PriceFields(currency);
        return new VisitRecord(
                id,
                date(top, "date"),
                top.text("technician"),
                top.optionalObject("customer").map(VisitFile::customer),
                top.optionalObject("site").map(VisitFile::party),
                top.optionalObject("customer").map(VisitFile::language).orElse(Language.ENGLISH),
                top.text("jurisdiction"),
                caseFile(top),
                top.raw("layout"),
                top.optionalObject("repair").map(VisitFile::repair).orElse(RepairTerms.NONE),
                new DecisionFields(prices).read(top.optionalObject("decision")),
                prices.read(top.optionalObject("price")),
                json);
    }

    private CaseFile caseFile(Fields top) {
        var complaint = knowledge.complaint(top.text("complaint")).id();
        return new CaseFile(
                complaint,
                plate(top.object("heater")),
                gates(top),
                top.objects("readings").stream().map(this::reading).toList(),
                top.objects("bypassLeads").stream().map(VisitFile::lead).toList(),
                top.objects("releases").stream().map(this::release).toList(),
                Optional.empty());
    }

    private Map<String, GateAnswer> gates(Fields top) {
        var answers = new LinkedHashMap<String, GateAnswer>();
        top.optionalObject("gates")
                .ifPresent(gates -> gates.named().forEach((gate, answer) -> {
                    refuseUnknownGate(gates.path(gate), gate);
                    switch (answer) {
                        case "yes" -> answers.put(gate, GateAnswer.YES);
                        case "no" -> answers.put(gate, GateAnswer.NO);
                        case "not asked" -> {}
                        default -> throw Refusal.unknown("field " + gates.path(gate), answer, "yes, no, not asked");
                    }
                }));
        return answers;
    }

    private void refuseUnknownGate(String place, String gate) {
        var known = knowledge.gates().stream().map(Gate::id).toList();
        if (!known.contains(gate)) {
            throw Refusal.unknown("field " + place, gate, String.join(", ", known));
        }
    }

    private Reading reading(Fields fields) {
        fields.only("check", "value", "instrument", "conditions", "seen", "note");
        try {
            var read = knowledge.reading(
                    fields.text("check"),
                    fields.text("value"),
                    fields.textOr("instrument", ""),
                    Set.copyOf(fields.texts("conditions")));
            return new Reading(
                    read.check(),
                    read.value(),
                    read.instrument(),
                    read.conditions(),
                    fields.flag("seen", true),
                    fields.textOr("note", ""));
        } catch (Refusal refusal) {
            throw refusal.at("field " + fields.place());
        }
    }

    private static BypassLead lead(Fields fields) {
        fields.only("device", "placedBy", "removed");
        return new BypassLead(fields.text("device"), fields.text("placedBy"), fields.flag("removed", false));
    }

    private Release release(Fields fields) {
        fields.only("gate", "name", "licence", "cause");
        refuseUnknownGate(fields.path("gate"), fields.text("gate"));
        return new Release(fields.text("gate"), fields.text("name"), fields.text("licence"), fields.text("cause"));
    }

    private static RatingPlate plate(Fields fields) {
        fields.only(
                "description",
                "fuel",
                "input",
                "inletMinimum",
                "inletMaximum",
                "manifold",
                "flameMinimum",
                "riseMaximum",
                "efficiency",
                "ageYears");
        var plate = new RatingPlate(
                fields.text("description"),
                Fuel.parse(fields.text("fuel")),
                measured(fields, "input", Dimension.HEAT_RATE, "10,000 to 5,000,000 Btu/h", 10_000, 5_000_000)
                        .map(HeatRate::of),
                pressure(fields, "inletMinimum"),
                pressure(fields, "inletMaximum"),
                pressure(fields, "manifold"),
                measured(fields, "flameMinimum", Dimension.CURRENT, "0.1 to 10 microampere", 0.1e-6, 10e-6)
                        .map(measure -> decimal(measure, Unit.MICROAMPERE)),
                measured(fields, "riseMaximum", Dimension.TEMPERATURE_RISE, "1 to 100 F", 1, 100)
                        .map(measure -> decimal(measure, Unit.FAHRENHEIT_RISE)),
                measured(fields, "efficiency", Dimension.SHARE, "50 to 99 %", 50, 99)
                        .map(measure -> decimal(measure, Unit.PERCENT)),
                fields.whole("ageYears", 0, 80));
        if (plate.inletMinimum().isPresent()
                && plate.inletMaximum().isPresent()
                && plate.inletMinimum().get().compareTo(plate.inletMaximum().get()) >= 0) {
            throw Refusal.notAllowed(
                    "field " + fields.path("inletMinimum"), fields.text("inletMinimum"), "less than inletMaximum");
        }
        return plate;
    }

    private static Optional<Pressure> pressure(Fields fields, String name) {
        return measured(fields, name, Dimension.PRESSURE, "0.1 to 60 in w.c.", 0.1, 60)
                .map(Pressure::of);
    }

    /** A measure in the range, both ends included, in base units. */
    private static Optional<Measure> measured(
            Fields fields, String name, Dimension dimension, String allowed, double lowest, double highest) {
        return fields.optional(name).map(text -> {
            var place = "field " + fields.path(name);
            try {
                var measure = Measure.parse(dimension, text);
                var base = measure.in(Unit.baseOf(dimension));
                if (base < lowest || base > highest) {
                    throw Refusal.outOfRange(dimension.words(), text, allowed);
                }
                return measure;
            } catch (Refusal refusal) {
                throw refusal.at(place);
            }
        });
    }

    private static BigDecimal decimal(Measure measure, Unit unit) {
        return measure.unit() == unit
                ? measure.value()
                : Measure.of(measure.in(unit), unit).value();
    }

    private static Party customer(Fields fields) {
        return person(fields.only("name", "address", "phone", "email", "role", LANGUAGE));
    }

    private static Party party(Fields fields) {
        return person(fields.only("name", "address", "phone", "email", "role"));
    }

    private static Language language(Fields customer) {
        var codes = Arrays.stream(Language.values()).map(Language::code).collect(Collectors.toSet());
        return customer.has(LANGUAGE) ? Language.of(customer.word(LANGUAGE, codes)) : Language.ENGLISH;
    }

    private static Party person(Fields fields) {
        var address = fields.texts("address");
        if (address.isEmpty()) {
            throw Refusal.missing("field " + fields.path("address"), "one line or more");
        }
        return new Party(
                fields.text("name"),
                address,
                fields.textOr("phone", ""),
                fields.textOr("email", ""),
                fields.has("role") ? fields.word("role", Set.of("owner", "tenant", "agent")) : "owner");
    }

    private static RepairTerms repair(Fields fields) {
        fields.only("partYears", "facts", "sizes", "raisedDelivery", "fitter");
        return new RepairTerms(
                fields.whole("partYears", 0, 80),
                Set.copyOf(fields.texts("facts")),
                fields.optionalObject("sizes").map(Fields::named).orElse(Map.of()),
                raised(fields),
                fields.optionalObject("fitter").map(VisitFile::fitter));
    }

    static LocalDate date(Fields fields, String name) {
        var text = fields.text(name);
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw Refusal.malformed("field " + fields.path(name), text, "a date such as 2026-06-03");
        }
    }

    private static Optional<Pressure> raised(Fields fields) {
        return fields.optional("raisedDelivery").map(text -> {
            try {
                return Pressure.parse(text);
            } catch (Refusal refusal) {
                throw refusal.at("field " + fields.path("raisedDelivery"));
            }
        });
    }

    private static LicensedPerson fitter(Fields fields) {
        fields.only("name", "licence", "expires");
        return new LicensedPerson(
                fields.text("name"),
                fields.text("licence"),
                fields.has("expires") ? Optional.of(date(fields, "expires")) : Optional.empty());
    }
}
