package fairflame.gas;

import fairflame.Refusal;
import fairflame.gas.Drawing.Anchor;
import fairflame.gas.Drawing.Ink;
import fairflame.gas.Sketch.Look;
import fairflame.gas.Sketch.Style;
import fairflame.wording.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A layout as a drawing: source on the left, appliances on the right; on every segment its size, length, flow and the
 * pressure at its end with everything firing. What is too small is broken, red and says so; what is new is double,
 * copper and says so. Too small is a segment that the code's table finds too small and behind which an appliance has too
 * little or a run loses more than is allowed; one that the table finds too small while the pressure holds says that, for
 * the inspector may ask.
 */
public final class LayoutDrawing {
    private static final double MARGIN = 24;
    private static final double SOURCE = 150;
    private static final double COLUMN = 236;
    private static final double STUB = 40;
    private static final double APPLIANCE = 216;
    private static final double HALF = 40;
    private static final double ROW = 114;
    private static final double HEAD = 64;
    private static final double FOOT = 52;
    private static final int LONGEST_NAME = 26;

    private final GasTables tables;
    private final Layout layout;
    private final PressureProfile profile;
    private final Map<String, Pipe> was;
    private final List<LineRegulator> stood;
    private final PipeTree tree;
    private final DrawnPlaces places;
    private final Map<String, String> byTable;
    private final Set<String> starving;
    private final Wording wording;
    private final Sketch sketch;

    private LayoutDrawing(GasTables tables, Layout before, Layout layout, Wording wording) {
        this.wording = wording;
        this.sketch = new Sketch(wording);
        this.tables = tables;
        this.layout = layout;
        this.was = new HashMap<>();
        this.stood = before.regulators();
        before.segments().forEach(segment -> was.put(segment.id(), segment.pipe()));
        this.profile = PressureProfile.of(tables, layout, Firing.all(layout));
        this.tree = new PipeTree(layout);
        this.places = new DrawnPlaces(layout, tree);
        this.byTable = byTable();
        this.starving = starving();
    }

    /** The layout as it is. */
    public static Drawing of(GasTables tables, Layout layout, String heading) {
        return of(tables, layout, heading, Wording.ENGLISH);
    }

    /** The layout as it is, with the words of a language. */
    public static Drawing of(GasTables tables, Layout layout, String heading, Wording wording) {
        return new LayoutDrawing(tables, layout, layout, wording).drawing(heading);
    }

    /** The layout as it will be; pipe that differs from the layout before is marked as new. */
    public static Drawing after(GasTables tables, Layout before, Layout after, String heading) {
        return new LayoutDrawing(tables, before, after, Wording.ENGLISH).drawing(heading);
    }

    /** Before above, after below. */
    public static Drawing beforeAndAfter(GasTables tables, Layout before, Plan plan) {
        return beforeAndAfter(tables, before, plan, Wording.ENGLISH);
    }

    /** Before above, after below, with the words of a language. */
    public static Drawing beforeAndAfter(GasTables tables, Layout before, Plan plan, Wording wording) {
        var above = of(tables, before, "Before", wording);
        var below = new LayoutDrawing(tables, before, plan.after(), wording)
                .drawing("After: " + plan.kind().words());
        var shapes = new ArrayList<>(above.shapes());
        shapes.addAll(below.moved(0, above.height()).shapes());
        return new Drawing(
                wording.of("Gas piping before and after: " + plan.kind().words()),
                Math.max(above.width(), below.width()),
                above.height() + below.height(),
                shapes);
    }

    private Drawing drawing(String heading) {
        sketch.words(MARGIN, 30, Style.HEADING, heading);
        sketch.words(MARGIN, 48, Style.SMALL, layout.site());
        tree.downstream().forEach(this::riser);
        tree.downstream().forEach(this::segment);
        layout.appliances().forEach(this::appliance);
        tree.downstream().forEach(segment -> sketch.joint(x(segment.to()), y(segment.to())));
        source();
        var width = MARGIN * 2 + SOURCE + places.lastColumn() * COLUMN + STUB + APPLIANCE;
        var height = HEAD + places.rows() * ROW + FOOT;
        sketch.legend(MARGIN, height - 22);
        return new Drawing(wording.of(heading + ": gas piping of " + layout.site()), width, height, sketch.shapes());
    }

    /** Segments that the table finds too small, and what it asks for there. None where piping cannot be sized. */
    private Map<String, String> byTable() {
        try {
            return Sizing.of(tables, layout, Method.usualFor(layout)).segments().stream()
                    .filter(size -> !size.enough())
                    .collect(Collectors.toMap(
                            size -> size.id(),
                            size -> size.required()
                                    .map(pipe -> "needs " + size(pipe))
                                    .orElse("no size carries it")));
        } catch (Refusal notSized) {
            return Map.of();
        }
    }

    private static String size(Pipe pipe) {
        return pipe.material() == Material.CSST ? "EHD " + pipe.size() : pipe.size() + " in";
    }

    /** Segments behind which an appliance has too little, or a run of their zone loses more than is allowed. */
    private Set<String> starving() {
        var into = new HashMap<String, Segment>();
        layout.segments().forEach(segment -> into.put(segment.to(), segment));
        var starving = new HashSet<String>();
        for (var appliance : layout.appliances()) {
            var outlet = profile.appliance(appliance.id());
            var allowed = layout.drop().under(outlet.supply()).inchesWater();
            if (!outlet.enough() || outlet.drop().inchesWater() > allowed + 1e-6) {
                for (var at = into.get(appliance.node()); at != null; at = into.get(at.from())) {
                    starving.add(at.id());
                }
            }
        }
        for (var regulator : profile.regulators()) {
            if (regulator.starved()) {
                layout.segments().forEach(segment -> starving.add(segment.id()));
            }
        }
        return starving;
    }

    private double x(String node) {
        return MARGIN + SOURCE + places.column(node) * COLUMN;
    }

    private static double y(int row) {
        return HEAD + row * ROW + ROW / 2;
    }

    private double y(String node) {
        return y(places.nodeRow(node));
    }

    private void riser(Segment segment) {
        if (y(segment.to()) != y(segment.from())) {
            sketch.riser(x(segment.from()), y(segment.from()), y(segment.to()));
        }
    }

    private Look look(Segment segment) {
        if (!segment.pipe().equals(was.get(segment.id()))) {
            return Look.NEW;
        }
        return byTable.containsKey(segment.id()) && starving.contains(segment.id()) ? Look.TOO_SMALL : Look.ENOUGH;
    }

    private void segment(Segment segment) {
        var left = x(segment.from());
        var right = x(segment.to());
        var y = y(segment.to());
        sketch.pipe(left, right, y, look(segment));
        var begin = left + 14;
        if (tree.regulatorBefore(segment.id()).isPresent()) {
            var state = regulator(segment.id());
            sketch.regulator(left + 24, y, state);
            begin = left + 44;
            setting(begin, y - 40, state);
        }
        labels(segment, begin, right - 8, y);
    }

    private void setting(double x, double y, PressureProfile.RegulatorState state) {
        var words = "set to " + Sketch.one(state.regulator().outlet());
        if (stood.contains(state.regulator())) {
            sketch.words(x, y, Style.PRESSURE, words);
        } else {
            sketch.words(x, y, Style.remark(Ink.COPPER), "new, " + words);
        }
    }

    private PressureProfile.RegulatorState regulator(String before) {
        return profile.regulators().stream()
                .filter(one -> one.regulator().before().equals(before))
                .findFirst()
                .orElseThrow();
    }

    private void labels(Segment segment, double begin, double end, double y) {
        var state = profile.segment(segment.id());
        sketch.words(begin, y - 24, Style.PIPE, segment.pipe().words());
        sketch.words(begin, y - 9, Style.SMALL, length(segment, state));
        sketch.words(begin, y + 17, Style.FLOW, Figures.cfh(state.flow().cubicFeetPerHour()));
        sketch.words(end, y + 17, Anchor.END, Style.PRESSURE, Sketch.one(state.to()));
        if (look(segment) == Look.NEW) {
            sketch.words(begin, y + 33, Style.remark(Ink.COPPER), renewed(segment));
        } else if (look(segment) == Look.TOO_SMALL) {
            sketch.words(begin, y + 33, Style.remark(Ink.OXIDE), "too small: " + byTable.get(segment.id()));
        } else if (byTable.containsKey(segment.id())) {
            var asked = byTable.get(segment.id());
            sketch.words(begin, y + 33, Style.SMALL, "pressure holds (table: " + asked + ")");
        }
    }

    private String renewed(Segment segment) {
        return Optional.ofNullable(was.get(segment.id()))
                .map(old -> "new, was " + (old.material() == segment.pipe().material() ? size(old) : old.words()))
                .orElse("new");
    }

    private static String length(Segment segment, PressureProfile.SegmentState state) {
        var feet = Figures.feet(segment.route().length());
        var fittings = state.equivalent().feet() - segment.route().length().feet();
        return fittings < 0.5
                ? feet
                : feet + ", " + Figures.three(state.equivalent().feet()) + " ft with fittings";
    }

    private void appliance(Appliance appliance) {
        var node = appliance.node();
        var y = y(places.applianceRow(appliance.id()));
        var left = x(node);
        if (y != y(node)) {
            sketch.riser(left, y(node), y);
        }
        sketch.pipe(left, left + STUB, y, Look.ENOUGH);
        var box = left + STUB;
        var outlet = profile.appliance(appliance.id());
        var verdict = Sketch.Verdict.of(outlet);
        if (tree.regulatorBefore(appliance.id()).isPresent()) {
            var state = regulator(appliance.id());
            sketch.regulator(left + STUB / 2, y, state);
            setting(box, y - HALF - 6, state);
        }
        sketch.box(box, y - HALF, APPLIANCE, 2 * HALF, verdict.ink());
        sketch.words(box + 12, y - 20, Style.NAME, shortened(appliance.name()));
        sketch.words(box + 12, y - 4, Style.SMALL, heat(appliance));
        sketch.words(box + 12, y + 12, Style.PLAIN, Sketch.against(outlet));
        sketch.verdict(verdict, box + 12, y + 29);
    }

    private String heat(Appliance appliance) {
        return String.format(Locale.ROOT, "%,.0f Btu/h, ", appliance.input().btuPerHour())
                + Figures.cfh(layout.load(appliance).cubicFeetPerHour());
    }

    private void source() {
        var source = layout.source();
        var y = y(source.node());
        var name = source.kind().words();
        var rated = source.capacity().map(rating -> "rated " + Figures.cfh(rating.cubicFeetPerHour()));
        var supply = SupplyCheck.of(layout);
        var over = supply.answer() == SupplyCheck.Answer.OVER_RATING;
        sketch.box(MARGIN, y - HALF, SOURCE, 2 * HALF, over ? Ink.OXIDE : Ink.INK);
        sketch.words(
                MARGIN + 12, y - 19, Style.NAME, name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1));
        sketch.words(MARGIN + 12, y - 2, Style.PRESSURE, Sketch.one(source.underLoad()));
        sketch.words(MARGIN + 12, y + 14, Style.SMALL, rated.orElse("rating not known"));
        var load = "load " + Figures.cfh(supply.load().cubicFeetPerHour());
        sketch.words(
                MARGIN + 12, y + 30, over ? Style.remark(Ink.OXIDE) : Style.SMALL, over ? load + ", too much" : load);
        sketch.joint(MARGIN + SOURCE, y);
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 3) + "...";
    }
}
