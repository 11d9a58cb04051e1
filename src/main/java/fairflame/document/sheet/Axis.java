package fairflame.document.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the rows (or columns) of a template come to stand once some are repeated and others left out. */
final class Axis {
    private final List<Rule> rules;
    private final int[] firsts;
    private final int[] counts;
    private final int highest;

    /** @param highest last row or column that a spreadsheet can have */
    Axis(List<Rule> rules, Facts facts, int highest) {
        this.rules = List.copyOf(rules);
        this.highest = highest;
        this.firsts = new int[rules.size() + 1];
        this.counts = new int[rules.size()];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = rules.get(i).count(facts);
            firsts[i + 1] = firsts[i] + counts[i];
        }
    }

    /** From first to last, both included. */
    record Span(int first, int last) {
        boolean single() {
            return first == last;
        }
    }

    int count(int template) {
        return template < counts.length ? counts[template] : 1;
    }

    int size() {
        return firsts[counts.length];
    }

    /** Where a row stands; what lies beyond the template moves with its end. */
    int first(int template) {
        return template < firsts.length
                ? firsts[template]
                : Math.min(highest, template - counts.length + firsts[counts.length]);
    }

    /** All that became of one row, or the one of it that is being written; empty when it was left out. */
    Optional<Span> span(int template, Map<String, Integer> at) {
        return span(template, template, at, at);
    }

    /**
     * All that became of the rows from one to another; empty when all were left out.
     *
     * @param atFirst members being written, for the first row: without them a repeated row means all it became
     * @param atLast the same for the last row
     */
    Optional<Span> span(int from, int to, Map<String, Integer> atFirst, Map<String, Integer> atLast) {
        int start = from;
        while (start <= to && start < counts.length && counts[start] == 0) {
            start++;
        }
        int end = to;
        while (end >= start && end < counts.length && counts[end] == 0) {
            end--;
        }
        if (start > end) {
            return Optional.empty();
        }
        int first = first(start) + member(start, atFirst).orElse(0);
        int last = to >= highest ? highest : first(end) + member(end, atLast).orElse(count(end) - 1);
        return Optional.of(new Span(first, Math.max(first, last)));
    }

    private Optional<Integer> member(int template, Map<String, Integer> at) {
        return template < rules.size() ? rules.get(template).each().map(at::get) : Optional.empty();
    }
}
