package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.Trade;
import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.Spot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopEditingTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-06-10T16:00:00Z"), ZoneId.of("UTC"));

    @TempDir
    Path folder;

    private Workplace workplace;
    private ShopEditing editing;

    @BeforeEach
    void begin() {
        var details = new OwnShop.Details(
                "Heron Pool Care", List.of("4 Weir Lane", "Larkwell"), "555-0160", "hello@heron.example", "AS-1");
        OwnShop.begin(folder, details);
        open();
    }

    private void open() {
        workplace = Workplace.open(folder, Library.load(OwnShop.in(folder)), DAY, "Tove Marchetti");
        editing = new ShopEditing(workplace);
    }

    @AfterEach
    void close() {
        workplace.close();
    }

    private ShelfRow row(Shelf shelf, String key) {
        return editing.rows(shelf, "", 10_000).rows().stream()
                .filter(row -> row.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(key + " of "
                        + editing.rows(shelf, "", 10_000).rows().stream()
                                .map(ShelfRow::key)
                                .toList()));
    }

    private EditSheet sheet(Shelf shelf, String key) {
        return editing.open(row(shelf, key));
    }

    private Map<String, String> disk() throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(file -> file.toString().matches(".*\\.(csv|yaml)"))
                    .collect(Collectors.toMap(Path::toString, ShopEditingTest::read));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void aStandardTimeChangesInItsPlaceAndTheShopReadsItAtOnce() {
        var before = read(folder.resolve("catalog/tasks.yaml"));
        var sheet = sheet(Shelf.TASKS, "tasks.yaml: tasks, R02");
        var hours = Spot.of("tasks", "R02", "times", "0", "hours");

        var check = editing.check(sheet, Map.of(hours, "0.35"));
        assertThat(check.passes()).isTrue();
        assertThat(check.edits()).containsExactly(FieldEdit.set(hours, "0.20", "0.35"));
        editing.keep(sheet, Map.of(hours, "0.35"), "timed on nine jobs");

        assertThat(read(folder.resolve("catalog/tasks.yaml")))
                .isEqualTo(before.replaceFirst("hours: 0.20, per: piece", "hours: 0.35, per: piece"));
        assertThat(workplace.library().shop().task("R02").times().get(0).hours())
                .isEqualByComparingTo("0.35");
        var kept = editing.history(sheet.row()).get(0);
        assertThat(kept.who()).isEqualTo("Tove Marchetti");
        assertThat(kept.at()).isEqualTo("2026-06-10T16:00Z");
        assertThat(kept.why()).isEqualTo("timed on nine jobs");
        assertThat(kept.fields()).containsExactly(FieldEdit.set(hours, "0.20", "0.35"));

        editing.takeBack(kept.number(), "counted wrong");
        assertThat(read(folder.resolve("catalog/tasks.yaml"))).isEqualTo(before);
        assertThat(editing.history()).hasSize(2);
        assertThatThrownBy(() -> editing.takeBack(kept.number(), "again")).isInstanceOf(Refusal.NotAllowed.class);
    }

    @Test
    void whatTheReadersRefuseIsToldBesideItsFieldAndNothingIsStored() throws IOException {
        var disk = disk();
        var sheet = sheet(Shelf.TASKS, "tasks.yaml: tasks, R02");
        var hours = Spot.of("tasks", "R02", "times", "0", "hours");
        var permit = Spot.of("tasks", "R02", "permit");
        var typed = Map.of(hours, "-1", permit, "sometimes", Spot.of("tasks", "R02", "title"), "Reseal a switch");

        var check = editing.check(sheet, typed);
        assertThat(check.passes()).isFalse();
        assertThat(check.refused().keySet()).contains(hours);
        assertThat(check.refused().get(hours).allowed()).contains("0");
        var both = editing.check(sheet, Map.of(permit, "sometimes"));
        assertThat(both.refused().get(permit).allowed()).contains("minor-part");

        assertThatThrownBy(() -> editing.keep(sheet, typed, "a try"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("tasks.yaml")
                .hasMessageContaining("R02")
                .hasMessageContaining("hours")
                .hasMessageContaining("-1");
        assertThat(disk()).isEqualTo(disk);
        assertThat(editing.history()).isEmpty();
        assertThat(workplace.library().shop().task("R02").times().get(0).hours())
                .isEqualByComparingTo("0.20");
    }

    @Test
    void aChangeWithoutAReasonIsRefusedAndNothingIsStored() throws IOException {
        var disk = disk();
        var sheet = sheet(Shelf.RATES, "rates.yaml: hourly");
        assertThatThrownBy(() -> editing.keep(sheet, Map.of(Spot.of("hourly", "T"), "150.00"), " "))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("reason");
        assertThat(disk()).isEqualTo(disk);
        assertThat(editing.history()).isEmpty();
    }

    @Test
    void aFileThatSomebodyChangedMeanwhileIsNotOverwritten() throws IOException {
        var file = folder.resolve("catalog/access.csv");
        var sheet = sheet(Shelf.ACCESS, "access.csv: AX-PANEL");
        Files.writeString(file, read(file).replace("AX-PANEL,Front panel", "AX-PANEL,The front panel"));
        var byHand = read(file);
        var hours = Map.of(Spot.of("AX-PANEL", "hours"), "0.20");
        assertThat(editing.check(sheet, hours).refusal().orElseThrow()).hasMessageContaining("changed meanwhile");
        assertThatThrownBy(() -> editing.keep(sheet, hours, "slower"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("access.csv");
        assertThat(read(file)).isEqualTo(byHand);

        assertThat(editing.reread()).isTrue();
        editing.keep(sheet(Shelf.ACCESS, "access.csv: AX-PANEL"), hours, "slower");
        assertThat(read(file)).isEqualTo(byHand.replace("off and on,0.15", "off and on,0.20"));
    }

    @Test
    void ratesTripFeesAndTheLadderChange() {
        editing.keep(sheet(Shelf.RATES, "rates.yaml: hourly"), Map.of(Spot.of("hourly", "T"), "152.50"), "new year");
        editing.keep(
                sheet(Shelf.RATES, "rates.yaml: trip"),
                Map.of(Spot.of("trip", "mountain"), "140.00", Spot.of("trip", "outer"), ""),
                "a new zone");
        editing.keep(
                sheet(Shelf.RATES, "rates.yaml"),
                Map.of(Spot.of("diagnosticFee"), "130.00", Spot.of("minimumHours"), "1.5"),
                "new year");
        var rates = workplace.library().shop().rates();
        assertThat(rates.hourly().get(Trade.TECHNICIAN)).isEqualTo(Money.parse("USD 152.50"));
        assertThat(rates.trip()).containsOnlyKeys("standard", "mountain", "island");
        assertThat(rates.diagnosticFee()).isEqualTo(Money.parse("USD 130"));
        assertThat(rates.minimumHours()).isEqualByComparingTo("1.5");

        var step = editing.fresh(row(Shelf.LADDER, "ladder.yaml: steps, 4"));
        var place = step.row().spot();
        assertThat(editing.check(step, Map.of(place.in("from"), "900.00", place.in("markup"), "20"))
                        .passes())
                .isFalse();
        editing.keep(step, Map.of(place.in("from"), "5000.00", place.in("markup"), "20"), "big heaters");
        assertThat(workplace.library().shop().ladder().steps()).hasSize(6);
        editing.remove(sheet(Shelf.LADDER, "ladder.yaml: steps, 3"), "one step less");
        assertThat(workplace.library().shop().ladder().steps()).hasSize(5);
        var first = sheet(Shelf.LADDER, "ladder.yaml: steps, 0");
        assertThatThrownBy(() -> editing.remove(first, "no start")).hasMessageContaining("first step");
        editing.takeBack(editing.history().get(0).number(), "it was right");
        assertThat(workplace.library().shop().ladder().steps().get(3).from()).isEqualTo(Money.parse("USD 200"));
    }

    @Test
    void aPlaceItsTaxLayersAndItsCapsChange() {
        var file = "jurisdictions/larkwell.yaml";
        editing.keep(
                sheet(Shelf.PLACES, file),
                Map.of(
                        Spot.of("permits", "heater"), "ask",
                        Spot.of("deposit", "capAmount"), "",
                        Spot.of("cancel", "days"), "5",
                        Spot.of("tax", "taxable"), "part\nconsumable\nlabour"),
                "new county rules");
        var layer = editing.fresh(row(Shelf.PLACES, file + ": tax, layers, 1"));
        var place = layer.row().spot();
        editing.keep(
                layer, Map.of(place.in("name"), "City of Larkwell", place.in("rate"), "0.5"), "city tax from July");
        var larkwell = larkwell("larkwell").orElseThrow();
        assertThat(larkwell.cancelDays()).isEqualTo(5);
        assertThat(larkwell.deposit().toString()).doesNotContain("1000");
        assertThat(larkwell.tax().layers()).hasSize(3);
        assertThat(larkwell.tax().taxableKinds()).contains("labour");

        var copy = editing.fresh(row(Shelf.PLACES, file));
        editing.keep(
                copy,
                Map.of(Spot.of("id"), "tern-point", Spot.of("name"), "Tern Point, Corran County"),
                "we go there now");
        assertThat(larkwell("tern-point").orElseThrow().name()).isEqualTo("Tern Point, Corran County");
        assertThat(read(folder.resolve("catalog/jurisdictions/tern-point.yaml")))
                .contains("gasLicence: Corran County gas fitter");
        editing.takeBack(editing.history().get(0).number(), "not yet");
        assertThat(larkwell("tern-point")).isEmpty();
    }

    private Optional<fairflame.catalog.Jurisdiction> larkwell(String id) {
        return workplace.library().shop().jurisdictions().stream()
                .filter(place -> place.id().equals(id))
                .findFirst();
    }

    @Test
    void suppliersComeChangeAndGoUnlessAPartNeedsThem() {
        var like = editing.rows(Shelf.SUPPLIERS, "", 100).rows().get(0);
        var fresh = editing.fresh(like);
        var typed = fresh.fields().stream()
                .collect(Collectors.toMap(
                        ShelfRow.RowField::spot, field -> switch (field.spot().last()) {
                            case "id" -> "weir";
                            case "email" -> "orders@weir.example";
                            case "phone" -> "555-0177";
                            case "lead_days" -> "3";
                            default -> "Weir, Valve and Seal";
                        }));
        editing.keep(fresh, typed, "new supplier");
        assertThat(workplace.library().shop().supplier("weir").name()).isEqualTo("Weir, Valve and Seal");
        editing.remove(sheet(Shelf.SUPPLIERS, "suppliers.csv: weir"), "never delivered");
        var needed = editing.open(like);
        assertThatThrownBy(() -> editing.remove(needed, "gone"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("parts.csv");
    }

    @Test
    void companyAndPrintedTextsChangeInBothLanguages() {
        editing.keep(
                sheet(Shelf.COMPANY, "company.yaml"),
                Map.of(
                        Spot.of("name"), "Heron Pool & Spa",
                        Spot.of("address"), "4 Weir Lane\nSecond floor\nLarkwell",
                        Spot.of("licence", "es"), "Licencia AS-1"),
                "new name");
        assertThat(workplace.library().shopName()).isEqualTo("Heron Pool & Spa");
        assertThat(workplace.library().paper("es").company().licence()).isEqualTo("Licencia AS-1");
        assertThat(workplace.library().paper("en").company().seller().address()).hasSize(3);
        editing.keep(
                sheet(Shelf.TEXTS, "es/layout.yaml: words, quote"),
                Map.of(Spot.of("words", "quote"), "Cotización"),
                "so we say it");
        assertThat(read(folder.resolve("templates/es/layout.yaml"))).contains("\n  quote: \"Cotización\"\n");
        var note = sheet(Shelf.TEXTS, "notes.yaml: notes, N-ELEC");
        var empty = Map.of(Spot.of("notes", "N-ELEC", "text"), "");
        assertThat(editing.check(note, empty).passes()).isFalse();
    }

    @Test
    void aPartIsAddedChangedSupersededAndWithdrawn() {
        var fresh = editing.fresh(editing.rows(Shelf.PARTS, "", 1).rows().get(0));
        var at = Spot.of("");
        var typed = new java.util.HashMap<>(Map.of(
                at.in("number"), "HP-900",
                at.in("description"), "Header plug, brass",
                at.in("cost"), "12.4x",
                at.in("supplier"), workplace.library().shop().suppliers().get(0).id(),
                at.in("source"), "invoice 88"));
        var check = editing.check(fresh, typed);
        assertThat(check.refused().keySet()).containsExactly(at.in("cost"));
        typed.put(at.in("cost"), "12.40");
        editing.keep(fresh, typed, "we stock it now");

        editing.keep(sheet(Shelf.PARTS, "HP-900"), Map.of(Spot.of("HP-900", "cost"), "13.10"), "dearer");
        assertThat(new Upkeep(workplace)
                        .history("HP-900").stream()
                                .map(past -> past.cost().toString())
                                .toList())
                .containsExactly("USD 12.40", "USD 13.10");
        var old = sheet(Shelf.PARTS, "HP-900");
        editing.keep(
                old,
                Map.of(
                        Spot.of("HP-900", "replaced_by"),
                        workplace.library().shop().parts().get(0).number()),
                "the other one is better");
        assertThat(workplace.library().shop().parts())
                .noneMatch(part -> part.number().equals("HP-900"));
        assertThat(row(Shelf.PARTS, "HP-900").former()).isTrue();
        assertThatThrownBy(() -> editing.keep(old, Map.of(Spot.of("HP-900", "cost"), "1.00"), "late"))
                .hasMessageContaining("changed meanwhile");
        editing.takeBack(editing.history().get(0).number(), "no, it is not");
        editing.keep(sheet(Shelf.PARTS, "HP-900"), Map.of(Spot.of("HP-900", "sold"), "no"), "nobody wants it");
        assertThat(workplace.library().shop().parts())
                .noneMatch(part -> part.number().equals("HP-900"));
        assertThatThrownBy(() -> editing.takeBack(1, "first"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("HP-900");
        assertThat(editing.history(row(Shelf.PARTS, "HP-900"))).hasSize(5);
    }

    @Test
    void aPartThatATaskNeedsIsNotWithdrawn() {
        var needed = workplace.library().shop().parts().stream()
                .filter(part -> part.role().equals("water-thread-tape"))
                .toList();
        assertThat(needed).hasSize(1);
        var number = needed.get(0).number();
        var sheet = sheet(Shelf.PARTS, number);
        assertThatThrownBy(() -> editing.keep(sheet, Map.of(Spot.of(number, "sold"), "no"), "gone"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("water-thread-tape");
        assertThat(editing.history()).isEmpty();
    }

    @Test
    void aLaterChangeIsTakenBackFirst() {
        var hourly = Spot.of("hourly", "T");
        editing.keep(sheet(Shelf.RATES, "rates.yaml: hourly"), Map.of(hourly, "150.00"), "one");
        editing.keep(sheet(Shelf.RATES, "rates.yaml: hourly"), Map.of(hourly, "155.00"), "two");
        assertThatThrownBy(() -> editing.takeBack(1, "back"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("rates.yaml, hourly, T")
                .hasMessageContaining("155.00");
        editing.takeBack(2, "back");
        editing.takeBack(1, "back");
        assertThat(workplace.library().shop().rates().hourly().get(Trade.TECHNICIAN))
                .isEqualTo(Money.parse("USD 145"));
    }

    @Test
    void theSamplesOfTheDemoShopAreNeverChanged(@TempDir Path other) {
        try (var demo = Workplace.open(other, Pad.LIBRARY, DAY, "Tove Marchetti")) {
            var there = new ShopEditing(demo);
            assertThat(there.own()).isFalse();
            var sheet = there.open(there.rows(Shelf.RATES, "hourly", 1).rows().get(0));
            var typed = Map.of(Spot.of("hourly", "T"), "150.00");
            assertThat(there.check(sheet, typed).refusal().orElseThrow()).hasMessageContaining("start your own shop");
            assertThatThrownBy(() -> there.keep(sheet, typed, "why")).hasMessageContaining("start your own shop");
            var part = there.open(there.rows(Shelf.PARTS, "", 1).rows().get(0));
            assertThatThrownBy(
                            () -> there.keep(part, Map.of(part.fields().get(2).spot(), "1.00"), "why"))
                    .hasMessageContaining("start your own shop");
        }
    }

    @Test
    void everyRowOfEveryTableOpensAndStaysAsItIsWhenNothingIsTyped() {
        for (var shelf : Shelf.values()) {
            var rows = editing.rows(shelf, "", 10_000);
            assertThat(rows.found()).as(shelf.id()).isPositive();
            assertThat(rows.rows().stream().map(ShelfRow::key)).as(shelf.id()).doesNotHaveDuplicates();
        }
        for (var key : List.of("larkwell", "osier-bay", "brinefield")) {
            var sheet = sheet(Shelf.PLACES, "jurisdictions/" + key + ".yaml");
            var same = sheet.fields().stream()
                    .collect(Collectors.toMap(ShelfRow.RowField::spot, ShelfRow.RowField::value));
            assertThat(editing.check(sheet, same).edits()).isEmpty();
        }
    }

    @Test
    void theHistoryIsThereWhenTheShopIsOpenedAgain() {
        editing.keep(
                sheet(Shelf.TESTS, "tests.csv: J"),
                Map.of(sheet(Shelf.TESTS, "tests.csv: J").fields().get(1).spot(), "Bonding, grounding"),
                "clearer");
        workplace.close();
        open();
        assertThat(editing.history()).hasSize(1);
        assertThat(editing.history(row(Shelf.TESTS, "tests.csv: J")).get(0).why())
                .isEqualTo("clearer");
    }
}
