package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.quote.Party;
import java.util.Locale;

/** Who it is for, where the work is, and what heater stands there. */
final class Parties {
    private Parties() {}

    static Block of(Label who, Party customer, Party site, Block third, PaperText text) {
        var role = customer.role().isBlank() ? "" : role(customer.role(), text);
        boolean same = customer.address().equals(site.address());
        Block place = same ? Paragraph.of(text.say(Label.SAME_ADDRESS), Type.TEXT) : Words.party(site, "");
        return Stack.of(
                Grid.beside(
                        Columns.equal(3, 16),
                        Stack.of(Words.label(text.say(who)), Words.party(customer, role)),
                        Stack.of(Words.label(text.say(Label.SITE)), place),
                        third),
                new Space(14));
    }

    /** What the plate says, and whose rules hold. */
    static Block heater(String heater, String place, PaperText text) {
        return Stack.of(
                Words.label(text.say(Label.HEATER)),
                Paragraph.of(capital(heater), Type.TEXT),
                Paragraph.of(text.say(Label.RULES_OF, place), Type.QUIET));
    }

    /** Begins with a capital letter. */
    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static String role(String role, PaperText text) {
        return switch (role) {
            case "owner" -> text.say(Label.ROLE_OWNER);
            case "tenant" -> text.say(Label.ROLE_TENANT);
            case "agent" -> text.say(Label.ROLE_AGENT);
            default -> role;
        };
    }
}
