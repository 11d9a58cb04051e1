package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.Change;
import fairflame.invoice.actual.ActualEntry;
import fairflame.invoice.actual.ActualRow;
import fairflame.invoice.actual.ActualWork;
import fairflame.invoice.actual.Actuals;
import fairflame.store.Records;
import fairflame.store.Registers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Hours and parts as truck and office enter them, kept with the signed revision. Every state is kept; a figure told before
 * changes only with a note.
 */
public final class JobActuals {
    private final Workplace workplace;

    public JobActuals(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * What is known of the work of a signed quote.
     *
     * @param history every state, the first one first; empty when nothing was told
     * @param work the last state against what was signed
     */
    public record View(List<Actuals> history, ActualWork work) {
        public View {
            history = List.copyOf(history);
        }

        /** The state that counts. */
        public Optional<Actuals> latest() {
            return history.isEmpty() ? Optional.empty() : Optional.of(history.get(history.size() - 1));
        }
    }

    public View of(String quote) {
        return workplace.store().reading(records -> view(records, Signed.of(records, quote)));
    }

    /** Takes down what somebody tells of the work; refused whole when any of it is. */
    public View enter(String quote, ActualEntry entry) {
        return workplace.store().inTransaction(workplace.by(), records -> {
            var agreed = Signed.of(records, quote);
            refuseForeign(agreed, entry);
            var next = latest(records, agreed).after(entry, workplace.who(), workplace.now());
            records.registers().actuals().put(Signed.key(agreed.signed()), next);
            return view(records, agreed);
        });
    }

    private static void refuseForeign(Agreed agreed, ActualEntry entry) {
        ActualWork.refuseUnknown(agreed, entry.quantities().keySet());
        ActualWork.refuseUnknown(agreed, entry.borne());
        ActualWork.refuseUnknown(agreed, entry.charged());
        var tasks = agreed.signed().taken().work().stream()
                .map(work -> work.task())
                .collect(Collectors.toCollection(java.util.TreeSet::new));
        for (var task : entry.tasks().keySet()) {
            if (!tasks.contains(task)) {
                throw Refusal.notAllowed("task", task, tasks + ", the signed tasks");
            }
        }
        for (var work : entry.outside()) {
            fairflame.money.Amounts.same(agreed.signed().quote().currency(), work.worth());
        }
    }

    /** The change that the customer would have to sign before the work is billed; empty when none is due. */
    public Optional<Change> change(String quote, String reason) {
        var lines = of(quote).work().toSign();
        return lines.isEmpty() ? Optional.empty() : Optional.of(Change.of(reason, lines, List.of()));
    }

    static View view(Records records, Agreed agreed) {
        var history = records.registers().actuals().history(Signed.key(agreed.signed()));
        return new View(history, ActualWork.of(agreed, latest(records, agreed)));
    }

    private static Actuals latest(Records records, Agreed agreed) {
        var signed = agreed.signed();
        return records.registers()
                .actuals()
                .find(Signed.key(signed))
                .orElseGet(() -> Actuals.none(
                        signed.quote().number(),
                        signed.quote().revision(),
                        signed.signature().at()));
    }

    /** Refuses to bill everything while something that was done is not signed for, or something signed was not done. */
    static void refuseUncovered(Records records, Agreed agreed) {
        var work = view(records, agreed).work();
        var reasons = new ArrayList<>(work.needsChangeOrder());
        work.undone()
                .forEach(row -> reasons.add("Line " + row.line().id() + ", "
                        + row.line().description() + ", was not done; a change order takes it out."));
        refuse(agreed, reasons);
    }

    /** Refuses to bill a part with a line that is beyond what was signed, or was not done. */
    static void refuseLines(Records records, Agreed agreed, Set<String> lines) {
        var work = view(records, agreed).work();
        var reasons = new ArrayList<String>();
        var beyond = work.beyond().stream().map(ActualRow::line).toList();
        if (beyond.stream().anyMatch(line -> lines.contains(line.id()))) {
            reasons.addAll(work.needsChangeOrder());
        }
        work.undone().stream()
                .filter(row -> lines.contains(row.line().id()))
                .forEach(row -> reasons.add("Line " + row.line().id() + " was not done."));
        refuse(agreed, reasons);
    }

    private static void refuse(Agreed agreed, List<String> reasons) {
        if (!reasons.isEmpty()) {
            throw Refusal.notAllowed(
                    "invoice for quote " + agreed.signed().quote().number(),
                    "work as it was done is not what was signed",
                    "after a signed change order, or told as borne by the shop: " + String.join(" ", reasons));
        }
    }

    /** A state that a laptop hands over follows the states that are here. */
    static void receive(Records records, RevisionName name, Actuals actuals) {
        if (records.agreements().find(name.quote(), name.revision()).isEmpty()) {
            throw Refusal.unknown("signed quote of the work", name.quote(), "a signed revision that is here");
        }
        var states = records.registers()
                .actuals()
                .history(Registers.key(name.quote(), name.revision()))
                .size();
        if (name.state() != states + 1) {
            throw Refusal.outOfRange("state of the work", name.state(), "the next one, " + (states + 1));
        }
        records.registers().actuals().put(Registers.key(name.quote(), name.revision()), actuals);
    }

    /** A state that is here, by the name it has in a packet. */
    static Optional<Actuals> state(Records records, RevisionName name) {
        var states = records.registers().actuals().history(Registers.key(name.quote(), name.revision()));
        return states.size() < name.state() ? Optional.empty() : Optional.of(states.get(name.state() - 1));
    }
}
