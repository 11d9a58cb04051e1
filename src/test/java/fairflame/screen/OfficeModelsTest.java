package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.invoice.account.Ageing;
import fairflame.invoice.permit.Due;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.kit.LongWork;
import fairflame.screen.office.BooksModel;
import fairflame.screen.office.DueModel;
import fairflame.screen.office.FiguresModel;
import fairflame.screen.office.MoneyModel;
import fairflame.screen.office.OrdersModel;
import fairflame.screen.office.PacketsModel;
import fairflame.screen.office.SpanModel;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages of the office without a window. */
class OfficeModelsTest {
    @TempDir
    private static Path truck;

    @TempDir
    private static Path whole;

    @TempDir
    private Path folder;

    private Workplace workplace;
    private OfficeDoor work;

    private static final LongWork AT_ONCE = new AtOnce();

    @BeforeAll
    static void anOfficeAtWork() throws IOException {
        OfficeFolder.busy(whole, OfficeFolder.packet(truck));
    }

    @BeforeEach
    void open() throws IOException {
        Files.copy(whole.resolve(Workplace.DATABASE), folder.resolve(Workplace.DATABASE));
        workplace = OfficeFolder.at(folder, "2026-06-20");
        work = new OfficeDoor(workplace);
    }

    @AfterEach
    void close() {
        workplace.close();
    }

    @Test
    void whatIsDueStandsByHowNearItIsAndCanBeSifted() {
        var model = new DueModel(work, AT_ONCE);
        assertThat(model.groups().get(DueModel.When.LATE))
                .singleElement()
                .satisfies(row -> assertThat(row.document()).isEqualTo("I-2026-0001"));
        assertThat(model.groups()).doesNotContainKey(DueModel.When.SOON);
        assertThat(model.kinds()).containsExactly(Due.Kind.QUOTE_ENDS, Due.Kind.INVOICE_DUE);
        model.kind().set(Optional.of(Due.Kind.QUOTE_ENDS));
        assertThat(model.groups()).containsOnlyKeys(DueModel.When.LATER);
        model.calendar();
        assertThat(Path.of(model.written().get())).exists().hasFileName("due.ics");
    }

    @Test
    void aLineLeftOutIsNeitherCountedNorOrdered() {
        var model = new OrdersModel(work, AT_ONCE);
        var sheet = model.sheets().get(0);
        var supplier = sheet.supplier().id();
        var all = model.cost(sheet);
        var left = sheet.lines().get(0);
        model.choose(supplier, left.part().number(), false);
        assertThat(model.cost(sheet)).isEqualTo(all.minus(left.cost()));
        model.place(sheet);
        assertThat(model.written().get()).contains("O-2026-0002.pdf").contains("O-2026-0002.xlsx");
        assertThat(model.sheets().get(0).lines())
                .singleElement()
                .satisfies(line ->
                        assertThat(line.part().number()).isEqualTo(left.part().number()));
        model.place(model.sheets().get(0));
        assertThat(model.refusal(supplier).get()).contains("at least one part");
        assertThat(model.orders()).hasSize(2);
        var order = model.orders().get(0);
        assertThat(order.complete()).isFalse();
        model.allHere(order);
        assertThat(model.orders().get(0).complete()).isTrue();
        model.mark(order.order().number(), order.items().get(0).part().number(), false);
        assertThat(model.orders().get(0).complete()).isFalse();
        model.mark("O-2026-0099", "SW-01", true);
        assertThat(model.refusal("O-2026-0099").get()).contains("order that was placed");
    }

    @Test
    void moneyIsSplitIntoWhatIsOwedHeldAndGivenUp() {
        var model = new MoneyModel(work, AT_ONCE);
        assertThat(model.share(Ageing.Step.TO_30)).isEqualTo(1);
        assertThat(model.share(Ageing.Step.NOT_DUE)).isBetween(0.1, 0.99);
        assertThat(model.share(Ageing.Step.OVER_90)).isZero();
        assertThat(model.deposits()).hasSize(2);
        assertThat(model.toPayBack()).isEmpty();
        assertThat(model.givenUp()).hasSize(1);
        assertThat(model.names()).hasSize(6);
        model.customer().value().set("odUya");
        assertThat(model.names()).containsExactly("Marguerite Oduya");
        model.customer().value().set("");
        model.statement();
        assertThat(model.customer().refusal().get()).contains("the name on a quote");
        model.customer().value().set("Nobody");
        model.statement();
        assertThat(model.customer().refusal().get()).contains("Nobody");
        model.customer().value().set("Marguerite Oduya");
        assertThat(model.names()).isEmpty();
        model.statement();
        assertThat(Path.of(model.written().get())).exists();
    }

    @Test
    void aSpanSaysAtTheFieldWhatIsWrong() {
        var span = new SpanModel(LocalDate.of(2026, 6, 20));
        assertThat(span.read().orElseThrow().from()).isEqualTo("2026-01-01");
        span.from().value().set("June");
        assertThat(span.read()).isEmpty();
        assertThat(span.from().refusal().get()).contains("June").contains("year-month-day");
        assertThat(span.to().refusal().get()).isEmpty();
        span.from().value().set("2026-07-01");
        assertThat(span.from().refusal().get()).isEmpty();
        assertThat(span.read()).isEmpty();
        assertThat(span.to().refusal().get()).contains("not before the first day");
    }

    @Test
    void aConflictStaysUntilAPersonSaysWhatWasDone() throws IOException {
        var model = new PacketsModel(work, AT_ONCE);
        assertThat(model.conflicts()).hasSize(2);
        model.settle(1);
        assertThat(model.settlement(1).refusal().get()).contains("a few words");
        model.settlement(1).value().set("asked the owner, 555-0199 is right");
        model.settle(1);
        assertThat(model.conflicts().get(0).settled()).contains("555-0199");
        model.take();
        assertThat(model.file().refusal().get()).contains("the place of a file");
        model.file().value().set(folder.resolve("gone.zip").toString());
        model.take();
        assertThat(model.file().refusal().get()).contains("gone.zip");
        assertThat(model.taken().get()).isEmpty();
        var again = Files.list(truck)
                .filter(file -> file.getFileName().toString().startsWith("packet-"))
                .findFirst()
                .orElseThrow();
        model.file().value().set(again.toString());
        model.take();
        assertThat(model.taken().get().orElseThrow().added()).isZero();
        assertThat(model.conflicts()).as("a conflict is told once").hasSize(2);
    }

    @Test
    void aNameIsRefusedAtItsOwnField() {
        var model = new PacketsModel(work, AT_ONCE);
        assertThat(model.named().get()).isEqualTo("office");
        model.series().value().set("q b");
        model.name();
        assertThat(model.series().refusal().get()).contains("capital letter");
        assertThat(model.laptop().refusal().get()).isEmpty();
        model.series().value().set("QC");
        model.laptop().value().set("");
        model.name();
        assertThat(model.laptop().refusal().get()).isNotEmpty();
        model.laptop().value().set("desk");
        model.name();
        assertThat(model.named().get()).isEqualTo("desk");
        model.export();
        assertThat(Path.of(model.written().get())).exists();
    }

    @Test
    void aStandardTimeChangesOnlyWhenAPersonSaysWhy() {
        var model = new FiguresModel(work, AT_ONCE);
        var row = model.report().get().orElseThrow().hours().get(0);
        assertThat(row.jobs()).isEqualTo(8);
        assertThat(FiguresModel.acceptable(row)).isTrue();
        var factor = row.suggestion().orElseThrow();
        var before = task(row.task());
        model.accept(row.task(), factor);
        assertThat(model.reason(row.task()).refusal().get()).contains("a reason in words");
        assertThat(model.decision(row.task())).isEmpty();
        assertThat(task(row.task())).isEqualTo(before);
        model.reason(row.task()).value().set("eight jobs in May");
        model.accept(row.task(), factor);
        assertThat(model.decision(row.task())).hasValueSatisfying(decision -> {
            assertThat(decision.who()).isEqualTo("Ines Calloway");
            assertThat(decision.on()).isEqualTo("2026-06-20");
            assertThat(decision.factor()).isEqualTo(factor);
        });
        assertThat(task(row.task())).isEqualTo(before.timed(factor));
    }

    private fairflame.catalog.Task task(String id) {
        return workplace.library().shop().task(id);
    }

    @Test
    void figuresAreThoseOfTheTypedDays() {
        var model = new FiguresModel(work, AT_ONCE);
        assertThat(model.report().get().orElseThrow().revenue()).isNotEmpty();
        model.span().from().value().set("2026-06-19");
        model.show();
        assertThat(model.report().get().orElseThrow().wins()).isEmpty();
        assertThat(model.report().get().orElseThrow().revenue()).hasSize(1);
        model.write();
        assertThat(Path.of(model.written().get())).exists().hasFileName("report-2026-06-19-2026-06-20.pdf");
    }

    @Test
    void booksLeaveAndDataComeBackOnlyIntoAnEmptyFolder() throws IOException {
        var model = new BooksModel(work, AT_ONCE);
        model.writeJournal();
        assertThat(model.said().get().count()).isGreaterThanOrEqualTo(6);
        model.writeElectronic();
        assertThat(model.invoice().refusal().get()).contains("the number of an invoice");
        model.invoice().value().set("I-2026-0099");
        model.writeElectronic();
        assertThat(model.invoice().refusal().get()).contains("I-2026-0099");
        model.invoice().value().set("0001");
        assertThat(model.numbers()).containsExactly("I-2026-0001");
        model.invoice().value().set("I-2026-0001");
        model.writeElectronic();
        assertThat(Path.of(model.said().get().place())).exists();
        model.writeBackup();
        assertThat(model.said().get().act()).isEqualTo("backup");
        model.writeBackup();
        assertThat(model.backup().refusal().get()).contains("does not exist yet");
        assertThat(model.said().get().act()).isEmpty();
        model.copy().value().set(model.backup().text());
        model.copyFolder().value().set(folder.toString());
        model.putBack();
        assertThat(model.copyFolder().refusal().get()).contains(Workplace.DATABASE);
        assertThat(model.copy().refusal().get()).isEmpty();
        var other = Files.createDirectory(folder.resolve("other"));
        model.copy().value().set(folder.resolve("gone.db").toString());
        model.copyFolder().value().set(other.toString());
        model.putBack();
        assertThat(model.copy().refusal().get()).contains("gone.db");
        model.copy().value().set(model.backup().text());
        model.putBack();
        assertThat(other.resolve(Workplace.DATABASE)).exists();
        model.writeData();
        assertThat(model.said().get().count()).isGreaterThan(20);
        var third = Files.createDirectory(folder.resolve("third"));
        model.data().value().set(model.export().text());
        model.dataFolder().value().set(third.toString());
        model.readData();
        assertThat(model.said().get().act()).isEqualTo("import");
        try (var back = OfficeFolder.at(third, "2026-06-20")) {
            assertThat(new OfficeDoor(back).invoices()).isEqualTo(work.invoices());
        }
    }
}
