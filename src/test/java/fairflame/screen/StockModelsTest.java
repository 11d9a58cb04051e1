package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.edit.Spot;
import fairflame.invoice.report.ActualHours;
import fairflame.invoice.report.TimeComparison;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.kit.Later;
import fairflame.screen.kit.LongWork;
import fairflame.screen.look.Words;
import fairflame.screen.stock.FieldWords;
import fairflame.screen.stock.HoursModel;
import fairflame.screen.stock.PriceListModel;
import fairflame.screen.stock.StockModel;
import fairflame.visit.Library;
import fairflame.visit.OwnShop;
import fairflame.visit.Shelf;
import fairflame.visit.ShelfRow;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The stock room's view models, without a window. */
class StockModelsTest {
    @TempDir
    Path folder;

    private Workplace workplace;
    private StockModel model;

    @BeforeEach
    void open() {
        OwnShop.begin(
                folder,
                new OwnShop.Details("Heron Pool Care", List.of("4 Weir Lane"), "555-0160", "hello@heron.example", ""));
        workplace = Workplace.open(folder, Library.load(OwnShop.in(folder)), Shop.DAY, "Tove Marchetti");
        model = new StockModel(new WorkplaceScreens(workplace, false).stock(), new AtOnce());
    }

    @AfterEach
    void close() {
        workplace.close();
    }

    private ShelfRow only(Shelf shelf, String letters) {
        model.table().set(shelf.id());
        model.search().set(letters);
        assertThat(model.rows().rows()).isNotEmpty();
        return model.rows().rows().get(0);
    }

    @Test
    void theSearchNarrowsAndAnotherTableStartsAfresh() {
        model.table().set("tasks");
        var all = model.rows().found();
        model.search().set("GAS VALVE");
        assertThat(model.rows().found()).isPositive().isLessThan(all);
        model.table().set("suppliers");
        assertThat(model.search().get()).isEmpty();
        assertThat(model.rows().found()).isPositive();
    }

    @Test
    void aWrongValueIsToldBesideItsFieldAndTypingTakesTheWordBack() {
        var edit = model.open(only(Shelf.ACCESS, "AX-PANEL"));
        var hours = Spot.of("AX-PANEL", "hours");
        edit.typed(hours).set("soon");
        edit.look();
        assertThat(edit.refused(hours).get()).contains("soon").contains("digits");
        assertThat(edit.check().get()).isEmpty();
        edit.typed(hours).set("0.25");
        assertThat(edit.refused(hours).get()).isEmpty();
        edit.look();
        assertThat(edit.check().get().orElseThrow().edits()).hasSize(1);
        edit.keep();
        assertThat(edit.whyRefused().get()).isNotEmpty();
        assertThat(edit.done().get()).isFalse();
        edit.why().set("slower than thought");
        edit.keep();
        assertThat(edit.done().get()).isTrue();
        assertThat(model.changes().get()).isEqualTo(1);
        assertThat(model.open(only(Shelf.ACCESS, "AX-PANEL")).history()).hasSize(1);
    }

    @Test
    void aFurtherValueIsToldByItsName() {
        var edit = model.open(only(Shelf.RATES, "island"));
        edit.name().set("mountain");
        edit.value().set("140.00");
        edit.why().set("a new zone");
        edit.look();
        assertThat(edit.check().get()).isPresent();
        edit.keep();
        assertThat(workplace.library().shop().rates().trip()).containsKey("mountain");
    }

    @Test
    void fieldsHaveNamesWithUnitsInBothLanguages() {
        var part = only(Shelf.PARTS, workplace.library().shop().parts().get(0).number());
        var cost = part.field("cost").orElseThrow().spot();
        assertThat(new FieldWords(Words.in("en"), "USD").field(part, cost)).isEqualTo("Cost of one unit, USD");
        assertThat(new FieldWords(Words.in("es"), "USD").field(part, cost)).isEqualTo("Costo por unidad, USD");
        for (var shelf : Shelf.values()) {
            model.table().set(shelf.id());
            model.rows()
                    .rows()
                    .forEach(row -> assertThat(new FieldWords(Words.in("es"), "USD").title(row))
                            .isNotBlank());
        }
    }

    @Test
    void whatIsNotToldOfAPriceListIsAskedBesideItsField() {
        var list = model.list();
        list.look((stage, rows) -> "");
        assertThat(list.preview().get()).isEmpty();
        assertThat(list.refusal().get()).contains("supplier");
        list.supplier().set("tern");
        list.look((stage, rows) -> "");
        assertThat(list.preview().get()).isEmpty();
        assertThat(list.fileRefused().get()).contains("CSV or XLSX");
        list.file().set("somewhere.csv");
        list.look((stage, rows) -> "");
        assertThat(list.preview().get()).isEmpty();
        assertThat(list.headingRefused("number").get()).contains("heading");
    }

    @Test
    void aPreviewIsShownKindByKindAndPageByPage() throws IOException {
        var text = new StringBuilder("Item,Price,Text\n");
        for (int i = 0; i < 150; i++) {
            text.append("N-").append(i).append(i < 70 ? ",cheap" : ",2.00").append(",Thing\n");
        }
        var file = Files.writeString(folder.resolve("list.csv"), text);
        var found = model.work()
                .preview(
                        "tern",
                        file,
                        java.util.Map.of("number", "Item", "cost", "Price", "description", "Text"),
                        (stage, rows) -> {});
        var list = model.list();
        list.supplier().set("tern");
        list.looked(found);
        assertThat(list.kind().get()).isEqualTo(PriceListModel.Kind.REFUSED);
        assertThat(list.refusedRows()).hasSize(60);
        assertThat(list.refusedRows().get(0).row()).isEqualTo(2);
        assertThat(list.hidden()).isEqualTo(10);
        list.more();
        assertThat(list.refusedRows()).hasSize(70);
        list.kind().set(PriceListModel.Kind.ADDED);
        assertThat(list.changes()).hasSize(60);
        assertThat(list.count(PriceListModel.Kind.ADDED)).isEqualTo(80);
        assertThat(list.heading("number").get()).isEqualTo("Item");
        assertThatThrownBy(() -> model.work().take(found, (stage, rows) -> {})).isInstanceOf(Refusal.class);
    }

    @Test
    void aListIsLookedAtAndTakenOverOnceAndEndedWithoutATrace() throws IOException {
        var file = Files.writeString(folder.resolve("list.csv"), "Item,Price,Text\nN-1,2.00,Thing\n");
        var told = new ArrayList<String>();
        var later = new Later();
        var list = list(later, file);
        assertThat(later.waiting()).as("the shop's files are read again first").isEqualTo(1);
        later.go();
        list.look((stage, rows) -> stage.name());
        list.look((stage, rows) -> stage.name());
        assertThat(later.waiting()).as("a second press is not heeded").isEqualTo(1);
        later.go();
        assertThat(list.count(PriceListModel.Kind.ADDED)).isEqualTo(1);
        var ended = list(AtOnce.endedAt(0), file);
        ended.look((stage, rows) -> stage.name());
        assertThat(ended.preview().get()).isEmpty();
        assertThat(ended.refusal().get()).isEqualTo("ended by hand");
        ended.looked(list.preview().get().orElseThrow());
        list(AtOnce.endedAt(0), file).undo(1);
        assertThat(model.work().imports()).isEmpty();
        list.take((stage, rows) -> {
            told.add(stage.name());
            return stage.name();
        });
        later.go();
        assertThat(told).contains("STORING");
        assertThat(model.work().imports()).hasSize(1);
        assertThat(list.preview().get()).isEmpty();
    }

    private PriceListModel list(LongWork runner, Path file) {
        var list = new StockModel(model.work(), runner).list();
        list.supplier().set("tern");
        list.file().set(file.toString());
        list.heading("number").set("Item");
        list.heading("cost").set("Price");
        list.heading("description").set("Text");
        return list;
    }

    @Test
    void aFileThatWasBrokenByHandIsToldAndTheShopGoesOnAsItWas() throws IOException {
        var file = folder.resolve("catalog/rates.yaml");
        var text = Files.readString(file);
        Files.writeString(file, text.replace("T: 145.00", "T: much"));
        model.reread();
        assertThat(model.refusal().get()).contains("rates.yaml").contains("much");
        Files.writeString(file, text.replace("T: 145.00", "T: 151.00"));
        model.reread();
        assertThat(model.refusal().get()).isEmpty();
        assertThat(workplace.library().shop().rates().hourly().toString()).contains("151.00");
    }

    @Test
    void aSuggestedTimeCountsOnlyWhenAPersonTakesItAndCanBeTakenBack() {
        var hours = new HoursModel(model.work(), () -> {});
        var jobs = new java.util.ArrayList<ActualHours>();
        for (int i = 0; i < TimeComparison.ENOUGH_JOBS; i++) {
            jobs.add(new ActualHours(
                    "Q-" + i, LocalDate.of(2026, 5, 1), "R03", "", new BigDecimal("0.30"), new BigDecimal("0.45")));
        }
        var comparison = TimeComparison.of(jobs).get(0);
        assertThat(hours.suggestion(comparison)).hasValue(new BigDecimal("1.50"));
        assertThat(hours.times("R03", new BigDecimal("1.50"))).isEqualByComparingTo("0.45");
        hours.accept(comparison);
        assertThat(hours.refused("R03").get()).contains("reason");
        assertThat(workplace.library().shop().task("R03").times().get(0).hours())
                .isEqualByComparingTo("0.30");
        hours.why("R03").set("eight jobs");
        hours.accept(comparison);
        assertThat(workplace.library().shop().task("R03").times().get(0).hours())
                .isEqualByComparingTo("0.45");
        assertThat(hours.suggestion(comparison)).isEmpty();
        assertThat(hours.standing("R03").orElseThrow().who()).isEqualTo("Tove Marchetti");
        hours.why("R03").set("one of them was a trainee");
        hours.takeBack("R03");
        assertThat(workplace.library().shop().task("R03").times().get(0).hours())
                .isEqualByComparingTo("0.30");
        assertThat(hours.decisions("R03")).hasSize(2);
    }
}
