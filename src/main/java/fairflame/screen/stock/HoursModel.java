package fairflame.screen.stock;

import fairflame.Refusal;
import fairflame.invoice.report.TimeComparison;
import fairflame.invoice.report.TimeDecision;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Standard times against hours worked, without a window; a time changes only when a person takes it. */
public final class HoursModel {
    private static final int PLACES = 2;

    private final StockWork work;
    private final Runnable changed;
    private final Map<String, StringProperty> why = new HashMap<>();
    private final Map<String, StringProperty> refused = new HashMap<>();

    /** Hours of a shop; {@code changed} is told when a time changes. */
    public HoursModel(StockWork work, Runnable changed) {
        this.work = work;
        this.changed = changed;
    }

    public List<TimeComparison> comparisons() {
        return work.hours();
    }

    public String title(String task) {
        return work.taskTitle(task);
    }

    /** Hours by the shop's files. */
    public BigDecimal standard(String task) {
        return work.standardTime(task);
    }

    /** Hours that a factor makes of the shop's files. */
    public BigDecimal times(String task, BigDecimal factor) {
        return standard(task).multiply(factor).setScale(PLACES, RoundingMode.HALF_UP);
    }

    /** What counts now, where a person decided something. */
    public Optional<TimeDecision> standing(String task) {
        return work.decisions(task).stream().findFirst();
    }

    public List<TimeDecision> decisions(String task) {
        return work.decisions(task);
    }

    /** A suggestion that was not taken yet. */
    public Optional<BigDecimal> suggestion(TimeComparison comparison) {
        return comparison
                .suggestion()
                .filter(factor -> standing(comparison.task())
                        .map(decision -> decision.factor().compareTo(factor) != 0)
                        .orElse(true));
    }

    /** Reason for a change of the times of a task. */
    public StringProperty why(String task) {
        return why.computeIfAbsent(task, key -> new SimpleStringProperty(""));
    }

    /** What is wrong with the reason or the factor; empty while nothing is. */
    public StringProperty refused(String task) {
        return refused.computeIfAbsent(task, key -> new SimpleStringProperty(""));
    }

    /** Takes the suggested time. */
    public void accept(TimeComparison comparison) {
        suggestion(comparison).ifPresent(factor -> decide(comparison.task(), factor));
    }

    /** Goes back to the times of the shop's files. */
    public void takeBack(String task) {
        decide(task, BigDecimal.ONE);
    }

    private void decide(String task, BigDecimal factor) {
        try {
            work.decide(task, factor, why(task).get().strip());
            refused(task).set("");
            why(task).set("");
            changed.run();
        } catch (Refusal refusal) {
            refused(task).set(EditModel.told(refusal));
        }
    }
}
