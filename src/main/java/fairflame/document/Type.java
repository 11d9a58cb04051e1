package fairflame.document;

import fairflame.document.page.Dash;
import fairflame.document.page.Face;
import fairflame.document.page.Ink;
import fairflame.document.page.Stroke;
import fairflame.document.page.Style;

/** The styles of the paper: few sizes, none below 8 points. */
final class Type {
    static final Style TITLE = new Style(Face.BOLD, 26, 30, Ink.INK);
    static final Style NAME = new Style(Face.BOLD, 15, 18, Ink.INK);
    static final Style SECTION = new Style(Face.BOLD, 14, 18, Ink.INK);
    static final Style FINDING = new Style(Face.SEMIBOLD, 13, 17, Ink.INK);
    static final Style HEADING = new Style(Face.SEMIBOLD, 11, 14, Ink.INK);
    static final Style TEXT = new Style(Face.REGULAR, 10, 13.5, Ink.INK);
    static final Style STRONG = TEXT.with(Face.SEMIBOLD);
    static final Style SMALL = new Style(Face.REGULAR, 8.5, 11.5, Ink.INK);
    static final Style SMALL_STRONG = SMALL.with(Face.SEMIBOLD);
    static final Style QUIET = SMALL.with(Ink.SLATE);
    /** Small words over what they name. */
    static final Style LABEL = QUIET.with(Face.SEMIBOLD);
    /** What is still open is set in italic: pencilled, not printed. */
    static final Style OPEN = TEXT.with(Face.ITALIC);

    static final Style FIGURES = new Style(Face.MONO, 9, 13.5, Ink.INK);
    static final Style FIGURES_STRONG = FIGURES.with(Face.MONO_SEMIBOLD);
    static final Style TOTAL = new Style(Face.MONO_SEMIBOLD, 14, 18, Ink.INK);
    static final Style TINY_FIGURES = new Style(Face.MONO, 7.5, 10, Ink.SLATE);

    static final Stroke QUIET_RULE = Stroke.solid(Ink.RULE, 0.6);
    static final Stroke RULE = Stroke.solid(Ink.INK, 0.9);
    static final Stroke DOTTED_RULE = new Stroke(Ink.SLATE, 0.7, Dash.DOTTED);

    private Type() {}
}
