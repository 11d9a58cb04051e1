package fairflame.screen.office;

import fairflame.Refusal;
import fairflame.invoice.order.OrderLine;
import fairflame.invoice.order.OrderSheet;
import fairflame.money.Amounts;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.visit.Deliveries;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.joda.money.Money;

/** Parts to order, orders on their way, and the truck's lists, without a window. */
public final class OrdersModel {
    private final OfficeWork work;
    private final LongWork runner;
    private List<OrderSheet> sheets = List.of();
    private List<Deliveries.Standing> orders = List.of();
    private List<Deliveries.Load> truck = List.of();
    private final Set<String> left = new HashSet<>();
    private final Map<String, StringProperty> refusals = new LinkedHashMap<>();
    private final StringProperty written = new SimpleStringProperty("");
    private final IntegerProperty changes = new SimpleIntegerProperty();

    public OrdersModel(OfficeWork work, LongWork runner) {
        this.work = work;
        this.runner = runner;
        read();
    }

    private void read() {
        sheets = work.toOrder();
        orders = work.orders();
        truck = work.truck();
        changes.set(changes.get() + 1);
    }

    /** Counts up whenever something else has to be shown. */
    public IntegerProperty changes() {
        return changes;
    }

    public List<OrderSheet> sheets() {
        return sheets;
    }

    public List<Deliveries.Standing> orders() {
        return orders;
    }

    public List<Deliveries.Load> truck() {
        return truck;
    }

    /** Places of the order's papers; empty until one is written. */
    public StringProperty written() {
        return written;
    }

    /** Why the last order from this supplier, or the last mark on this order, was refused. */
    public StringProperty refusal(String supplierOrOrder) {
        return refusals.computeIfAbsent(supplierOrOrder, key -> new SimpleStringProperty(""));
    }

    /** Whether a line goes on the next order. */
    public boolean chosen(String supplier, String part) {
        return !left.contains(supplier + " " + part);
    }

    /** Puts a line on the next order, or takes it off. */
    public void choose(String supplier, String part, boolean on) {
        if (on) {
            left.remove(supplier + " " + part);
        } else {
            left.add(supplier + " " + part);
        }
        refusal(supplier).set("");
        changes.set(changes.get() + 1);
    }

    /** Lines of a sheet that go on the order. */
    public List<OrderLine> taken(OrderSheet sheet) {
        return sheet.lines().stream()
                .filter(line -> chosen(sheet.supplier().id(), line.part().number()))
                .toList();
    }

    /** What the chosen lines cost, before tax. */
    public Money cost(OrderSheet sheet) {
        return Amounts.sum(
                sheet.lines().get(0).cost().getCurrencyUnit(),
                taken(sheet).stream().map(OrderLine::cost).toList());
    }

    /** Orders the chosen lines of a supplier and writes the papers. */
    public void place(OrderSheet sheet) {
        var supplier = sheet.supplier().id();
        var parts = taken(sheet).stream().map(line -> line.part().number()).collect(Collectors.toSet());
        refusal(supplier).set("");
        runner.run(
                "order",
                progress -> work.order(supplier, parts),
                files -> {
                    written.set(files.stream().map(Path::toString).collect(Collectors.joining(", ")));
                    read();
                },
                Ended.in(refusal(supplier)));
    }

    /** Says that a part has come, or is not here after all. */
    public void mark(String order, String part, boolean here) {
        try {
            work.mark(order, part, here);
            refusal(order).set("");
            read();
        } catch (Refusal refused) {
            refusal(order).set(refused.getMessage());
        }
    }

    /** Says that all of an order has come. */
    public void allHere(Deliveries.Standing standing) {
        standing.items().stream()
                .filter(item -> item.delivery().isEmpty())
                .forEach(
                        item -> work.mark(standing.order().number(), item.part().number(), true));
        read();
    }
}
