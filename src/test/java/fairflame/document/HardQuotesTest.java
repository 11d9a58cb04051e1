package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.document.page.PageFormat;
import fairflame.quote.Choice;
import fairflame.quote.FindingSheet;
import fairflame.quote.Gauge;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import fairflame.quote.Party;
import fairflame.quote.Quote;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Quotes that strain the layout: nothing may be cut off, overprinted or pushed over the margin. */
class HardQuotesTest {
    private static Quote with(Quote quote, Party customer, FindingSheet finding, List<Choice> choices) {
        return new Quote(
                quote.number(),
                quote.revision(),
                quote.visit(),
                quote.repair(),
                quote.made(),
                quote.validUntil(),
                quote.currency(),
                quote.seller(),
                quote.sellerLicence(),
                customer,
                quote.site(),
                quote.heater(),
                quote.place(),
                quote.rules(),
                finding,
                choices,
                quote.notes(),
                quote.terms(),
                quote.assumed(),
                quote.madeFrom(),
                "en",
                List.of());
    }

    private static Choice with(Choice choice, String id, String title, List<Line> lines) {
        return new Choice(
                id,
                title,
                choice.plain(),
                choice.suggested(),
                choice.leavesUnfixed(),
                choice.work(),
                choice.duties(),
                choice.hours(),
                lines,
                Papers.totals(lines, "Tax", "7.25"),
                Papers.usd("0"),
                choice.tests(),
                choice.notes(),
                choice.arithmetic());
    }

    private static ReadBack wellSet(Quote quote) throws IOException {
        for (var format : PageFormat.values()) {
            new ReadBack(QuotePdf.write(quote, Optional.empty(), Papers.text(), format)).assertWellSet(format);
        }
        return new ReadBack(QuotePdf.write(quote, Optional.empty(), Papers.text(), PageFormat.LETTER));
    }

    private static List<Line> lines(int count, String words) {
        var lines = new ArrayList<Line>();
        for (int i = 1; i <= count; i++) {
            lines.add(Papers.line(
                    "L" + i,
                    LineKind.values()[(i / 4) % 4],
                    words + i,
                    i % 3 == 0 ? "1.25" : "12",
                    "each",
                    i % 5 == 0 ? "12345.67" : "8.05",
                    i % 2 == 0));
        }
        return lines;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 25, 40, 120})
    void printsAnyNumberOfLinesOnceEachUnderARepeatedHeader(int count) throws IOException {
        var base = GasLine.quote();
        var choice = with(base.choices().get(0), "A", "Long work", lines(count, "Item number "));
        var read = wellSet(with(base, base.customer(), base.finding(), List.of(choice)));
        var text = read.text();
        for (int i = 1; i <= count; i++) {
            assertThat(text.split("Item number " + i + " ", -1))
                    .as("line %d", i)
                    .hasSize(2);
        }
        var pages = read.pages();
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i)).contains("page " + (i + 1) + " of " + pages.size());
            if (pages.get(i).contains("Item number")) {
                assertThat(pages.get(i)).contains("Unit price");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void setsAnyNumberOfChoicesSideBySide(int count) throws IOException {
        var base = WetSwitches.quote();
        var choices = new ArrayList<Choice>();
        for (int i = 0; i < count; i++) {
            choices.add(
                    with(base.choices().get(i % 2), "" + (char) ('A' + i), "Way " + (i + 1), lines(3 + i, "Part ")));
        }
        var text = wellSet(with(base, base.customer(), base.finding(), choices)).text();
        for (int i = 0; i < count; i++) {
            assertThat(text).contains("Way " + (i + 1));
        }
    }

    @Test
    void longNamesAddressesAndWordsAreBrokenNotCut() throws IOException {
        var long1 = "Wilhelmina-Konstantinopolitanska von und zu Hohenwaldstetten-Oberklingenbach";
        var long2 = "Donaudampfschifffahrtselektrizitaetenhauptbetriebswerkbauunterbeamtengesellschaft".repeat(3);
        var customer = new Party(
                long1,
                List.of(long2, "Apartment 4711, Building of the Former Harbour Administration, Left Wing"),
                "555-0199",
                "a.very.long.mailbox.name.that.never.ends@quite-a-long-domain-name.example",
                "agent");
        var base = WetSwitches.quote();
        var choice = base.choices().get(0);
        var lines = new ArrayList<>(choice.lines());
        lines.set(0, Papers.line("L1", LineKind.PART, long2, "2", "extraordinarily long unit", "48.00", true));
        var wide = with(choice, "A", long2, lines);
        var quote = with(
                base, customer, base.finding(), List.of(wide, base.choices().get(1), wide));
        var text = wellSet(quote).text().replace(" ", "");
        assertThat(text).contains(long2).contains(long1.replace(" ", "")).contains(customer.email());
    }

    @Test
    void aTextOfFourThousandCharactersRunsOverPages() throws IOException {
        var base = WetSwitches.quote();
        var plain =
                "The heater was looked at with care and patience. ".repeat(80).strip();
        var choice = base.choices().get(0);
        var wordy = new Choice(
                "A",
                choice.title(),
                plain,
                true,
                plain,
                choice.work(),
                choice.duties(),
                choice.hours(),
                choice.lines(),
                choice.totals(),
                choice.deposit(),
                choice.tests(),
                choice.notes(),
                List.of(plain));
        var finding = new FindingSheet(
                plain.substring(0, 400),
                List.of(plain),
                List.of(plain),
                List.of(plain),
                List.of(plain),
                base.finding().gauges());
        var text = wellSet(with(
                        base,
                        base.customer(),
                        finding,
                        List.of(wordy, base.choices().get(1))))
                .text();
        assertThat(text.split("with care and patience", -1).length).isGreaterThan(7 * 80);
    }

    @Test
    void lettersThatTheFontLacksAreShownAsBoxes() throws IOException {
        var base = WetSwitches.quote();
        var customer = new Party("\u0418\u0432\u0430\u043D \u738B", List.of("\u03B1 Street"), "555-0198", "", "owner");
        var text = wellSet(with(base, customer, base.finding(), base.choices())).text();
        assertThat(text).contains("04").contains("738B".substring(0, 2));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 9})
    void setsAnyNumberOfGauges(int count) throws IOException {
        var gauges = new ArrayList<Gauge>();
        for (int i = 0; i < count; i++) {
            gauges.add(Papers.pressure("10.0", i + ".5", Gauge.Verdict.values()[i % 3], "Reading number " + i + "."));
        }
        var base = WetSwitches.quote();
        var f = base.finding();
        var finding = new FindingSheet(f.headline(), f.causes(), f.supports(), f.ruledOut(), f.unknown(), gauges);
        var text = wellSet(with(base, base.customer(), finding, base.choices())).text();
        for (int i = 0; i < count; i++) {
            assertThat(text).contains("Reading number " + i + ".");
        }
    }

    @Test
    void gaugesOfAnyRangeKeepTheirFiguresApart() throws IOException {
        var gauges = new ArrayList<Gauge>();
        for (var values : List.of(
                "0 0 0 0", "22 22 100 1000", "0.4 0.41 0.4 0.5", "9 9.01 4 14", "-3 5 0 10", "0.6 120000 1 99999")) {
            var v = values.split(" ");
            gauges.add(new Gauge(
                    "Reading",
                    "kilohm",
                    Optional.of(new BigDecimal(v[1])),
                    new BigDecimal(v[0]),
                    Optional.of(new BigDecimal(v[2])),
                    Optional.of(new BigDecimal(v[3])),
                    Gauge.Verdict.EDGE,
                    "So."));
        }
        var base = WetSwitches.quote();
        var f = base.finding();
        wellSet(with(
                base,
                base.customer(),
                new FindingSheet(f.headline(), List.of(), List.of(), List.of(), List.of(), gauges),
                base.choices()));
    }
}
