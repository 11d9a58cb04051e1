package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.Shop;
import fairflame.document.OrderSheetPdf;
import fairflame.document.OrderSheetXlsx;
import fairflame.document.page.PageFormat;
import fairflame.invoice.Invoice;
import fairflame.invoice.order.OrderSheet;
import fairflame.invoice.order.PartNeeded;
import fairflame.invoice.order.PartsOrder;
import fairflame.invoice.order.PlacedOrder;
import fairflame.store.Records;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Parts to order for signed quotes, by supplier. */
public final class Ordering {
    private final Workplace workplace;

    public Ordering(Workplace workplace) {
        this.workplace = workplace;
    }

    /** What is still to be ordered, a sheet for each supplier. */
    public List<OrderSheet> sheets() {
        var shop = workplace.everyPart();
        return workplace.store().reading(records -> sheets(records, shop));
    }

    private static List<OrderSheet> sheets(Records records, Shop shop) {
        var needed = Signed.all(records).stream()
                .filter(agreed -> !finished(records, agreed.signed().quote().number()))
                .flatMap(agreed -> PartsOrder.needed(agreed).stream())
                .toList();
        var ordered = records.registers().orders().all().stream()
                .flatMap(order -> order.parts().stream())
                .toList();
        // Quotes keep the parts they were made with, those that were superseded since among them.
        return PartsOrder.sheets(shop, needed, ordered);
    }

    /** Work that was invoiced as complete has its parts. */
    private static boolean finished(Records records, String quote) {
        return records.invoices().ofQuote(quote).stream().anyMatch(Invoice::complete);
    }

    /** Marks everything from one supplier as ordered and writes the order as PDF and spreadsheet. */
    public Ledger.Written<PlacedOrder> place(String supplier) {
        return place(supplier, part -> true);
    }

    /** As {@link #place(String)}, but only for these part numbers; refused when none of them is to be ordered. */
    public Ledger.Written<PlacedOrder> place(String supplier, Set<String> parts) {
        return place(supplier, parts::contains);
    }

    private Ledger.Written<PlacedOrder> place(String supplier, Predicate<String> wanted) {
        var shop = workplace.everyPart();
        return workplace.store().inTransaction(workplace.by(), records -> {
            var all = sheets(records, shop).stream()
                    .filter(candidate -> candidate.supplier().id().equals(supplier))
                    .findFirst()
                    .orElseThrow(() -> Refusal.notAllowed(
                            "order from " + supplier,
                            "nothing to order",
                            sheets(records, shop).stream()
                                            .map(other -> other.supplier().id())
                                            .toList()
                                    + ", the suppliers with something to order"));
            var sheet = new OrderSheet(
                    all.supplier(),
                    all.lines().stream()
                            .filter(line -> wanted.test(line.part().number()))
                            .toList());
            if (sheet.lines().isEmpty()) {
                throw Refusal.missing("parts of the order from " + supplier, "at least one part that is to be ordered");
            }
            var number = String.format(
                    Locale.ROOT,
                    "O-%d-%04d",
                    workplace.today().getYear(),
                    records.registers().orders().all().size() + 1);
            var parts =
                    sheet.lines().stream().flatMap(line -> line.uses().stream()).toList();
            var order = new PlacedOrder(number, supplier, workplace.today(), List.<PartNeeded>copyOf(parts));
            records.registers().orders().put(number, order);
            return new Ledger.Written<>(order, write(sheet, number));
        });
    }

    /** All orders placed, the first one first. */
    public List<PlacedOrder> placed() {
        return workplace.store().reading(records -> records.registers().orders().all());
    }

    private List<String> write(OrderSheet sheet, String number) {
        var today = workplace.today();
        var text = workplace.library().paper(Library.ENGLISH);
        var currency = workplace.library().shop().currency();
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(number + ".pdf", OrderSheetPdf.write(sheet, number, today, currency, text, PageFormat.LETTER));
        files.put(number + ".xlsx", OrderSheetXlsx.write(sheet, number, today, currency, text, PageFormat.LETTER));
        workplace.folder().write(files);
        return List.copyOf(files.keySet());
    }
}
