package fairflame.screen.office;

import fairflame.Refusal;
import fairflame.invoice.report.ShopReport;
import fairflame.invoice.report.TimeComparison;
import fairflame.invoice.report.TimeDecision;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Figures of the shop over some days, without a window. */
public final class FiguresModel {
    private final OfficeWork work;
    private final LongWork runner;
    private final SpanModel span;
    private final Map<String, String> names;
    private final ObjectProperty<Optional<ShopReport>> report = new SimpleObjectProperty<>(Optional.empty());
    private final StringProperty written = new SimpleStringProperty("");
    private final Map<String, Typed> reasons = new HashMap<>();
    private final IntegerProperty changes = new SimpleIntegerProperty();
    private List<TimeDecision> decisions;

    public FiguresModel(OfficeWork work, LongWork runner) {
        this.work = work;
        this.runner = runner;
        this.span = new SpanModel(work.today());
        this.names = work.names();
        this.decisions = work.decisions();
        show();
    }

    public SpanModel span() {
        return span;
    }

    public ObjectProperty<Optional<ShopReport>> report() {
        return report;
    }

    /** Place of the report; empty until it is written. */
    public StringProperty written() {
        return written;
    }

    public List<TimeDecision> decisions() {
        return decisions;
    }

    /** Words for an id, or for several that stand together. */
    public String name(String ids) {
        return Arrays.stream(ids.split(" \\+ "))
                .map(id -> names.getOrDefault(id, id))
                .collect(Collectors.joining(" + "));
    }

    /** Counts up whenever something else has to be shown. */
    public IntegerProperty changes() {
        return changes;
    }

    private void changed() {
        changes.set(changes.get() + 1);
    }

    /** Reads the figures of the typed days. */
    public void show() {
        span.read()
                .ifPresent(days -> runner.run(
                        "figures",
                        progress -> work.figures(days),
                        found -> {
                            report.set(Optional.of(found));
                            changed();
                        },
                        Ended.in(span.to().refusal())));
    }

    /** Writes the figures of the typed days as PDF. */
    public void write() {
        written.set("");
        span.read()
                .ifPresent(days -> runner.run(
                        "report",
                        progress -> work.report(days).toString(),
                        written::set,
                        Ended.in(span.to().refusal())));
    }

    /**
     * Whether a new time can be accepted here: suggested by enough jobs without a condition. Under a condition it is
     * the condition's own factor in the rates that has to be looked at.
     */
    public static boolean acceptable(TimeComparison row) {
        return row.suggestion().isPresent() && row.condition().isEmpty();
    }

    /** The decision in force for a task. */
    public Optional<TimeDecision> decision(String task) {
        return decisions.stream().filter(each -> each.task().equals(task)).findFirst();
    }

    /** Why a person accepts a new time of a task. */
    public Typed reason(String task) {
        return reasons.computeIfAbsent(task, key -> new Typed(""));
    }

    /** A person accepts a suggested time. */
    public void accept(String task, BigDecimal factor) {
        try {
            work.decide(task, factor, reason(task).text());
            decisions = work.decisions();
            reason(task).refusal().set("");
            changed();
        } catch (Refusal refused) {
            reason(task).refusal().set(refused.getMessage());
        }
    }
}
