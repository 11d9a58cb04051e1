package fairflame.repair;

import java.util.List;
import java.util.Set;

/**
 * One way to mend what was found: what a choice on the quote is made of.
 *
 * @param id short and stable: {@code both}, {@code one}, {@code larger-line}
 * @param title heading of the choice, plain words
 * @param plain what will be done, plain sentences
 * @param suggested true for exactly one scope of a repair
 * @param leavesUnfixed what this choice does not mend, plain words; empty when it mends all that was found
 * @param tests letters of the tests after the repair
 * @param extraNotes ids of notes that only this choice prints, such as {@code N-SINGLE}
 */
public record Scope(
        String id,
        String title,
        String plain,
        boolean suggested,
        String leavesUnfixed,
        List<ScopedTask> tasks,
        List<String> tests,
        Set<String> extraNotes) {
    public Scope {
        tasks = List.copyOf(tasks);
        tests = List.copyOf(tests);
        extraNotes = Set.copyOf(extraNotes);
    }
}
