package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Fittings and valves as feet of straight pipe: the printed length where there is one, else the ratio of length to bore;
 * for CSST a fixed length each.
 */
final class FittingBook {
    private final Map<String, Fitting> fittings;
    private final Map<String, Double> printed;

    private FittingBook(Map<String, Fitting> fittings, Map<String, Double> printed) {
        this.fittings = fittings;
        this.printed = printed;
    }

    private record Fitting(String words, double ratio, double csstFeet) {}

    static FittingBook read(String kinds, String lengths) {
        var fittings = new LinkedHashMap<String, Fitting>();
        for (var row : CsvRows.read("fittings.csv", kinds, "fitting", "words", "ratio", "csst_ft", "source")) {
            row.text("source");
            fittings.put(
                    row.text("fitting"),
                    new Fitting(row.text("words"), row.positive("ratio"), row.positive("csst_ft")));
        }
        var printed = new HashMap<String, Double>();
        for (var row :
                CsvRows.read("fitting-lengths.csv", lengths, "material", "size", "fitting", "length_ft", "source")) {
            row.text("source");
            var pipe = new Pipe(Material.parse(row.text("material")), row.text("size"));
            printed.put(key(pipe, row.text("fitting")), row.positive("length_ft"));
        }
        return new FittingBook(Map.copyOf(fittings), Map.copyOf(printed));
    }

    private static String key(Pipe pipe, String fitting) {
        return pipe.material().word() + " " + pipe.size() + " " + fitting;
    }

    /** Refuses a fitting that the book does not know. */
    void check(String fitting) {
        if (!fittings.containsKey(fitting)) {
            throw Refusal.unknown(
                    "fitting",
                    fitting,
                    String.join(", ", fittings.keySet().stream().sorted().toList()));
        }
    }

    String words(String fitting) {
        check(fitting);
        return fitting(fitting).words();
    }

    /** Equivalent length of so many fittings of each kind, the bore in inches where the pipe has one. */
    Length equivalent(Pipe pipe, Optional<Double> bore, Map<String, Integer> counts) {
        double feet = 0;
        for (var entry : counts.entrySet()) {
            feet += entry.getValue() * one(pipe, bore, entry.getKey());
        }
        return Length.ofFeet(feet);
    }

    private double one(Pipe pipe, Optional<Double> bore, String name) {
        check(name);
        var fitting = fitting(name);
        var known = printed.get(key(pipe, name));
        if (known != null) {
            return known;
        }
        return bore.map(inches -> fitting.ratio() * inches / 12).orElse(fitting.csstFeet());
    }

    private Fitting fitting(String name) {
        var fitting = fittings.get(name);
        if (fitting == null) {
            throw new IllegalStateException("unchecked fitting " + name);
        }
        return fitting;
    }
}
