package fairflame.document;

import fairflame.Refusal;

/**
 * What an electronic invoice says of the seller beyond the letterhead.
 *
 * @param country where seller, customer and site are, two letters of ISO 3166-1
 * @param taxRegistration number under which the shop collects sales tax (BT-32)
 */
public record UblSeller(String country, String taxRegistration) {
    public UblSeller {
        if (!country.matches("[A-Z]{2}")) {
            throw Refusal.malformed("country", country, "two letters of ISO 3166-1, such as US");
        }
        if (taxRegistration.isBlank()) {
            throw Refusal.missing(
                    "sales tax registration of the shop", "its number; EN 16931 (BR-S-02, BR-E-02) asks for it");
        }
    }
}
