package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.document.page.PageFormat;
import fairflame.invoice.Completion;
import fairflame.invoice.Crediting;
import fairflame.invoice.Invoice;
import fairflame.invoice.InvoiceNumber;
import fairflame.invoice.Issue;
import fairflame.invoice.Payment;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class InvoicePdfTest {
    static Stream<Arguments> cases() {
        return Stream.of(
                Arguments.of("wet-switches", WetSwitches.invoice()), Arguments.of("gas-line", GasLine.invoice()));
    }

    private static byte[] letter(Invoice invoice) {
        return InvoicePdf.write(invoice, Papers.text(), PageFormat.LETTER);
    }

    static Invoice with(Invoice of, boolean complete, Completion completion, List<Payment> payments) {
        return new Invoice(
                of.number(),
                of.kind(),
                of.corrects(),
                of.issued(),
                of.supplied(),
                of.due(),
                of.currency(),
                of.quote(),
                of.revision(),
                of.seal(),
                of.changeOrders(),
                of.seller(),
                of.sellerLicence(),
                of.customer(),
                of.site(),
                of.title(),
                of.lines(),
                of.totals(),
                of.taxRule(),
                complete,
                completion,
                of.notes(),
                payments);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void saysTheKeptWords(String name, Invoice invoice) throws IOException {
        Golden.assertSame("invoice-" + name + ".txt", new ReadBack(letter(invoice)).golden());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void looksLikeTheKeptPicture(String name, Invoice invoice) throws IOException {
        Golden.assertSame("invoice-" + name + ".png", new ReadBack(letter(invoice)).picture(1, 40));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void isWellSetOnBothPapersInBothLanguages(String name, Invoice invoice) throws IOException {
        for (var format : PageFormat.values()) {
            for (var language : List.of("en", "es")) {
                var text = Papers.text(language);
                new ReadBack(InvoicePdf.write(invoice, text, format)).assertWellSet(format);
                new ReadBack(CompletionCertificatePdf.write(invoice, text, format)).assertWellSet(format);
            }
        }
    }

    @Test
    void theSameInvoiceGivesTheSameBytes() {
        assertThat(letter(WetSwitches.invoice())).isEqualTo(letter(WetSwitches.invoice()));
    }

    @Test
    void showsTotalPaymentsAndBalance() throws IOException {
        assertThat(new ReadBack(letter(WetSwitches.invoice())).text())
                .contains("Total $389.86")
                .contains("Deposit May 14, 2026, card \u221238.98")
                .contains("Balance due $350.88")
                .contains("Please pay by June 3, 2026.");
    }

    @Test
    void saysWhenAllIsPaid() throws IOException {
        var base = WetSwitches.invoice();
        var rest = new Payment("P-2", base.due(), base.balance(), "cheque", "1187", false);
        var paid = with(base, true, base.completion(), List.of(WetSwitches.DEPOSIT, rest));
        assertThat(new ReadBack(letter(paid)).text())
                .contains("Balance due $0.00")
                .contains("Paid in full.")
                .doesNotContain("How to pay");
    }

    @Test
    void showsPermitFitterPressureTestAndTests() throws IOException {
        assertThat(new ReadBack(letter(GasLine.invoice())).text())
                .contains("LP-2026-3391")
                .contains("Tobias Renn, licence GF-20417")
                .contains("3 psi held for 15 minutes, gauge to 15 psi, air, witnessed by Inspector R. Abara")
                .contains("no bubbles, no detector rise")
                .contains("Left in place: 0.")
                .contains("Q-2026-0002-C1");
    }

    @Test
    void aLeadThatIsNotRecordedAsRemovedIsShoutedAndBarsTheRecord() throws IOException {
        var base = WetSwitches.invoice();
        var open = with(base, false, new Completion("", "", "", Map.of(), Optional.empty(), false), List.of());
        assertThat(new ReadBack(letter(open)).text())
                .contains("The work is not complete yet")
                .contains("A test lead is not recorded as removed. The heater must stay off.");
        assertThatThrownBy(() -> CompletionCertificatePdf.write(open, Papers.text(), PageFormat.A4))
                .isInstanceOf(Refusal.NotAllowed.class);
        var complete = with(base, true, open.completion(), List.of());
        assertThatThrownBy(() -> CompletionCertificatePdf.write(complete, Papers.text(), PageFormat.A4))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("bypass lead");
    }

    @Test
    void theCompletionRecordCarriesNoPrice() throws IOException {
        var record = CompletionCertificatePdf.write(GasLine.invoice(), Papers.text(), PageFormat.LETTER);
        var text = new ReadBack(record).text();
        assertThat(text).contains("Completion record").contains("\u2713".isEmpty() ? "" : "The work is complete");
        assertThat(text).doesNotContain("$").doesNotContain("3,077");
        Golden.assertSame("completion-gas-line.txt", new ReadBack(record).golden());
    }

    @Test
    void theFootOfACreditNoteNamesACreditNoteAndItsReasonStandsUnderWhy() throws IOException {
        var issue = new Issue(
                InvoiceNumber.parse("C-2026-0001"),
                LocalDate.of(2026, 6, 10),
                LocalDate.of(2026, 6, 10),
                LocalDate.of(2026, 6, 10));
        var credit = Crediting.full(issue, WetSwitches.invoice(), List.of(), "The house was sold first.");
        assertThat(new ReadBack(letter(credit)).text())
                .contains("Credit note C-2026-0001  \u00B7  Quote Q-2026-0001, revision 1".replace("  ", " "))
                .contains("Why")
                .contains("The house was sold first.")
                .doesNotContain("Invoice C-2026-0001")
                .doesNotContain("Please note")
                .doesNotContain("Due June");
    }

    @Test
    void aCreditNoteProvesNoWork() {
        assertThatThrownBy(() -> CompletionCertificatePdf.write(WetSwitches.credit(), Papers.text(), PageFormat.LETTER))
                .hasMessageContaining("credit note C-2026-0001");
    }

    @Test
    void aCreditNoteNamesTheInvoiceAndShowsTheCredit() throws IOException {
        var credit = WetSwitches.credit();
        assertThat(new ReadBack(letter(credit)).text())
                .contains("Credit note Corrects invoice I-2026-0001")
                .contains("Total \u2212$389.86")
                .contains("Credit to you $389.86")
                .doesNotContain("How to pay");
    }
}
