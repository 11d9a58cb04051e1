package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.catalog.TaxRule;
import fairflame.document.page.PageFormat;
import fairflame.money.Amounts;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.quote.Choice;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import fairflame.quote.Quote;
import fairflame.quote.Taxation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class QuoteXlsxTest {
    private static final int QUANTITY = 3;
    private static final int NET = 6;

    private static byte[] written(Quote quote) {
        return QuoteXlsx.write(
                quote,
                Optional.empty(),
                Papers.text(),
                PageFormat.LETTER,
                Papers.sheets().quote());
    }

    @Test
    void theFormulasGiveTheCentsOfTheQuote() throws IOException {
        for (var quote : List.of(WetSwitches.quote(), GasLine.quote(), Unsettled.quote())) {
            try (var book = new SheetBack(written(quote))) {
                for (var choice : quote.choices()) {
                    book.sheet("Choice " + choice.id()).assertSame(choice.lines(), choice.totals());
                }
            }
        }
    }

    @Test
    void everyChoicePrintsOnTheSamePaper() throws IOException {
        try (var book = new XSSFWorkbook(new ByteArrayInputStream(written(WetSwitches.quote())))) {
            var first = book.getSheetAt(1).getPrintSetup();
            var second = book.getSheetAt(2).getPrintSetup();
            assertThat(first.getFitWidth()).isEqualTo((short) 1);
            assertThat(second.getLandscape()).isEqualTo(first.getLandscape());
            assertThat(second.getPaperSize()).isEqualTo(first.getPaperSize());
            assertThat(second.getFitWidth()).isEqualTo(first.getFitWidth());
            assertThat(second.getFitHeight()).isEqualTo(first.getFitHeight());
        }
    }

    @Test
    void theFormulasGiveTheCentsOfAnyQuoteUnderAnyTaxRule() throws IOException {
        assertRandomQuotes(0, 12);
    }

    @Test
    @Tag("campaign")
    void theFormulasGiveTheCentsOfThousandsOfQuotes() throws IOException {
        assertRandomQuotes(1000, 400);
    }

    // A workbook holds ten random choices under one random tax rule.
    private static void assertRandomQuotes(long firstSeed, int books) throws IOException {
        for (long seed = firstSeed; seed < firstSeed + books; seed++) {
            var random = new Random(seed);
            var rule = rule(random);
            var choices = new ArrayList<Choice>();
            while (choices.size() < 10) {
                var lines = lines(random);
                var totals = Taxation.of(lines, rule, CurrencyUnit.USD);
                if (!totals.total().isNegative()) {
                    choices.add(RandomQuotes.choice("c" + choices.size(), lines, totals));
                }
            }
            try (var book = new SheetBack(written(RandomQuotes.quote(choices, rule)))) {
                for (int i = 0; i < choices.size(); i++) {
                    book.sheet("Choice " + (char) ('A' + i))
                            .saying("seed " + seed + ", " + rule)
                            .assertSame(choices.get(i).lines(), choices.get(i).totals());
                }
            }
        }
    }

    private static TaxRule rule(Random random) {
        var layers = new ArrayList<TaxRule.Layer>();
        for (int i = 0; i < random.nextInt(4); i++) {
            var rate = BigDecimal.valueOf(random.nextInt(120_000), 4);
            layers.add(new TaxRule.Layer("Layer " + i, new Percent(rate)));
        }
        return new TaxRule(
                layers,
                Set.of("part"),
                random.nextBoolean(),
                random.nextBoolean(),
                Rounding.values()[random.nextInt(2)],
                "invented for the test");
    }

    private static List<Line> lines(Random random) {
        var lines = new ArrayList<Line>();
        var kinds = LineKind.values();
        for (int i = 1; i <= 1 + random.nextInt(12); i++) {
            // Halves of cents are wanted: they are where roundings differ.
            var quantity = BigDecimal.valueOf(random.nextInt(40) == 0 ? -100 : 5L * (1 + random.nextInt(400)), 2);
            var price = Money.ofMinor(CurrencyUnit.USD, random.nextInt(random.nextBoolean() ? 300 : 90_000));
            var kind = kinds[random.nextInt(kinds.length)];
            var net = Rounding.NEAREST.times(price, quantity);
            lines.add(new Line(
                    "L" + i,
                    kind,
                    "",
                    "Line " + i,
                    quantity,
                    "each",
                    price,
                    net,
                    Papers.usd("0"),
                    random.nextBoolean(),
                    false,
                    List.of()));
        }
        return random.nextInt(3) == 0 ? discounted(lines, random) : lines;
    }

    private static List<Line> discounted(List<Line> lines, Random random) {
        var weights = lines.stream()
                .map(line -> line.net().getAmount().max(BigDecimal.ZERO))
                .toList();
        var sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (sum.signum() == 0) {
            return lines;
        }
        var discount = Money.ofMinor(CurrencyUnit.USD, random.nextInt(5000)).multipliedBy(1);
        var shares = Amounts.allocate(discount, weights);
        var all = new ArrayList<Line>();
        for (int i = 0; i < lines.size(); i++) {
            var l = lines.get(i);
            all.add(new Line(
                    l.id(),
                    l.kind(),
                    l.item(),
                    l.description(),
                    l.quantity(),
                    l.unit(),
                    l.unitPrice(),
                    l.net(),
                    shares.get(i),
                    l.taxable(),
                    l.further(),
                    l.basis()));
        }
        return all;
    }

    @Test
    void followsAChangedQuantityAsThePricingWould() throws IOException {
        var base = GasLine.quote();
        var lines = new ArrayList<>(base.choices().get(0).lines());
        try (var book = new SheetBack(written(base))) {
            var sheet = book.sheet("Choice A");
            sheet.set(sheet.lineRow("L1"), QUANTITY, 97.5);
            lines.set(0, Papers.line("L1", LineKind.PART, lines.get(0).description(), "97.5", "ft", "5.35", true));
            var totals = Papers.totals(lines, "State and county tax", "7.25");
            var priced = Taxation.of(lines, base.rules().tax(), CurrencyUnit.USD);
            assertThat(totals.total())
                    .isEqualTo(priced.total())
                    .isNotEqualTo(base.choices().get(0).totals().total());
            sheet.assertSame(lines, totals);
        }
    }

    @Test
    void anAmountThatABasisFixesIsKeptAndRemarkedOn() throws IOException {
        var lines = new ArrayList<>(WetSwitches.quote().choices().get(0).lines());
        var l = lines.get(2);
        lines.set(
                2,
                new Line(
                        l.id(),
                        l.kind(),
                        l.item(),
                        l.description(),
                        l.quantity(),
                        l.unit(),
                        l.unitPrice(),
                        Papers.usd("200.00"),
                        l.discount(),
                        l.taxable(),
                        l.further(),
                        l.basis()));
        var rule = WetSwitches.quote().rules().tax();
        var totals = Taxation.of(lines, rule, CurrencyUnit.USD);
        try (var book =
                new SheetBack(written(RandomQuotes.quote(List.of(RandomQuotes.choice("A", lines, totals)), rule)))) {
            var sheet = book.sheet("Choice A");
            var cell = sheet.cell(sheet.lineRow("L3"), NET);
            assertThat(cell.getCellType()).isEqualTo(CellType.NUMERIC);
            assertThat(cell.getNumericCellValue()).isEqualTo(200.00);
            assertThat(cell.getCellComment().getString().getString()).contains("fixed");
            assertThat(sheet.cents("Total")).isEqualTo(totals.total());
        }
    }

    @Test
    void theOverviewTakesItsTotalsFromTheChoices() throws IOException {
        try (var book = new SheetBack(written(WetSwitches.quote()))) {
            var overview = book.sheet("Overview");
            for (var choice : WetSwitches.quote().choices()) {
                var cell = overview.cell(overview.row(0, "Choice " + choice.id()), 3);
                assertThat(cell.getCellFormula()).startsWith("'Choice " + choice.id() + "'!G");
                assertThat(cell.getNumericCellValue())
                        .isEqualTo(choice.totals().total().getAmount().doubleValue());
            }
        }
    }

    @Test
    void isSetUpForPrintingAndReading() throws IOException {
        try (var book = new SheetBack(written(GasLine.quote()))) {
            var sheet = book.sheet("Choice A").sheet();
            assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
            assertThat(sheet.getRepeatingRows()).isNotNull();
            assertThat(sheet.getFitToPage()).isTrue();
            assertThat(sheet.getWorkbook().getPrintArea(1)).contains("$A$1:$H$");
            assertThat(book.sheet("Choice A")
                            .cell(book.sheet("Choice A").lineRow("L1"), NET)
                            .getCellStyle()
                            .getDataFormatString())
                    .contains("$");
            assertThat(book.sheet("Overview").text()).contains("Permit and licensed work: please read");
        }
    }

    @Test
    void theReasonsOfEachLineStandOnASheetOfTheirOwn() throws IOException {
        try (var book = new SheetBack(written(WetSwitches.quote()))) {
            assertThat(book.sheet("Reasons").text()).contains("catalog row").contains("invented for the demo");
        }
    }

    @Test
    void theSameQuoteGivesTheSameBytesWhateverTheTimeOfDay() throws IOException {
        var file = written(GasLine.quote());
        assertThat(written(GasLine.quote())).isEqualTo(file);
        try (var zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertThat(entry.getTimeLocal().getYear()).as(entry.getName()).isEqualTo(1980);
            }
        }
        try (var book = new XSSFWorkbook(new ByteArrayInputStream(file))) {
            var properties = book.getProperties().getCoreProperties();
            assertThat(properties.getCreated().toInstant()).isEqualTo("2026-05-15T00:00:00Z");
            assertThat(properties.getModified().toInstant()).isEqualTo("2026-05-15T00:00:00Z");
            assertThat(properties.getCreator()).isEqualTo("Sandpiper Pool Heat");
        }
    }

    @Test
    void namesOfSheetsSurviveAnyChoiceId() throws IOException {
        var q = WetSwitches.quote();
        var ids = List.of(
                "a/b:c*[x]",
                "A",
                "a",
                "an id far longer than thirty-one characters of a name",
                "an id far longer than thirty-one characters of a nose");
        var c = q.choices().get(0);
        var choices = ids.stream()
                .map(id -> RandomQuotes.choice(id, c.lines(), c.totals()))
                .toList();
        try (var book =
                new SheetBack(written(RandomQuotes.quote(choices, q.rules().tax())))) {
            assertThat(book.sheets()).hasSize(7);
        }
    }
}
