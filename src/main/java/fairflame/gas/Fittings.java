package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The fittings and valves of a stretch of pipe: counted by kind, or estimated as feet of the pipe that is there, or both.
 *
 * @param counts by fitting name of {@code fittings.csv}, each 0 to 200
 * @param estimated equivalent length of what was not counted, in the size that is installed
 */
public record Fittings(Map<String, Integer> counts, Length estimated) {
    private static final int MOST = 200;
    // 2018 IFGC A.3.1: an allowance is to be considered from four fittings on
    private static final int COUNTED_FROM = 4;

    public Fittings {
        counts.forEach((name, count) -> {
            if (count < 0 || count > MOST) {
                throw Refusal.outOfRange("number of " + name, count, "0 to " + MOST);
            }
        });
        counts = Collections.unmodifiableMap(new TreeMap<>(counts));
    }

    public static Fittings none() {
        return new Fittings(Map.of(), Length.ofFeet(0));
    }

    public static Fittings counted(Map<String, Integer> counts) {
        return new Fittings(counts, Length.ofFeet(0));
    }

    public static Fittings estimated(Length equivalent) {
        return new Fittings(Map.of(), equivalent);
    }

    /** How many were counted. */
    public int number() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Whether the sizing methods of the code make an allowance for them. */
    boolean countInSizing() {
        return number() >= COUNTED_FROM || estimated.feet() > 0;
    }

    /** Both together. */
    public Fittings plus(Fittings other) {
        var sum = new TreeMap<>(counts);
        other.counts.forEach((name, count) -> sum.merge(name, count, Integer::sum));
        return new Fittings(sum, estimated.plus(other.estimated));
    }
}
