package fairflame.document;

import fairflame.agreement.OnPaper;
import fairflame.agreement.Seal;
import fairflame.agreement.Signature;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Face;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Picture;
import fairflame.document.page.RuleLine;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Text;
import java.util.ArrayList;
import java.util.List;

/** The lines to sign on, empty or signed. */
final class SignatureBlock {
    private static final double ROOM = 40;

    private final PaperText text;

    SignatureBlock(PaperText text) {
        this.text = text;
    }

    Block empty() {
        return Grid.beside(
                new Columns(List.of(Columns.share(5), Columns.share(4), Columns.share(3)), 16),
                line(new Space(ROOM), Label.SIGNATURE),
                line(new Space(ROOM), Label.PRINTED_NAME),
                line(new Space(ROOM), Label.SIGNED_ON));
    }

    Block signed(Signature signature, Seal seal) {
        var figures = text.figures();
        var at = signature.at();
        var name = text.say(Label.SIGNED_BY, signature.name(), Parties.role(signature.role(), text));
        Block drawn = signature.strokes().isEmpty()
                ? Stack.of(new Space(ROOM - 14), Paragraph.of(signature.name(), Type.FINDING.with(Face.ITALIC)))
                : new Picture(new StrokesDrawing(signature.strokes(), name));
        var facts = new ArrayList<Block>();
        facts.add(Paragraph.of(name, Type.STRONG));
        facts.add(Paragraph.of(
                text.say(Label.SIGNED_AT, figures.date(at.toLocalDate()), figures.clock(at), figures.zone(at)),
                Type.TEXT));
        if (signature.strokes().isEmpty()) {
            facts.add(Paragraph.of(text.say(Label.TYPED_NAME), Type.QUIET));
        }
        if (!signature.witness().isBlank()) {
            var label = signature.paper().isPresent() ? Label.RETURNED_TO : Label.WITNESS;
            facts.add(Paragraph.of(text.say(label, signature.witness()), Type.QUIET));
        }
        signature.paper().ifPresent(paper -> facts.addAll(returned(paper)));
        facts.add(new Space(5));
        facts.add(Paragraph.of(
                Text.of(text.say(Label.SEAL_TITLE) + ": ", Type.LABEL).and(text.say(Label.SEAL_WORDS), Type.QUIET)));
        facts.add(Paragraph.of(seal.chain(), Type.TINY_FIGURES));
        return Grid.beside(Columns.equal(2, 20), line(drawn, Label.SIGNATURE), new Stack(facts));
    }

    private List<Block> returned(OnPaper paper) {
        var figures = text.figures();
        return List.of(
                Paragraph.of(
                        text.say(Label.ON_PAPER, figures.date(paper.dated()), figures.date(paper.returned())),
                        Type.TEXT),
                Paragraph.of(text.say(Label.ON_PAPER_FILE, paper.file(), paper.sha256()), Type.TINY_FIGURES));
    }

    private Block line(Block above, Label under) {
        return Stack.of(above, new RuleLine(Type.RULE), new Space(2), Paragraph.of(text.say(under), Type.QUIET));
    }
}
