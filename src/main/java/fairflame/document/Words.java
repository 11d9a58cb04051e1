package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Heading;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Role;
import fairflame.document.page.RuleLine;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.quote.Party;

/** Headings, labels and addresses as every paper sets them. */
final class Words {
    private Words() {}

    /** A heading over a part of the paper, with a rule that holds it to the page. */
    static Block section(String title) {
        return new Heading(Stack.of(
                new RuleLine(Type.QUIET_RULE),
                new Space(7),
                Paragraph.heading(Role.HEADING_2, title, Type.SECTION),
                new Space(4)));
    }

    static Block heading(String title) {
        return Paragraph.heading(Role.HEADING_3, title, Type.HEADING);
    }

    /** Small words over what they name. */
    static Block label(String words) {
        return new Heading(Paragraph.of(words, Type.LABEL));
    }

    /** Name, role, address, phone and mail. */
    static Block party(Party party, String role) {
        var name = role.isEmpty() ? party.name() : party.name() + ", " + role;
        var lines = new java.util.ArrayList<Block>();
        lines.add(Paragraph.of(name, Type.STRONG));
        party.address().forEach(line -> lines.add(Paragraph.of(line, Type.TEXT)));
        for (var line : java.util.List.of(party.phone(), party.email())) {
            if (!line.isBlank()) {
                lines.add(Paragraph.of(line, Type.TEXT));
            }
        }
        return new Stack(lines);
    }
}
