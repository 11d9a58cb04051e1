package fairflame.quote;

import static fairflame.quote.DemoShop.dec;

import fairflame.catalog.Part;
import fairflame.catalog.Per;
import fairflame.catalog.Task;
import fairflame.repair.Scope;
import fairflame.repair.ScopedPart;
import fairflame.repair.ScopedTask;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Scopes of the demo visits by hand. Invented for the demo. */
public final class DemoScopes {
    private DemoScopes() {}

    public static final Scope BOTH = scope(
            "both",
            true,
            "",
            List.of(pieces(
                    DemoShop.R03,
                    "2",
                    part(DemoShop.LIMIT, "1"),
                    part(DemoShop.OUTLET, "1"),
                    part(DemoShop.TAPE, "2"))),
            Set.of());
    public static final Scope ONE = scope(
            "one",
            false,
            "the other switch stays as it is",
            List.of(pieces(DemoShop.R03, "1", part(DemoShop.LIMIT, "1"), part(DemoShop.TAPE, "1"))),
            Set.of("N-SINGLE"));
    public static final Scope LARGER_LINE = scope(
            "larger-line",
            true,
            "",
            List.of(new ScopedTask(
                    DemoShop.R18,
                    Map.of(Per.FOOT, dec("84"), Per.FITTING, dec("14")),
                    List.of(part(DemoShop.PIPE, "84"), part(DemoShop.DOPE, "2")),
                    "GP01",
                    "the pipe carries too little gas")),
            Set.of());
    public static final Scope CLEAN_SENSOR = scope("clean", true, "", List.of(job(DemoShop.R06)), Set.of());

    public static Scope scope(
            String id, boolean suggested, String unfixed, List<ScopedTask> tasks, Set<String> extraNotes) {
        var tests = tasks.stream()
                .flatMap(task -> task.task().tests().stream())
                .distinct()
                .sorted()
                .toList();
        return new Scope(
                id, "Choice " + id, "What is done in " + id + ".", suggested, unfixed, tasks, tests, extraNotes);
    }

    public static ScopedTask job(Task task, ScopedPart... parts) {
        return new ScopedTask(task, Map.of(Per.JOB, BigDecimal.ONE), List.of(parts), "LD01", "reason of " + task.id());
    }

    public static ScopedTask pieces(Task task, String count, ScopedPart... parts) {
        return new ScopedTask(task, Map.of(Per.PIECE, dec(count)), List.of(parts), "LD01", "reason of " + task.id());
    }

    public static ScopedPart part(Part part, String quantity) {
        return new ScopedPart(part, dec(quantity), "needed for it");
    }
}
