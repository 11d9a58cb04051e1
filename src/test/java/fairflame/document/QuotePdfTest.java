package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.agreement.SignedRevision;
import fairflame.document.page.Drawing;
import fairflame.document.page.PageFormat;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import fairflame.quote.Quote;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class QuotePdfTest {
    static Stream<Arguments> cases() {
        return Stream.of(
                Arguments.of("wet-switches", WetSwitches.quote(), Optional.empty()),
                Arguments.of("wet-switches-signed", WetSwitches.quote(), Optional.of(WetSwitches.signed())),
                Arguments.of("gas-line", GasLine.quote(), Optional.empty()),
                Arguments.of("diagnosis-only", Unsettled.quote(), Optional.empty()));
    }

    private static byte[] letter(Quote quote, Optional<SignedRevision> signed) {
        return QuotePdf.write(quote, signed, Papers.text(), PageFormat.LETTER);
    }

    private static ReadBack read(Quote quote) {
        return new ReadBack(letter(quote, Optional.empty()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void saysTheKeptWords(String name, Quote quote, Optional<SignedRevision> signed) throws IOException {
        Golden.assertSame("quote-" + name + ".txt", new ReadBack(letter(quote, signed)).golden());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void looksLikeTheKeptPicture(String name, Quote quote, Optional<SignedRevision> signed) throws IOException {
        Golden.assertSame("quote-" + name + ".png", new ReadBack(letter(quote, signed)).picture(1, 40));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void isWellSetOnBothPapers(String name, Quote quote, Optional<SignedRevision> signed) throws IOException {
        for (var format : PageFormat.values()) {
            for (var language : List.of("en", "es")) {
                new ReadBack(QuotePdf.write(quote, signed, Papers.text(language), format)).assertWellSet(format);
            }
        }
    }

    @Test
    void theSameQuoteGivesTheSameBytes() {
        assertThat(letter(GasLine.quote(), Optional.empty())).isEqualTo(letter(GasLine.quote(), Optional.empty()));
    }

    @Test
    void embedsEveryFont() throws IOException {
        try (var document = Loader.loadPDF(letter(GasLine.quote(), Optional.empty()))) {
            for (var page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded())
                            .as(name.getName())
                            .isTrue();
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void everyPageCarriesNumberRevisionSealAndItsCount(String name, Quote quote, Optional<SignedRevision> signed)
            throws IOException {
        var pages = new ReadBack(letter(quote, signed)).pages();
        var seal = signed.map(revision -> "seal " + revision.seal().brief()).orElse("not signed");
        for (int i = 1; i <= pages.size(); i++) {
            assertThat(pages.get(i - 1))
                    .contains("Quote " + quote.number() + ", revision 1")
                    .contains(seal)
                    .contains("page " + i + " of " + pages.size());
        }
    }

    @Test
    void theNoticeOfGasWorkStandsAboveEveryPriceAndAboveTheTotal() throws IOException {
        var text = read(GasLine.quote()).text();
        int notice = text.indexOf("Permit and licensed work: please read");
        assertThat(notice).isPositive().isLessThan(text.indexOf("$3,077.04"));
        assertThat(text.indexOf("licence GF-20417")).isBetween(notice, text.indexOf("$3,077.04"));
        int reminder = text.indexOf("Read the notice on permit and licensed work");
        assertThat(reminder).isPositive().isLessThan(text.indexOf("Total $3,077.04"));
    }

    @Test
    void aNoteOfOneChoiceNamesIt() throws IOException {
        assertThat(read(WetSwitches.quote()).text()).contains("Choice B only: You chose one of two matching parts");
    }

    @Test
    void whatIsAgreedToStandsRightAboveTheLineToSignOn() throws IOException {
        var text = read(WetSwitches.quote()).text();
        int agreed = text.indexOf("I authorise Choice A, Replace both wet switches, for $389.86");
        int line = text.indexOf("Signature Name in print Date and time");
        assertThat(agreed).isPositive().isLessThan(line);
        assertThat(text.substring(agreed, line))
                .contains("for $293.80")
                .contains("until midnight of the third business day");
        assertThat(line - agreed).isLessThan(500);
    }

    @Test
    void theSignedCopyTellsWhoSignedWhatWhenAndWhatWasDeclined() throws IOException {
        var text = new ReadBack(letter(WetSwitches.quote(), Optional.of(WetSwitches.signed()))).text();
        assertThat(text)
                .contains("Signed quote")
                .contains("Chosen: Choice A, Replace both wet switches, $389.86")
                .contains(WetSwitches.signed().signature().consent())
                .contains("Signed by Imogen Varga, owner")
                .contains("May 14, 2026, 11:26 (UTC-05:00)")
                .contains("Signature taken by Dario Quill")
                .contains("Choice B, Replace one switch only, $293.80. I was offered this choice")
                .doesNotContain("Name in print");
        assertThat(text.replace(" ", "")).contains(WetSwitches.signed().seal().chain());
    }

    @Test
    void aTypedNameIsPrintedWhereTheStrokesWouldBe() throws IOException {
        var drawn = WetSwitches.signed();
        var by = drawn.signature();
        var typed = new SignedRevision(
                drawn.quote(),
                drawn.choice(),
                drawn.declined(),
                new fairflame.agreement.Signature(by.name(), by.role(), by.at(), by.consent(), List.of(), by.witness()),
                drawn.seal());
        assertThat(new ReadBack(letter(drawn.quote(), Optional.of(typed))).text())
                .contains("Signed by typing the name");
    }

    @Test
    void everyLineAndTotalOfTheRecordIsOnThePaper() throws IOException {
        var text = read(GasLine.quote()).text();
        var choice = GasLine.quote().choices().get(0);
        var figures = Papers.text().figures();
        for (var line : choice.lines()) {
            assertThat(text).contains(line.description()).contains(figures.plain(line.net()));
        }
        assertThat(text)
                .contains("Subtotal " + figures.plain(choice.totals().subtotal()))
                .contains("State and county tax, 7.25 % of $686.75 49.79")
                .contains("Total " + figures.money(choice.totals().total()));
    }

    @Test
    void aDiagnosisOnlyQuoteNamesTheNextChecksAndNoRepair() throws IOException {
        var text = read(Unsettled.quote()).text();
        assertThat(text)
                .contains("Diagnosis only No repair is priced")
                .contains("What to check next \u2022 Each safety switch warm")
                .contains("\u2022 Gas pressure at the meter")
                .contains("$129.00")
                .doesNotContain("deposit at signing, the rest");
    }

    @Test
    void theFiguresOfTheGaugesAreInWords() throws IOException {
        assertThat(read(GasLine.quote()).text())
                .contains("10.2 at rest")
                .contains("3.9 firing")
                .contains("drop 6.3")
                .contains("Outside")
                .contains("Allowed: 6 to 10.5 in w.c.");
    }

    @Test
    void theNoticeOfTheRightToCancelComesTwiceWithItsLastDay() throws IOException {
        var text = new ReadBack(letter(WetSwitches.quote(), Optional.of(WetSwitches.signed()))).text();
        // Signed on a Thursday: Friday, Saturday and Monday are the three business days (16 CFR 429.0(f)).
        assertThat(text.split("Last day to cancel, until midnight: May 18, 2026", -1))
                .hasSize(3);
        assertThat(text)
                .contains("Notice of cancellation Copy 1 of 2")
                .contains("Copy 2 of 2")
                .contains("Order signed on: May 14, 2026")
                .contains("The right lasts 3 business days")
                .contains("I cancel this order, quote Q-2026-0001. Signature Date")
                .contains("bring it to Sandpiper Pool Heat, 18 Quay Street");
    }

    @Test
    void anUnsignedQuoteLeavesTheDaysOfTheNoticeOpen() throws IOException {
        assertThat(read(WetSwitches.quote()).text()).contains("Last day to cancel, until midnight: ____");
        assertThat(read(GasLine.quote()).text()).doesNotContain("Notice of cancellation");
    }

    @Test
    void termsAndSignatureStandOnOnePage() throws IOException {
        for (var quote : List.of(WetSwitches.quote(), GasLine.quote(), Unsettled.quote())) {
            assertThat(read(quote).pages())
                    .anyMatch(
                            page -> page.contains("What is included, and the terms") && page.contains("Name in print"));
        }
    }

    @Test
    void choicesAreNamedByLetterWhateverTheirIds() throws IOException {
        var text = read(WetSwitches.with("both", "one")).text();
        assertThat(text).contains("Choice A").contains("Choice B").doesNotContain("Choice both");
    }

    @Test
    void arithmeticThatAllChoicesShareIsToldOnce() throws IOException {
        var text = read(WetSwitches.sharing("The same sum stands behind both.")).text();
        assertThat(text.split("The same sum stands behind both", -1)).hasSize(2);
    }

    @ParameterizedTest
    @EnumSource(PageFormat.class)
    void makesRoomForADrawingOfTheGasLine(PageFormat format) throws IOException {
        var drawing = new Drawing() {
            @Override
            public double height(double width) {
                return 150;
            }

            @Override
            public void draw(Pen pen, Place place) {
                pen.line(
                        new Point(place.x(), place.top() + 75),
                        new Point(place.x() + place.width(), place.top() + 75),
                        Stroke.solid(fairflame.document.page.Ink.LAGOON, 2));
            }

            @Override
            public String told() {
                return "84 ft of pipe from the meter to the heater";
            }
        };
        var file = QuotePdf.write(GasLine.quote(), Optional.empty(), Papers.text(), format, Optional.of(drawing));
        var read = new ReadBack(file);
        read.assertWellSet(format);
        assertThat(read.text()).contains("The gas line");
    }
}
