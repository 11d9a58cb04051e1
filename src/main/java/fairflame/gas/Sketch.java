package fairflame.gas;

import fairflame.gas.Drawing.Anchor;
import fairflame.gas.Drawing.Ink;
import fairflame.gas.Drawing.Words;
import fairflame.quantity.Pressure;
import fairflame.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects the shapes of a layout drawing: pipe in its looks, words, and the signs of joints, regulators and verdicts. */
final class Sketch {
    private static final double DISC = 11;
    private static final double BAR = 28;

    private final List<Drawing.Shape> shapes = new ArrayList<>();
    private final Wording wording;

    Sketch(Wording wording) {
        this.wording = wording;
    }

    List<Drawing.Shape> shapes() {
        return shapes;
    }

    /** How pipe is drawn: told apart by breaks and by lines within lines as well as by colour. */
    enum Look {
        ENOUGH(Ink.INK, 3, List.of()),
        TOO_SMALL(Ink.OXIDE, 4.5, List.of(10.0, 5.0)),
        NEW(Ink.COPPER, 6, List.of());

        private final Ink ink;
        private final double width;
        private final List<Double> dashes;

        Look(Ink ink, double width, List<Double> dashes) {
            this.ink = ink;
            this.width = width;
            this.dashes = dashes;
        }
    }

    /** Full bar within, half bar at the edge, broken bar outside: the verdict without its colour. */
    enum Verdict {
        ENOUGH(Ink.MOSS, "enough pressure"),
        EDGE(Ink.AMBER, "only just enough"),
        TOO_LOW(Ink.OXIDE, "pressure too low");

        // Inches of water above the minimum below which another appliance or a cold day may matter; a choice, no
        // source.
        private static final double THIN = 0.5;

        private final Ink ink;
        private final String words;

        Verdict(Ink ink, String words) {
            this.ink = ink;
            this.words = words;
        }

        Ink ink() {
            return ink;
        }

        static Verdict of(PressureProfile.OutletState outlet) {
            if (!outlet.enough()) {
                return TOO_LOW;
            }
            var above =
                    outlet.pressure().inchesWater() - outlet.inlet().minimum().inchesWater();
            return above < THIN ? EDGE : ENOUGH;
        }
    }

    void words(double x, double y, Anchor anchor, Style style, String text) {
        shapes.add(new Words(x, y, anchor, style.size, style.bold, style.ink, wording.of(text)));
    }

    void words(double x, double y, Style style, String text) {
        words(x, y, Anchor.START, style, text);
    }

    /** How words are set. */
    record Style(double size, boolean bold, Ink ink) {
        static final Style HEADING = new Style(20, true, Ink.INK);
        static final Style NAME = new Style(14, true, Ink.INK);
        static final Style PIPE = new Style(13, true, Ink.INK);
        static final Style PLAIN = new Style(12, false, Ink.INK);
        static final Style SMALL = new Style(11, false, Ink.SLATE);
        static final Style FLOW = new Style(11, false, Ink.LAGOON);
        static final Style PRESSURE = new Style(11, true, Ink.LAGOON);

        static Style remark(Ink ink) {
            return new Style(12, true, ink);
        }
    }

    void pipe(double x1, double x2, double y, Look look) {
        shapes.add(new Drawing.Line(x1, y, x2, y, look.ink, look.width, look.dashes));
        if (look == Look.NEW) {
            shapes.add(new Drawing.Line(x1, y, x2, y, Ink.PAPER, 1.4, List.of()));
        }
    }

    /** The join between what leaves one node: no pipe, only a hint for the eye. */
    void riser(double x, double y1, double y2) {
        shapes.add(new Drawing.Line(x, y1, x, y2, Ink.SLATE, 1.5, List.of()));
    }

    void joint(double x, double y) {
        shapes.add(new Drawing.Disc(x, y, 4.5, Ink.PAPER, Ink.INK, 2));
    }

    void box(double x, double y, double width, double height, Ink outline) {
        shapes.add(new Drawing.Box(x, y, width, height, 5, Ink.WHITE, outline, 1.5));
    }

    void regulator(double x, double y, PressureProfile.RegulatorState state) {
        var ink = state.enough() ? Ink.LAGOON : Ink.OXIDE;
        shapes.add(new Drawing.Disc(x, y, DISC, Ink.WHITE, ink, 2));
        words(x, y + 4.5, Anchor.MIDDLE, new Style(13, true, ink), "R");
    }

    void verdict(Verdict verdict, double x, double y) {
        var filled = switch (verdict) {
            case ENOUGH -> BAR;
            case EDGE -> BAR / 2;
            case TOO_LOW -> BAR * 0.4;
        };
        if (verdict == Verdict.TOO_LOW) {
            shapes.add(new Drawing.Box(x + BAR - filled, y - 8, filled, 8, 0, verdict.ink, verdict.ink, 0));
        } else {
            shapes.add(new Drawing.Box(x, y - 8, BAR, 8, 0, Ink.WHITE, verdict.ink, 1));
        }
        shapes.add(new Drawing.Box(x, y - 8, filled, 8, 0, verdict.ink, verdict.ink, 0));
        words(x + BAR + 8, y, Style.remark(verdict.ink), verdict.words);
    }

    void legend(double left, double y) {
        var x = sample(left, y, Look.ENOUGH, "pipe");
        x = sample(x, y, Look.TOO_SMALL, "too small");
        x = sample(x, y, Look.NEW, "new pipe");
        words(x, y + 4, Style.SMALL, "R  line regulator.  All pressures with everything firing.");
    }

    private double sample(double x, double y, Look look, String text) {
        pipe(x, x + 40, y, look);
        var words = new Words(x + 48, y + 4, Anchor.START, 11, false, Ink.SLATE, wording.of(text));
        shapes.add(words);
        return x + 48 + words.about() + 20;
    }

    /** One decimal below 1.5 psi, two in psi. */
    static String one(Pressure pressure) {
        return pressure.psi() < FlowEquation.SPLIT_PSI - 1e-9
                ? String.format(Locale.ROOT, "%.1f in w.c.", pressure.inchesWater())
                : String.format(Locale.ROOT, "%.2f psi", pressure.psi());
    }

    /** What an appliance gets beside what it needs; a second decimal where one would make them look alike. */
    static String against(PressureProfile.OutletState outlet) {
        var gets = outlet.pressure();
        var needs = outlet.inlet().minimum();
        var printed = gets.psi() < FlowEquation.SPLIT_PSI - 1e-9 ? gets.inchesBeside(needs) + " in w.c." : one(gets);
        return "gets " + printed + ", needs " + one(needs);
    }
}
