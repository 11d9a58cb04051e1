package fairflame.screen.file;

import fairflame.invoice.Invoice;
import fairflame.invoice.account.OpenItem;
import fairflame.money.Amounts;
import fairflame.quote.Line;
import fairflame.screen.file.FileWork.Received;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One invoice: payments, credit notes, write-off. */
public final class InvoiceModel {
    private final FileModel file;
    private final OpenItem item;
    private final Form payment = new Form();
    private final Form credit = new Form();
    private final Form writeOff = new Form();
    private final StringProperty method = new SimpleStringProperty("card");

    public InvoiceModel(FileModel file, OpenItem item) {
        this.file = file;
        this.item = item;
        payment.with("pay-amount", Amounts.plain(item.open())).beside("payment", "pay-amount");
        credit.beside("reason of a credit note", "credit-reason");
        standing().forEach(line -> credit.beside("quantity to credit of line " + line.id(), credit(line)));
        writeOff.with("write-off-amount", Amounts.plain(item.open()))
                .beside("write-off", "write-off-amount")
                .beside("amount of write-off", "write-off-amount")
                .beside("reason of write-off", "write-off-reason");
    }

    public Invoice invoice() {
        return item.invoice();
    }

    public OpenItem item() {
        return item;
    }

    public Form payment() {
        return payment;
    }

    public Form credit() {
        return credit;
    }

    public Form writeOff() {
        return writeOff;
    }

    public StringProperty method() {
        return method;
    }

    static String credit(Line line) {
        return "credit-" + line.id();
    }

    /** Credit notes on this invoice. */
    public List<Invoice> credits() {
        return file.job().papers().stream()
                .filter(paper -> paper.corrects().equals(invoice().number()))
                .toList();
    }

    /** Lines of the invoice that are not credited to the end. */
    public List<Line> standing() {
        return invoice().lines().stream()
                .filter(line -> left(line).signum() > 0)
                .toList();
    }

    /** Quantity of a line that is not credited. */
    public BigDecimal left(Line line) {
        return credits().stream()
                .flatMap(note -> note.lines().stream())
                .filter(back -> back.id().equals(line.id()))
                .map(Line::quantity)
                .reduce(line.quantity(), BigDecimal::add);
    }

    public void pay() {
        file.written(payment, "file.said.paid", () -> {
            var received = new Received(
                    payment.money("pay-amount", invoice().currency()), method.get(), payment.text("pay-reference"));
            return progress -> file.work().pay(invoice().number(), received, progress);
        });
    }

    /** Takes back what was typed of each line. */
    public void creditPart() {
        credit(() -> {
            var back = new TreeMap<String, BigDecimal>();
            for (var line : standing()) {
                if (!credit.isBlank(credit(line))) {
                    back.put(line.id(), credit.number(credit(line)));
                }
            }
            if (back.isEmpty()) {
                throw fairflame.Refusal.missing("line to credit", "a quantity of at least one line");
            }
            return back;
        });
    }

    /** Takes back all that is left. */
    public void creditAll() {
        credit(Map::of);
    }

    private void credit(Supplier<Map<String, BigDecimal>> typed) {
        file.written(credit, "file.said.credit", () -> {
            var back = typed.get();
            var reason = credit.words("credit-reason");
            return progress -> {
                file.work().credit(invoice().number(), back, reason, progress);
                return "";
            };
        });
    }

    public boolean giveUp() {
        return file.act(
                writeOff,
                "file.said.write-off",
                () -> file.work()
                        .writeOff(
                                invoice().number(),
                                writeOff.money("write-off-amount", invoice().currency()),
                                writeOff.words("write-off-reason")));
    }
}
