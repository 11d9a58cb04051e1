package fairflame.invoice.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How the jobs of one task under one condition went against its standard time. Only compares: a standard time changes
 * when a person accepts it.
 *
 * @param jobs how many
 * @param median of the hours worked
 * @param lower first quartile of the hours worked
 * @param upper third quartile
 * @param standard median of the standard times of the same jobs
 * @param ratio median of hours worked over standard, job by job
 * @param suggestion factor on the standard time; absent while there are too few jobs or the standard fits
 */
public record TimeComparison(
        String task,
        String condition,
        int jobs,
        BigDecimal median,
        BigDecimal lower,
        BigDecimal upper,
        BigDecimal standard,
        BigDecimal ratio,
        Optional<BigDecimal> suggestion) {
    /** Fewer jobs suggest nothing (common practice, no source). */
    public static final int ENOUGH_JOBS = 8;

    /** A standard within a tenth of the median job fits (common practice, no source). */
    private static final BigDecimal FITS = new BigDecimal("0.10");

    private static final int PLACES = 3;

    /** All comparisons, by task and condition. */
    public static List<TimeComparison> of(Collection<ActualHours> hours) {
        return hours.stream()
                .collect(Collectors.groupingBy(
                        job -> job.task() + "\n" + job.condition(), TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(TimeComparison::compare)
                .toList();
    }

    private static TimeComparison compare(List<ActualHours> jobs) {
        var actual = jobs.stream().map(ActualHours::actual).sorted().toList();
        var standard = jobs.stream().map(ActualHours::standard).sorted().toList();
        var ratios = jobs.stream()
                .map(job -> job.actual().divide(job.standard(), 6, RoundingMode.HALF_UP))
                .sorted()
                .toList();
        var ratio = quantile(ratios, 2);
        return new TimeComparison(
                jobs.get(0).task(),
                jobs.get(0).condition(),
                jobs.size(),
                quantile(actual, 2),
                quantile(actual, 1),
                quantile(actual, 3),
                quantile(standard, 2),
                ratio,
                suggestion(jobs.size(), ratio));
    }

    private static Optional<BigDecimal> suggestion(int jobs, BigDecimal ratio) {
        var off = ratio.subtract(BigDecimal.ONE).abs();
        return jobs < ENOUGH_JOBS || off.compareTo(FITS) <= 0
                ? Optional.empty()
                : Optional.of(ratio.setScale(2, RoundingMode.HALF_UP));
    }

    /** Quartile by linear interpolation between closest ranks (Hyndman and Fan 1996, definition 7). */
    static BigDecimal quantile(List<BigDecimal> sorted, int quarter) {
        var four = BigDecimal.valueOf(4);
        var place = BigDecimal.valueOf((long) (sorted.size() - 1) * quarter).divide(four);
        var below = place.intValue();
        var above = Math.min(below + 1, sorted.size() - 1);
        var part = place.subtract(BigDecimal.valueOf(below));
        var low = sorted.get(below);
        return low.add(sorted.get(above).subtract(low).multiply(part)).setScale(PLACES, RoundingMode.HALF_UP);
    }

    /** The jobs whose hours lie outside one and a half spreads of the quartiles (Tukey 1977), for a second look. */
    public static List<ActualHours> outliers(Collection<ActualHours> hours) {
        var found = new ArrayList<ActualHours>();
        for (var comparison : of(hours)) {
            var reach = comparison.upper().subtract(comparison.lower()).multiply(new BigDecimal("1.5"));
            hours.stream()
                    .filter(job -> job.task().equals(comparison.task())
                            && job.condition().equals(comparison.condition()))
                    .filter(job -> job.actual().compareTo(comparison.upper().add(reach)) > 0
                            || job.actual().compareTo(comparison.lower().subtract(reach)) < 0)
                    .forEach(found::add);
        }
        return found;
    }
}
