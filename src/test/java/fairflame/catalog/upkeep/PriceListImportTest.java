package fairflame.catalog.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.Part;
import fairflame.catalog.upkeep.PriceSheet.SheetRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceListImportTest {
    private static final CurrencyUnit USD = CurrencyUnit.USD;
    private static final ColumnMapping MAPPING = ColumnMapping.parse(
            "tern",
            List.of(
                    "number=Item",
                    "cost=Dealer price",
                    "description=Name",
                    "list-price=Retail",
                    "replaced-by=Use instead"));

    private static Part part(String number, String cost, String supplier) {
        return new Part(
                number,
                "high-limit-switch",
                "",
                "Switch " + number,
                false,
                "each",
                Money.of(USD, new java.math.BigDecimal(cost)),
                Optional.empty(),
                supplier,
                12,
                "invented for the demo");
    }

    private static PriceSheet sheet(String... rows) {
        var read = new ArrayList<SheetRow>();
        for (int i = 0; i < rows.length; i++) {
            read.add(new SheetRow(i + 2, List.of(rows[i].split("\\|", -1))));
        }
        return new PriceSheet(
                "spring.csv", List.of("Item", "Name", "Dealer price", "Retail", "Use instead"), List.copyOf(read));
    }

    private static Preview preview(List<Stocked> current, String... rows) {
        return PriceListImport.preview(sheet(rows), MAPPING, USD, current);
    }

    private static final List<Stocked> TWO =
            List.of(Stocked.of(part("HS-1", "32.00", "tern")), Stocked.of(part("HS-2", "40.00", "tern")));

    @Test
    void tellsNewChangedVanishedAndUnchangedPartsApart() {
        var current = List.of(
                Stocked.of(part("HS-1", "32.00", "tern")),
                Stocked.of(part("HS-2", "40.00", "tern")),
                Stocked.of(part("HS-3", "41.00", "tern")),
                Stocked.of(part("GP-1", "3.10", "gantry")));
        var found = preview(current, "HS-1|Switch HS-1|33.10||", "HS-2|Switch HS-2|40.00||", "HS-9|New one|7.25|9.99|");
        assertThat(found.added()).extracting(PartChange::number).containsExactly("HS-9");
        assertThat(found.changed()).extracting(PartChange::number).containsExactly("HS-1");
        assertThat(found.changed().get(0).words()).containsExactly("cost USD 32.00 -> USD 33.10");
        assertThat(found.vanished()).extracting(PartChange::number).containsExactly("HS-3");
        assertThat(found.unchanged()).isEqualTo(1);
        assertThat(found.refused()).isEmpty();
    }

    @Test
    void anEmptyCellLeavesTheFieldAsItIs() {
        var found = preview(TWO, "HS-1||33.10||", "HS-2||40.00||");
        assertThat(found.changed().get(0).after().part().description()).isEqualTo("Switch HS-1");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
            HS-1|a|abc||       ; cost 'abc'         ; an amount such as 48.35
            HS-1|a|||          ; cost 'nothing'     ; an amount
            HS-1|a|12.345||    ; cost '12.345'      ; whole cents
            HS-1|a|0||         ; cost '0'           ; above zero
            HS-1|a|-3.00||     ; cost '-3.00'       ; an amount
            HS-1|a|9.00|x|     ; list price 'x'     ; an amount
            HS 1|a|9.00||      ; part number 'HS 1' ; letters
            |a|9.00||          ; part number        ; a part number in every row
            HS-7||9.00||       ; description        ; a description for a part that is new
            GP-1|a|9.00||      ; part number 'GP-1' ; comes from gantry
            HS-1|a|9.00||HS-1  ; replacement 'HS-1' ; another part
            HS-1|a|9.00||XX    ; replacement 'XX'   ; a part of this price list
            """)
    void refusesARowWithItsNumberAndReason(String row, String value, String allowed) {
        var current = new ArrayList<>(TWO);
        current.add(Stocked.of(part("GP-1", "3.10", "gantry")));
        var found = preview(current, "HS-2|Switch HS-2|40.00||", row);
        assertThat(found.refused()).hasSize(1);
        assertThat(found.refused().get(0).row()).isEqualTo(3);
        assertThat(found.refused().get(0).reason()).contains(value).contains(allowed);
        assertThat(found.changed()).isEmpty();
    }

    @Test
    void refusesTheSecondRowOfAPartAndNamesTheFirst() {
        var found = preview(TWO, "HS-1||33.00||", "HS-2||40.00||", "HS-1||34.00||");
        assertThat(found.refused()).singleElement().satisfies(row -> {
            assertThat(row.row()).isEqualTo(4);
            assertThat(row.reason()).contains("row 2");
        });
    }

    @Test
    void oneRefusedRowKeepsTheWholeListOut() {
        var found = preview(TWO, "HS-1||33.00||", "HS-2||wrong||");
        assertThatThrownBy(found::accepted)
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("spring.csv row 3")
                .hasMessageContaining("wrong");
    }

    @Test
    void aRefusedRowDoesNotMakeItsPartVanish() {
        assertThat(preview(TWO, "HS-1||33.00||", "HS-2||wrong||").vanished()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            $48.35               ; 48.35
            1,250.00             ; 1250.00
            48.350000000000001   ; 48.35
            48.349999999999994   ; 48.35
            7                    ; 7.00
            """)
    void readsAmountsAsSpreadsheetsWriteThem(String text, String amount) {
        assertThat(Cell.money("cost", text, USD).getAmount()).isEqualByComparingTo(amount);
    }

    @Test
    void aSupersededPartLeavesNewQuotesAndItsHeirServesTheRole() {
        var found = preview(TWO, "HS-1||32.00||HS-9", "HS-2||40.00||", "HS-9|Later switch|35.00||");
        var states = found.accepted().stream().map(PartChange::after).toList();
        var list = Upkept.of(List.of(part("HS-1", "32.00", "tern"), part("HS-2", "40.00", "tern")), states);
        assertThat(list.forQuotes()).extracting(Part::number).containsExactly("HS-2", "HS-9");
        assertThat(list.forQuotes().get(1).role()).isEqualTo("high-limit-switch");
        assertThat(list.heir(list.all().get(0)).part().number()).isEqualTo("HS-9");
    }

    @Test
    void refusesReplacementsThatLeadInACircle() {
        var found = preview(TWO, "HS-1||32.00||HS-2", "HS-2||40.00||HS-1");
        assertThat(found.refused()).hasSize(2);
        assertThat(found.refused().get(0).reason()).contains("a row of replacements that ends");
    }

    @Test
    void aPartThatComesBackIsNoLongerMarked() {
        var gone = new Stocked(part("HS-1", "32.00", "tern"), "", true);
        var found = preview(List.of(gone), "HS-1||32.00||");
        assertThat(found.changed().get(0).words()).containsExactly("back in the supplier's list");
    }

    @Test
    void refusesAHeadingThatIsMissingOrThereTwice() {
        var once = new PriceSheet("a.csv", List.of("Item", "Price"), sheet("x").rows());
        assertThatThrownBy(() -> PriceListImport.preview(once, MAPPING, USD, TWO))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is refused; allowed: one of the sheet's: Item, Price");
        var twice = new PriceSheet(
                "a.csv",
                List.of("Item", "Dealer price", "dealer price"),
                sheet("x").rows());
        var mapping = ColumnMapping.parse("tern", List.of("number=Item", "cost=Dealer price"));
        assertThatThrownBy(() -> PriceListImport.preview(twice, mapping, USD, TWO))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("once");
    }

    @Test
    void aMappingNeedsNumberAndCost() {
        assertThatThrownBy(() -> ColumnMapping.parse("tern", List.of("number=Item")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("cost");
        assertThatThrownBy(() -> ColumnMapping.parse("tern", List.of("colour=Item")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("colour");
    }

    @Test
    void undoIsRefusedWhenALaterImportChangedThePart() {
        var first = preview(TWO, "HS-1||33.00||", "HS-2||40.00||").accepted();
        var now = new HashMap<String, Stocked>();
        first.forEach(change -> now.put(change.number(), change.after()));
        PriceListUndo.refuseUnlessLast(first, now);
        now.put("HS-1", Stocked.of(part("HS-1", "34.00", "tern")));
        assertThatThrownBy(() -> PriceListUndo.refuseUnlessLast(first, now))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("HS-1");
    }

    @Test
    void everyRowIsCountedOnceWhateverTheList() {
        var random = new Random(20260311);
        for (int round = 0; round < 300; round++) {
            var current = new ArrayList<Stocked>();
            for (int i = 0; i < 20; i++) {
                if (random.nextBoolean()) {
                    current.add(
                            Stocked.of(part("P-" + i, "1" + i + ".00", random.nextInt(4) == 0 ? "gantry" : "tern")));
                }
            }
            var rows = new String[1 + random.nextInt(30)];
            for (int i = 0; i < rows.length; i++) {
                var number = "P-" + random.nextInt(25);
                rows[i] = number + "|name|" + (random.nextInt(9) == 0 ? "bad" : random.nextInt(90) + 1) + "||";
            }
            var found = preview(current, rows);
            assertThat(found.added().size()
                            + found.changed().size()
                            + found.refused().size()
                            + found.unchanged())
                    .as("seed 20260311 round %d", round)
                    .isEqualTo(rows.length);
        }
    }
}
