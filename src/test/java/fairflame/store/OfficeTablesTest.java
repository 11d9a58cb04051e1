package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.Sealing;
import fairflame.catalog.Part;
import fairflame.catalog.upkeep.ColumnMapping;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.PriceListImport;
import fairflame.catalog.upkeep.PriceSheet;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.catalog.upkeep.Upkept;
import fairflame.invoice.account.Movement;
import fairflame.invoice.permit.Permit;
import fairflame.invoice.permit.PermitState;
import fairflame.invoice.permit.PermitStep;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OfficeTablesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final ColumnMapping MAPPING = ColumnMapping.parse("tern", List.of("number=Item", "cost=Price"));
    private static final List<Part> SHELF = List.of(part("HS-1", "32.00"), part("HS-2", "40.00"));

    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(folder.resolve("shop.db"));
    }

    @AfterEach
    void close() {
        assertThat(store.faults()).isEmpty();
        store.close();
    }

    private static Part part(String number, String cost) {
        return new Part(
                number,
                "switch",
                "",
                "Switch",
                false,
                "each",
                Money.parse("USD " + cost),
                Optional.empty(),
                "tern",
                12,
                "x");
    }

    private Preview preview(String file, String... rows) {
        var list = new java.util.ArrayList<PriceSheet.SheetRow>();
        for (int i = 0; i < rows.length; i++) {
            list.add(new PriceSheet.SheetRow(i + 2, List.of(rows[i].split("\\|"))));
        }
        var sheet = new PriceSheet(file, List.of("Item", "Price"), list);
        var current =
                store.reading(records -> Upkept.of(SHELF, records.priceLists().states()));
        return PriceListImport.preview(sheet, MAPPING, CurrencyUnit.USD, current.all());
    }

    private TakenOver take(Preview preview) {
        return store.inTransaction(
                Samples.OFFICE, records -> records.priceLists().take(preview, DAY));
    }

    private <T> List<T> listed(java.util.function.Function<Records, List<T>> look) {
        return store.reading(look);
    }

    private <T> Optional<T> found(java.util.function.Function<Records, Optional<T>> look) {
        return store.reading(look);
    }

    private TakenOver undo(int id) {
        return store.inTransaction(
                Samples.OFFICE, records -> records.priceLists().undo(id, DAY.plusDays(1)));
    }

    private String costs() {
        return store.reading(records -> Upkept.of(SHELF, records.priceLists().states()).all().stream()
                .map(stocked -> stocked.part().cost().getAmount() + (stocked.vanished() ? "v" : ""))
                .toList()
                .toString());
    }

    @Test
    void aPriceListIsTakenOverRememberedAndTakenBack() {
        var first = take(preview("one.csv", "HS-1|33.00", "HS-2|40.00"));
        assertThat(first.parts()).isEqualTo(1);
        var second = take(preview("two.csv", "HS-1|34.50"));
        assertThat(costs()).isEqualTo("[34.50, 40.00v]");
        var prices = store.reading(records -> records.priceLists().history("HS-1"));
        assertThat(prices)
                .extracting(price -> price.cost().getAmount().toPlainString())
                .containsExactly("32.00", "33.00", "34.50");
        assertThat(prices).extracting(PastPrice::from).containsExactly("the shop's folder", "one.csv", "two.csv");

        assertThatThrownBy(() -> undo(first.id())).isInstanceOf(Refusal.class).hasMessageContaining("HS-1");
        assertThat(undo(second.id()).undone()).contains(DAY.plusDays(1));
        assertThat(costs()).isEqualTo("[33.00, 40.00]");
        undo(first.id());
        assertThat(costs()).isEqualTo("[32.00, 40.00]");
        assertThatThrownBy(() -> undo(first.id())).isInstanceOf(Refusal.class).hasMessageContaining("undone on");
        assertThatThrownBy(() -> undo(7)).isInstanceOf(Refusal.class).hasMessageContaining("'7'");
    }

    @Test
    void aListWithARefusedRowLeavesNothing() {
        var preview = preview("bad.csv", "HS-1|33.00", "HS-2|cheap");
        assertThatThrownBy(() -> take(preview)).isInstanceOf(Refusal.class).hasMessageContaining("bad.csv row 3");
        assertThat(costs()).isEqualTo("[32.00, 40.00]");
        assertThat(listed(records -> records.priceLists().imports())).isEmpty();
    }

    @Test
    void aPreviewThatWasOvertakenIsRefused() {
        var old = preview("one.csv", "HS-1|33.00", "HS-2|40.00");
        take(preview("two.csv", "HS-1|35.00", "HS-2|40.00"));
        assertThatThrownBy(() -> take(old)).isInstanceOf(Refusal.class).hasMessageContaining("a new preview");
    }

    @Test
    void aRegisterKeepsEveryStateAndCountsTheLast() {
        var needed = Permit.needed("Q-2026-0001", 1, "Larkwell", DAY);
        var applied = needed.after(
                new PermitStep(DAY, PermitState.APPLIED, "Ida Quill", "", Optional.empty(), "at the counter"));
        var key = Registers.key("Q-2026-0001", 1);
        store.change(Samples.OFFICE, records -> {
            records.registers().permits().put(key, needed);
            records.registers().permits().put(key, applied);
            records.registers().permits().put(key, applied);
        });
        store.reading(records -> {
            assertThat(records.registers().permits().find(key)).contains(applied);
            assertThat(records.registers().permits().history(key)).containsExactly(needed, applied);
            assertThat(records.registers().permits().all()).containsExactly(applied);
            assertThat(records.audit().about(key)).hasSize(2);
            return key;
        });
    }

    @Test
    void mappingsAndMovementsAreReadBackAsTheyWere() {
        var refund = new Movement(
                "R-1",
                Movement.Kind.REFUND,
                DAY,
                "Q-2026-0001",
                Optional.of("I-2026-0001"),
                Money.parse("USD 10.00"),
                "card",
                false,
                "paid twice");
        store.change(Samples.OFFICE, records -> {
            records.registers().mappings().put("tern", MAPPING);
            records.registers().movements().put("R-1", refund);
        });
        assertThat(found(records -> records.registers().mappings().find("tern")))
                .contains(MAPPING);
        assertThat(listed(records -> records.registers().movements().all())).containsExactly(refund);
    }

    @Test
    void sealsOfAnotherLaptopFollowEachOtherBesideTheShopsOwn() {
        store.change(Samples.OFFICE, records -> {
            records.visits().save(Samples.VISIT);
            var own = records.quotes().issue("Q", 2026, number -> Samples.quote(number, 1));
            records.agreements().add(Samples.signed(own, records.chain().last()));
            var truck = Samples.quote("QT-2026-0001", 1);
            records.quotes().add(truck);
            records.agreements().receive("truck-2", Samples.signed(truck, Sealing.START));
            var next = records.quotes().issue("Q", 2026, number -> Samples.quote(number, 1));
            records.agreements().add(Samples.signed(next, records.chain().last()));
        });
        store.reading(records -> {
            assertThat(records.chain().links()).extracting(Chain.Link::origin).containsExactly("", "truck-2", "");
            assertThat(records.agreements().of("")).hasSize(2);
            assertThat(records.agreements().of("truck-2")).hasSize(1);
            return "read";
        });
        assertThatThrownBy(() -> store.change(Samples.OFFICE, records -> {
                    var truck = Samples.quote("QT-2026-0002", 1);
                    records.quotes().add(truck);
                    records.agreements().receive("truck-2", Samples.signed(truck, Sealing.START));
                }))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("follows the last one");
    }

    @Test
    void aFileOfAVisitIsStoredOnceAndNeverChanged() {
        var photo = new Attachment("V-2026-0001", "wet switch.jpg", new byte[] {1, 2, 3});
        store.change(Samples.OFFICE, records -> {
            records.attachments().add(photo);
            records.attachments().add(photo);
        });
        assertThat(listed(records -> records.attachments().of("V-2026-0001"))).hasSize(1);
        var other = new Attachment("V-2026-0001", "wet switch.jpg", new byte[] {4});
        assertThatThrownBy(() -> store.change(
                        Samples.OFFICE, records -> records.attachments().add(other)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("wet switch.jpg");
        assertThatThrownBy(() -> new Attachment("V", "../x", new byte[0])).isInstanceOf(Refusal.class);
    }

    @Test
    void aConflictIsKeptOnceAndSettledByAPerson() {
        var conflict =
                new PacketLog.Conflict(0, "truck-2", "visit", "V-1", "", "{\"a\":1}", "differs", Optional.empty());
        store.change(Samples.OFFICE, records -> {
            records.packets().conflict(conflict);
            records.packets().conflict(conflict);
        });
        assertThat(listed(records -> records.packets().conflicts()))
                .singleElement()
                .satisfies(kept -> assertThat(kept.theirs()).isEqualTo("{\"a\":1}"));
        store.change(Samples.OFFICE, records -> records.packets().settle(1, "kept ours"));
        assertThat(listed(records -> records.packets().conflicts()).get(0).settled())
                .contains("kept ours");
        assertThatThrownBy(() -> store.change(
                        Samples.OFFICE, records -> records.packets().settle(1, "again")))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void anOlderPacketDoesNotReplaceWhatANewerOneBrought() {
        store.change(Samples.OFFICE, records -> {
            records.packets().note("truck-2", "visit", "V-1", state("b", "2026-03-03T00:00:00Z"));
            records.packets().note("truck-2", "visit", "V-1", state("a", "2026-03-02T00:00:00Z"));
        });
        assertThat(found(records -> records.packets().last("truck-2", "visit", "V-1")))
                .contains(state("b", "2026-03-03T00:00:00Z"));
    }

    private static PacketLog.Received state(String letter, String made) {
        return new PacketLog.Received(letter.repeat(64), made);
    }
}
