package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.invoice.permit.Due;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the office reads and marks beyond one visit. */
class OfficeDeskTest {
    private static final Library LIBRARY = Library.load(Sources.samples());
    private static final String FIRST = "Q-2026-0001";

    @TempDir
    private static Path truck;

    @TempDir
    private Path folder;

    private static Path packet;

    private static Workplace at(Path folder) {
        var clock = Clock.fixed(Instant.parse("2026-06-20T17:00:00Z"), ZoneOffset.ofHours(-5));
        return Workplace.open(folder, LIBRARY, clock, "Ida Quill");
    }

    @BeforeAll
    static void aTruckWithFourVisits() {
        new Demo(truck, line -> {}).run();
        try (var workplace = at(truck)) {
            new Handoff(workplace).name("truck-2", "Q");
            packet = truck.resolve(new Handoff(workplace).export());
        }
    }

    private Workplace office() {
        var office = at(folder);
        new Handoff(office).take(packet);
        return office;
    }

    @Test
    void aPacketThatIsStoppedLeavesNothingBehind() {
        try (var office = at(folder)) {
            assertThatThrownBy(() -> new Handoff(office).take(packet, (done, all) -> {
                        if (done == all - 1) {
                            throw new CancellationException();
                        }
                    }))
                    .isInstanceOf(CancellationException.class);
            assertThat(VisitPapers.all(office)).isEmpty();
            var seen = new java.util.ArrayList<Long>();
            var taken = new Handoff(office).take(packet, (done, all) -> seen.add(done));
            assertThat(seen).isSorted().hasSize(taken.added() + 1);
        }
    }

    @Test
    void aCopyThatIsStoppedLeavesNoFile() {
        Progress stop = (done, all) -> {
            if (done == all) {
                throw new CancellationException();
            }
        };
        try (var office = at(folder)) {
            var copy = folder.resolve("copy.db");
            var lines = folder.resolve("lines.jsonl");
            assertThatThrownBy(() -> DataKeeping.backup(office, copy, stop)).isInstanceOf(CancellationException.class);
            assertThatThrownBy(() -> DataKeeping.export(office, lines, stop)).isInstanceOf(CancellationException.class);
            assertThat(copy).doesNotExist();
            assertThat(lines).doesNotExist();
            DataKeeping.backup(office, copy);
            var other = folder.resolve("other");
            assertThat(other.toFile().mkdir()).isTrue();
            assertThatThrownBy(() -> DataKeeping.restore(copy, other, stop)).isInstanceOf(CancellationException.class);
            assertThat(other).isEmptyDirectory();
            assertThat(copy).exists();
        }
    }

    @Test
    void onlyTheChosenPartsOfASupplierAreOrdered() {
        try (var office = office()) {
            var ordering = new Ordering(office);
            var sheet = ordering.sheets().stream()
                    .filter(each -> each.lines().size() > 1)
                    .findFirst()
                    .orElseThrow();
            var supplier = sheet.supplier().id();
            var first = sheet.lines().get(0).part().number();
            assertThatThrownBy(() -> ordering.place(supplier, Set.of()))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("at least one part");
            var order = ordering.place(supplier, Set.of(first)).content();
            assertThat(order.parts()).allMatch(part -> part.part().equals(first));
            var left = ordering.sheets().stream()
                    .filter(each -> each.supplier().id().equals(supplier))
                    .flatMap(each -> each.lines().stream())
                    .map(line -> line.part().number())
                    .toList();
            assertThat(left).hasSize(sheet.lines().size() - 1).doesNotContain(first);
        }
    }

    @Test
    void aPartIsToOrderThenOnItsWayThenHereAndMayGoBack() {
        try (var office = office()) {
            var deliveries = new Deliveries(office);
            var load = deliveries.truck().get(0);
            var part = load.pieces().get(0).part();
            assertThat(where(deliveries, load.quote(), part.number())).isEqualTo(Deliveries.Where.TO_ORDER);
            var order = new Ordering(office).place(part.supplier()).content().number();
            assertThat(where(deliveries, load.quote(), part.number())).isEqualTo(Deliveries.Where.ORDERED);
            var mark = deliveries.mark(order, part.number(), true);
            assertThat(mark.who()).isEqualTo("Ida Quill");
            assertThat(mark.on()).isEqualTo(office.today());
            assertThat(where(deliveries, load.quote(), part.number())).isEqualTo(Deliveries.Where.HERE);
            deliveries.mark(order, part.number(), false);
            assertThat(where(deliveries, load.quote(), part.number())).isEqualTo(Deliveries.Where.ORDERED);
            assertThatThrownBy(() -> deliveries.mark(order, "NO-99", true)).hasMessageContaining(part.number());
            assertThatThrownBy(() -> deliveries.mark("O-2026-0099", part.number(), true))
                    .hasMessageContaining("order that was placed");
        }
    }

    private static Deliveries.Where where(Deliveries deliveries, String quote, String part) {
        return deliveries.truck().stream()
                .filter(load -> load.quote().equals(quote))
                .flatMap(load -> load.pieces().stream())
                .filter(piece -> piece.part().number().equals(part))
                .findFirst()
                .orElseThrow()
                .where();
    }

    @Test
    void aDepositIsHeldUntilTheInvoiceUsesItAndACreditMakesItTheCustomersAgain() {
        try (var office = office()) {
            var money = new MoneyHeld(office);
            var held = money.held().stream()
                    .filter(each -> each.quote().equals(FIRST))
                    .findFirst()
                    .orElseThrow();
            assertThat(held.deposit()).isTrue();
            assertThat(held.visit()).isEqualTo("V-2026-0601");
            var billed = new Billing(office)
                    .invoice(FIRST, CompletionFile.NOTHING, new Billing.Terms(office.today(), 14, false))
                    .invoice();
            assertThat(money.held()).noneMatch(each -> each.quote().equals(FIRST));
            new Conversion(office).credit(billed.number(), Map.of(), "nothing was done");
            var back = money.held().stream()
                    .filter(each -> each.quote().equals(FIRST))
                    .findFirst()
                    .orElseThrow();
            assertThat(back.deposit()).isFalse();
            assertThat(back.amount()).isEqualTo(held.amount());
        }
    }

    @Test
    void whatWasGivenUpIsListedWithItsReason() {
        try (var office = office()) {
            var billed = new Billing(office)
                    .invoice(FIRST, CompletionFile.NOTHING, new Billing.Terms(office.today(), 14, false))
                    .invoice();
            new Ledger(office).writeOff(billed.number(), Money.parse("USD 5.00"), "rounded for the customer");
            assertThat(new MoneyHeld(office).givenUp()).singleElement().satisfies(each -> {
                assertThat(each.movement().reason()).isEqualTo("rounded for the customer");
                assertThat(each.visit()).isEqualTo("V-2026-0601");
                assertThat(each.customer()).isEqualTo("Marguerite Oduya");
            });
            assertThat(new MoneyHeld(office).papers()).containsExactly(billed.number());
        }
    }

    @Test
    void whatIsDueKnowsItsVisit() {
        try (var office = office()) {
            new Billing(office).invoice(FIRST, CompletionFile.NOTHING, new Billing.Terms(office.today(), 14, false));
            assertThat(new DueVisits(office).all())
                    .filteredOn(row -> row.due().kind() == Due.Kind.INVOICE_DUE)
                    .singleElement()
                    .satisfies(row -> {
                        assertThat(row.document()).isEqualTo("I-2026-0001");
                        assertThat(row.visit()).contains("V-2026-0601");
                    });
        }
    }

    @Test
    void sidesAreComparedFieldByFieldAlsoInsideAKeptFile() {
        var ours = "{\"id\":\"V-1\",\"text\":\"{\\\"phone\\\":\\\"555-0101\\\",\\\"age\\\":7}\"}";
        var theirs =
                "{\"id\":\"V-1\",\"text\":\"{\\\"phone\\\":\\\"555-0102\\\",\\\"age\\\":7,\\\"note\\\":\\\"x\\\"}\"}";
        assertThat(Differences.between(ours, theirs))
                .extracting(Differences.Field::field)
                .isEqualTo(List.of("/text/note", "/text/phone"));
        assertThat(Differences.all(ours, theirs)).hasSize(4);
        assertThat(Differences.between(ours, ours)).isEmpty();
        assertThat(Differences.between("", ours)).allMatch(field -> field.ours().isEmpty());
        assertThat(Differences.between("no file {", "another")).hasSize(1);
    }
}
