package fairflame.document;

import fairflame.agreement.CancelRight;
import fairflame.agreement.SignedRevision;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Framed;
import fairflame.document.page.Grid;
import fairflame.document.page.Ink;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Role;
import fairflame.document.page.RuleLine;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Stroke;
import fairflame.document.page.Together;
import fairflame.quote.Quote;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The notice of the right to cancel, in two copies: one to keep, one to send. Filled in when the quote is signed, else
 * with empty lines. Asked for by 16 CFR 429.1(b).
 */
final class CancelNotice {
    private static final double ROOM = 26;

    private final Quote quote;
    private final PaperText text;

    CancelNotice(Quote quote, PaperText text) {
        this.quote = quote;
        this.text = text;
    }

    /** Two copies; nothing when the signed order gives no such right. */
    Optional<Block> block(Optional<SignedRevision> signed) {
        var right = signed.flatMap(CancelRight::of);
        if (signed.isPresent() && right.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Together(Stack.of(
                new Space(14),
                copy(1, right),
                new Space(16),
                new RuleLine(Stroke.dashed(Ink.SLATE, 0.9)),
                new Space(16),
                copy(2, right))));
    }

    private Block copy(int number, Optional<CancelRight> right) {
        var figures = text.figures();
        var blank = text.say(Label.CANCEL_BLANK);
        var signedOn = right.map(each -> figures.date(each.signed())).orElse(blank);
        var lastDay = right.map(each -> figures.date(each.lastDay())).orElse(blank);
        var inside = new ArrayList<Block>();
        inside.add(Paragraph.heading(Role.HEADING_2, text.say(Label.CANCEL_TITLE), Type.SECTION));
        inside.add(Paragraph.of(text.say(Label.CANCEL_COPY, Integer.toString(number)), Type.QUIET));
        inside.add(new Space(5));
        inside.add(Paragraph.of(text.say(Label.CANCEL_SIGNED_ON, signedOn), Type.STRONG));
        inside.add(Paragraph.of(text.say(Label.CANCEL_LAST_DAY, lastDay), Type.STRONG));
        inside.add(new Space(5));
        inside.add(Bullets.marked("\u2022", sentences(), Type.STRONG));
        inside.add(new Space(5));
        inside.add(Paragraph.of(text.say(Label.CANCEL_ORDER, quote.number()), Type.STRONG));
        inside.add(Grid.beside(
                new Columns(List.of(Columns.share(5), Columns.share(3)), 16), line(Label.SIGNATURE), line(Label.DATE)));
        return Framed.of(new Stack(inside), 12, Ink.WHITE, Stroke.solid(Ink.SLATE, 0.8));
    }

    private List<String> sentences() {
        var seller = quote.seller();
        return text.cancelNotice(
                Integer.toString(quote.rules().cancelDays()), seller.name(), String.join(", ", seller.address()));
    }

    private Block line(Label label) {
        return Stack.of(
                new Space(ROOM), new RuleLine(Type.RULE), new Space(2), Paragraph.of(text.say(label), Type.QUIET));
    }
}
