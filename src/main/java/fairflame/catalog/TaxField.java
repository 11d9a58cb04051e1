package fairflame.catalog;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import java.util.List;
import java.util.Set;

/** Reads the tax rule of a place. */
final class TaxField {
    private TaxField() {}

    /** The rule; a place that charges no tax has to say {@code layers: none}. */
    static TaxRule read(YamlEntry tax) {
        tax.only("layers", "taxable", "layersCombined", "roundedPer", "rounding", "source");
        return new TaxRule(
                layers(tax),
                taxable(tax),
                tax.read("layersCombined", Fields::flag),
                tax.read("roundedPer", TaxField::perItem),
                tax.read("rounding", Rounding::parse),
                tax.text("source"));
    }

    private static List<TaxRule.Layer> layers(YamlEntry tax) {
        var field = tax.field("layers");
        if (field.node().isTextual()) {
            return field.as(text -> {
                if (!text.equals("none")) {
                    throw Refusal.malformed("tax layers", text, "a list of layers, or none for a place without tax");
                }
                return List.of();
            });
        }
        var layers = tax.items("layers").stream().map(TaxField::layer).toList();
        if (layers.isEmpty()) {
            throw Refusal.missing("tax layer", "a name and a rate, or none for a place without tax")
                    .at(field.where());
        }
        return layers;
    }

    private static TaxRule.Layer layer(YamlEntry layer) {
        layer.only("name", "rate");
        return new TaxRule.Layer(layer.text("name"), layer.read("rate", TaxField::rate));
    }

    private static Percent rate(String text) {
        var rate = Percent.parse(text);
        if (rate.value().signum() < 0 || rate.value().intValue() > 50) {
            throw Refusal.outOfRange("tax rate", text + " %", "0 to 50 %");
        }
        return rate;
    }

    private static Set<String> taxable(YamlEntry tax) {
        tax.field("taxable");
        tax.items("taxable")
                .forEach(kind -> kind.as(text -> {
                    if (!TaxRule.KINDS.contains(text)) {
                        throw Refusal.unknown("kind of line", text, String.join(", ", TaxRule.KINDS));
                    }
                    return text;
                }));
        return Set.copyOf(tax.texts("taxable"));
    }

    private static boolean perItem(String text) {
        return switch (text) {
            case "item" -> true;
            case "document" -> false;
            default -> throw Refusal.unknown("rounding level", text, "item, document");
        };
    }
}
