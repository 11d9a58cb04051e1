package fairflame.repair;

import fairflame.Refusal;
import fairflame.catalog.AfterTest;
import fairflame.catalog.Shop;
import fairflame.catalog.WayTask;
import fairflame.diagnosis.Finding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes one scope out of one way for each cause. */
final class ScopeDraft {
    private static final String NO_BYPASS = "N-NOBYPASS";

    private final Finding.Settled finding;
    private final Shop shop;
    private final RepairInputs inputs;
    private final KnownFacts facts;
    private final List<PairJudgement> pairs;

    ScopeDraft(Finding.Settled finding, Shop shop, RepairInputs inputs, KnownFacts facts, List<PairJudgement> pairs) {
        this.finding = finding;
        this.shop = shop;
        this.inputs = inputs;
        this.facts = facts;
        this.pairs = pairs;
    }

    /**
     * The scope.
     *
     * @param reasons receives why it is offered
     */
    Scope scope(List<OfferedWay> ways, boolean suggested, Collection<String> reasons) {
        var planned = new ArrayList<PlannedTask>();
        ways.forEach(way -> planned.addAll(tasks(way, reasons)));
        inputs.added().forEach(added -> planned.add(added(added, ways)));
        var merging = new ArrayList<String>();
        var tasks = Merging.merge(planned, merging);
        new TaskRequirements(shop.book(), finding.causes()).check(tasks, facts);
        ways.forEach(way -> reasons.add(way.way().reason()));
        ways.forEach(
                way -> way.line().ifPresent(line -> reasons.add(line.sizing().words())));
        reasons.addAll(merging);
        var parts = new PartsOf(shop, inputs);
        return new Scope(
                joined(ways.stream().map(OfferedWay::id), "+"),
                joined(ways.stream().map(OfferedWay::title), "; "),
                joined(ways.stream().map(OfferedWay::plain), " "),
                suggested,
                joined(ways.stream().map(OfferedWay::leaves), " "),
                tasks.stream().map(task -> scoped(task, parts)).toList(),
                tests(tasks),
                notes(ways));
    }

    private List<PlannedTask> tasks(OfferedWay offered, Collection<String> reasons) {
        var here = facts.with(offered.line());
        var planned = new ArrayList<PlannedTask>();
        for (var step : offered.way().tasks()) {
            if (here.allow(step.when())) {
                planned.add(planned(step, offered, reasons));
            }
        }
        offered.line()
                .ifPresent(line -> line.alsoCounted()
                        .forEach((id, pieces) -> planned.add(new PlannedTask(
                                shop.task(id).in(inputs.place()),
                                List.of(),
                                BigDecimal.valueOf(pieces),
                                offered.line(),
                                offered.cause(),
                                "It belongs to this gas line."))));
        if (planned.isEmpty()) {
            throw Refusal.notAllowed(
                    "way " + offered.id() + " to mend",
                    offered.cause(),
                    "at least one task in scopes.yaml whose conditions hold");
        }
        return planned;
    }

    private PlannedTask planned(WayTask step, OfferedWay offered, Collection<String> reasons) {
        return new PlannedTask(
                shop.task(step.task()).in(inputs.place()),
                devices(step, offered.cause(), reasons),
                step.pieces(),
                offered.line().map(line -> line.laidUnder(step.when())),
                offered.cause(),
                step.reason());
    }

    private List<String> devices(WayTask step, String cause, Collection<String> reasons) {
        return switch (step.devices()) {
            case NONE -> List.of();
            case FOUND ->
                finding.causes().stream()
                        .filter(candidate -> candidate.cause().equals(cause))
                        .flatMap(candidate -> candidate.devices().stream())
                        .toList();
            case PAIR, WORST -> {
                var pair = pair(step.task());
                reasons.addAll(pair.reasons());
                yield step.devices() == WayTask.Devices.WORST
                        ? List.of(pair.worst())
                        : pair.rule().members().stream()
                                .map(member -> member.device())
                                .toList();
            }
        };
    }

    private PairJudgement pair(String task) {
        return pairs.stream()
                .filter(pair -> pair.rule().task().equals(task))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("pair of task", task, "a task of a pair in pairs.yaml"));
    }

    private PlannedTask added(AddedTask added, List<OfferedWay> ways) {
        var line = ways.stream().flatMap(way -> way.line().stream()).findFirst();
        return new PlannedTask(
                shop.task(added.task()).in(inputs.place()),
                List.of(),
                added.pieces(),
                line,
                ways.isEmpty() ? "" : ways.get(0).cause(),
                added.reason());
    }

    private static ScopedTask scoped(PlannedTask planned, PartsOf parts) {
        return new ScopedTask(planned.task(), planned.counts(), parts.list(planned), planned.cause(), planned.reason());
    }

    private List<String> tests(List<PlannedTask> tasks) {
        return shop.book().tests().stream()
                .map(AfterTest::letter)
                .filter(letter ->
                        tasks.stream().anyMatch(task -> task.task().tests().contains(letter)))
                .toList();
    }

    private Set<String> notes(List<OfferedWay> ways) {
        var notes = new TreeSet<String>();
        ways.forEach(way -> notes.addAll(way.way().notes()));
        if (facts.has("bypassed")) {
            notes.add(NO_BYPASS);
        }
        return notes;
    }

    private static String joined(Stream<String> texts, String between) {
        return texts.filter(text -> !text.isBlank()).collect(Collectors.toCollection(LinkedHashSet::new)).stream()
                .collect(Collectors.joining(between));
    }
}
