package fairflame.repair;

import fairflame.catalog.PairRule;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Value;
import fairflame.quantity.Resistance;
import java.util.List;
import java.util.Optional;

/** What the leak readings of one part of a pair prove. */
enum Dryness {
    DAMAGED("is damaged"),
    DAMP("is damp"),
    DRY("is proved dry, cold and warm"),
    /** Measured dry, but not both cold and warm: an intermittent leak shows only warm. */
    DRY_ONCE("measured dry, but not both cold and warm"),
    /** Not measured: it may be good, but nobody knows. */
    UNPROVED("is not measured");

    private static final String COLD = "cold";
    private static final String WARM = "warm";

    private final String words;

    Dryness(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    static Dryness of(PairRule rule, PairRule.Member member, List<Reading> readings) {
        var leaks = readings.stream()
                .filter(reading -> member.leakChecks().contains(reading.check()))
                .toList();
        var worst = lowest(leaks);
        if (worst.filter(ohms -> ohms.compareTo(rule.damagedBelow()) < 0).isPresent()) {
            return DAMAGED;
        }
        if (worst.filter(ohms -> ohms.compareTo(rule.dampBelow()) < 0).isPresent()) {
            return DAMP;
        }
        if (leaks.stream().noneMatch(Dryness::tellsSomething)) {
            return UNPROVED;
        }
        return measured(leaks, COLD) && measured(leaks, WARM) ? DRY : DRY_ONCE;
    }

    /** The lowest number among the readings; an open line has none. */
    static Optional<Resistance> lowest(List<Reading> readings) {
        return readings.stream().flatMap(reading -> ohms(reading).stream()).min(Resistance::compareTo);
    }

    /** Whether something was measured and all of it lies below the edge. */
    static boolean allBelow(List<Reading> readings, Resistance edge) {
        var measured = readings.stream()
                .filter(reading -> !(reading.value() instanceof Value.NotMeasured))
                .toList();
        return !measured.isEmpty()
                && measured.stream()
                        .allMatch(reading -> ohms(reading)
                                .filter(ohms -> ohms.compareTo(edge) < 0)
                                .isPresent());
    }

    private static Optional<Resistance> ohms(Reading reading) {
        return reading.value() instanceof Value.Measured measured
                ? Optional.of(Resistance.of(measured.measure()))
                : Optional.empty();
    }

    private static boolean measured(List<Reading> leaks, String when) {
        return leaks.stream()
                .filter(reading -> reading.conditions().contains(when))
                .anyMatch(Dryness::tellsSomething);
    }

    private static boolean tellsSomething(Reading reading) {
        return reading.value() instanceof Value.OpenLine || ohms(reading).isPresent();
    }
}
