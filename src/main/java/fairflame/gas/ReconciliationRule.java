package fairflame.gas;

import fairflame.gas.Reconciliation.Band;
import fairflame.gas.Reconciliation.Verdict;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges whether pipe size explains a dip. Common practice, no source: pipe is sold only where it loses most of the dip
 * and where what it loses is what it must lose at this flow.
 */
final class ReconciliationRule {
    // The pipe's share of the whole dip, from which it is all of the fault, and from which it is part of it.
    private static final double NEARLY_ALL = 0.8;
    private static final double HALF = 0.5;

    private final Measured measured;
    private final Band band;
    private final String source;
    private final double pipe;

    ReconciliationRule(Layout layout, Measured measured, Band band) {
        this.measured = measured;
        this.band = band;
        this.source = layout.source().kind().words();
        this.pipe = measured.pipeDip().inchesWater();
    }

    Reconciliation judge() {
        if (shareOfPipe() < HALF) {
            return answer(Verdict.DOES_NOT_EXPLAIN, beforeThePipe(), "most of the dip is lost before the pipe begins");
        }
        if (pipe < band.lowest()) {
            return answer(
                    Verdict.DOES_NOT_EXPLAIN,
                    doubtfulReading(),
                    "the pipe must lose more than was measured: a reading, the flow or the layout is wrong");
        }
        if (pipe > band.highest()) {
            return band.predicted() >= HALF * pipe
                    ? answer(Verdict.EXPLAINS_PART, restriction(), "pipe size explains part of it")
                    : answer(Verdict.DOES_NOT_EXPLAIN, restriction(), "pipe size does not explain it");
        }
        return shareOfPipe() < NEARLY_ALL
                ? answer(
                        Verdict.EXPLAINS_PART,
                        beforeThePipe(),
                        "pipe size explains its own part, the rest is lost before it")
                : answer(Verdict.EXPLAINS, List.of(), "pipe size explains it" + meterUnread());
    }

    /** All of the dip where the meter was not read, and where there is no dip to share. */
    private double shareOfPipe() {
        var dip = measured.dip().inchesWater();
        return measured.meterFiring().isEmpty() || dip == 0 ? 1 : pipe / dip;
    }

    private String meterUnread() {
        return measured.meterFiring().isEmpty()
                ? "; read the pressure at the " + source + " while firing before pipe is ordered"
                : "";
    }

    private List<String> beforeThePipe() {
        return List.of(
                "the " + source + ": its rating against the load, pressure in front of it where the supplier allows",
                "the service regulator: setting, size, vent",
                "the gas supplier's line: call the supplier");
    }

    private List<String> restriction() {
        var look = new ArrayList<String>();
        if (measured.meterFiring().isEmpty()) {
            look.add("pressure at the " + source + " while firing: tells pipe from " + source);
            look.add("the regulator");
            look.add("the " + source);
        }
        look.add("every valve on the way: fully open, and the same pressure on both sides");
        look.add("a blockage: water, rust, debris, a crushed piece");
        look.add("the flexible connector at the appliance: too small or kinked");
        look.add("pipe that is smaller than the layout says");
        return look;
    }

    private List<String> doubtfulReading() {
        var look = new ArrayList<String>();
        look.add("the gauge: a slow one does not show the dip; repeat with a fast one and everything firing");
        if (measured.clocked().isEmpty()) {
            look.add("the flow: clock the meter, the appliance may burn less than its plate says");
        }
        look.add("lengths, sizes and fittings of the layout");
        return look;
    }

    private Reconciliation answer(Verdict verdict, List<String> lookAt, String conclusion) {
        var where = measured.meterFiring()
                .map(meter -> source + " " + one(meter.inchesWater()) + ", appliance "
                        + one(measured.firing().inchesWater()))
                .orElseGet(() -> "still " + one(measured.still().inchesWater()) + ", firing "
                        + one(measured.firing().inchesWater()));
        var words = "Measured loss " + one(pipe) + " in w.c. (" + where + "); the pipe by itself loses "
                + one(band.predicted()) + " at " + Figures.cfh(band.flow().cubicFeetPerHour()) + " ("
                + one(band.lowest()) + " to " + one(band.highest()) + " as lengths, flow and gauges are uncertain): "
                + conclusion + ".";
        return new Reconciliation(
                verdict,
                measured.pipeDip(),
                Pressure.ofInchesWater(band.predicted()),
                Pressure.ofInchesWater(band.lowest()),
                Pressure.ofInchesWater(band.highest()),
                lookAt,
                words);
    }

    private static String one(double inches) {
        return String.format(java.util.Locale.ROOT, "%.1f", inches);
    }
}
