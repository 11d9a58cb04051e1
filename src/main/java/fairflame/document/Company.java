package fairflame.document;

import fairflame.Refusal;
import fairflame.quote.Party;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The shop as its papers show it.
 *
 * @param seller name, address, phone and mail
 * @param tagline printed under the name; empty for none
 * @param licence licences as printed in the head; empty for none
 * @param insurance as printed in the head; empty for none
 * @param mark what is drawn beside the name
 * @param pay how an invoice can be paid, a line each
 * @param country two letters of ISO 3166-1, for electronic invoices
 * @param taxRegistration number under which the shop collects sales tax; empty when it makes no electronic invoices
 */
public record Company(
        Party seller,
        String tagline,
        String licence,
        String insurance,
        Mark mark,
        List<String> pay,
        String country,
        String taxRegistration) {
    static final String FILE = "company.yaml";

    public Company {
        pay = List.copyOf(pay);
    }

    /** What an electronic invoice says of the seller beyond the letterhead. */
    public UblSeller electronic() {
        try {
            return new UblSeller(country, taxRegistration);
        } catch (Refusal refusal) {
            throw refusal.at(FILE);
        }
    }

    /** Drawn beside the name. */
    public enum Mark {
        FLAME_OVER_WATER,
        NONE;

        private static Mark parse(String text) {
            return switch (text) {
                case "flame-over-water" -> FLAME_OVER_WATER;
                case "none" -> NONE;
                default ->
                    throw Refusal.unknown("mark", text, "flame-over-water, none")
                            .at(FILE);
            };
        }
    }

    static Company parse(Map<String, String> files, String language) {
        var yaml = Yaml.of(files, FILE)
                .only(Set.of(
                        "name",
                        "tagline",
                        "address",
                        "phone",
                        "email",
                        "licence",
                        "insurance",
                        "mark",
                        "pay",
                        "country",
                        "tax-registration"));
        var seller = new Party(yaml.text("name"), yaml.texts("address"), yaml.text("phone"), yaml.text("email"), "");
        return new Company(
                seller,
                yaml.textIfTold("tagline", language),
                yaml.textIfTold("licence", language),
                yaml.textIfTold("insurance", language),
                Mark.parse(yaml.text("mark")),
                yaml.texts("pay", language),
                yaml.textOr("country", "US"),
                yaml.textIfTold("tax-registration", language));
    }
}
