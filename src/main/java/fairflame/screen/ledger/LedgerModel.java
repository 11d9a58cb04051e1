package fairflame.screen.ledger;

import fairflame.Refusal;
import fairflame.invoice.Invoice;
import fairflame.money.Amounts;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The office's list and the file that lies open, without a window. */
public final class LedgerModel {
    /** What {@link #said} holds when a seal was proved. */
    static final String PROVED = "proved";

    private final LedgerWork work;
    private final StringProperty search = new SimpleStringProperty("");
    private final StringProperty visit = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final StringProperty said = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Map<LedgerWork.Next, List<LedgerWork.Entry>>> groups =
            new ReadOnlyObjectWrapper<>(Map.of());
    private final ReadOnlyObjectWrapper<Optional<LedgerWork.File>> file = new ReadOnlyObjectWrapper<>(Optional.empty());

    public LedgerModel(LedgerWork work) {
        this.work = work;
        search.addListener((property, before, now) -> list());
        visit.addListener((property, before, now) -> read());
        list();
    }

    public LedgerWork work() {
        return work;
    }

    public StringProperty search() {
        return search;
    }

    /** Number of the visit whose file lies open; empty for none. */
    public StringProperty visit() {
        return visit;
    }

    /** Why the last act was refused. */
    public StringProperty refusal() {
        return refusal;
    }

    /** What the last act did. */
    public StringProperty said() {
        return said;
    }

    /** The visits by what has to happen next, in the order of the day. */
    public ReadOnlyObjectProperty<Map<LedgerWork.Next, List<LedgerWork.Entry>>> groups() {
        return groups.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<LedgerWork.File>> file() {
        return file.getReadOnlyProperty();
    }

    /** The open visit's row. */
    public Optional<LedgerWork.Entry> entry() {
        return groups.get().values().stream()
                .flatMap(List::stream)
                .filter(entry -> entry.visit().equals(visit.get()))
                .findFirst();
    }

    public void list() {
        var sorted = new LinkedHashMap<LedgerWork.Next, List<LedgerWork.Entry>>();
        var all = work.entries(search.get().strip());
        for (var next : LedgerWork.Next.values()) {
            var group = all.stream().filter(entry -> entry.next() == next).toList();
            if (!group.isEmpty()) {
                sorted.put(next, group);
            }
        }
        groups.set(sorted);
    }

    /** Reads list and file anew, after something was done elsewhere. */
    public void again() {
        list();
        read();
    }

    private void read() {
        refusal.set("");
        said.set("");
        file.set(visit.get().isEmpty() ? Optional.empty() : Optional.of(work.file(visit.get())));
    }

    /** Makes the invoice of the open visit's signed quote. */
    public void invoice(CompletionModel completion) {
        act(() -> {
            var signed = file.get().flatMap(LedgerWork.File::signed).orElseThrow();
            work.invoice(signed.quote().number(), completion.record());
            return "";
        });
    }

    /** Takes a payment on an invoice of the open visit. */
    public void pay(Invoice invoice, String amount, String method, String reference) {
        act(() -> {
            var money = Amounts.parse(invoice.currency(), amount.strip().replace(",", ""));
            work.pay(invoice.number(), money, method, reference);
            return amount.strip();
        });
    }

    /** Writes an invoice as paper. */
    public void print(Invoice invoice) {
        act(() -> work.print(invoice).toString());
    }

    /** Proves the seal of the open visit's signed quote. */
    public void verify() {
        var signed = file.get().flatMap(LedgerWork.File::signed).orElseThrow();
        var differences = work.verify(signed.quote().number());
        if (differences.isEmpty()) {
            refusal.set("");
            said.set(PROVED);
        } else {
            said.set("");
            refusal.set(String.join(" ", differences));
        }
    }

    private void act(Supplier<String> act) {
        try {
            var done = act.get();
            list();
            read();
            said.set(done);
        } catch (Refusal refused) {
            refusal.set(refused.getMessage());
        }
    }
}
