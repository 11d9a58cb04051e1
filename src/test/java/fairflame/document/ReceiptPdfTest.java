package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.document.page.PageFormat;
import fairflame.invoice.Payment;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReceiptPdfTest {
    private static final Payment REST =
            new Payment("P-2", LocalDate.of(2026, 6, 3), Papers.usd("350.00"), "cheque", "1187", false);

    private static MoneyIn money(Optional<String> invoice) {
        return new MoneyIn(WetSwitches.signed(), invoice, List.of(WetSwitches.DEPOSIT, REST), Papers.usd("389.86"));
    }

    private static String said(Optional<String> invoice, String payment, String language) throws IOException {
        return new ReadBack(ReceiptPdf.write(money(invoice), payment, Papers.text(language), PageFormat.LETTER)).text();
    }

    @Test
    void aPaymentOnAnInvoiceTellsWhoPaidWhatAndWhatIsLeft() throws IOException {
        assertThat(said(Optional.of("I-2026-0001"), "P-2", "en"))
                .contains("Receipt For a payment on invoice I-2026-0001")
                .contains(Papers.SELLER.name())
                .contains("Received from")
                .contains(Papers.CUSTOMER.name())
                .contains("Number P-2", "Quote Q-2026-0001", "Date June 3, 2026", "Method cheque", "Reference 1187")
                .contains("We received $350.00.")
                .contains("Balance after this payment $0.88");
    }

    @Test
    void aDepositOnASignedQuoteNamesNoInvoice() throws IOException {
        assertThat(said(Optional.empty(), WetSwitches.DEPOSIT.id(), "en"))
                .contains("For a deposit on signed quote Q-2026-0001")
                .contains("Date May 14, 2026", "Method card", "Reference C-4471")
                .contains("We received $38.98.")
                .contains("Left of the agreed price after this deposit $350.88")
                .doesNotContain("invoice");
    }

    @Test
    void bothSpeakSpanish() throws IOException {
        assertThat(said(Optional.of("I-2026-0001"), "P-2", "es"))
                .contains("Recibo Por un pago de la factura I-2026-0001")
                .contains("Recibido de", "Presupuesto Q-2026-0001", "Fecha 3 de junio de 2026", "Referencia 1187")
                .contains("Recibimos $350.00.")
                .contains("Saldo después de este pago $0.88");
        assertThat(said(Optional.empty(), WetSwitches.DEPOSIT.id(), "es"))
                .contains("Por un depósito del presupuesto firmado Q-2026-0001")
                .contains("Recibimos $38.98.")
                .contains("Por pagar del precio acordado después de este depósito $350.88");
    }

    @Test
    void whatIsPaidBeyondTheBillIsACredit() throws IOException {
        var over = new MoneyIn(WetSwitches.signed(), Optional.of("I-1"), List.of(REST), Papers.usd("300.00"));
        var file = ReceiptPdf.write(over, "P-2", Papers.text(), PageFormat.A4);
        assertThat(new ReadBack(file).text()).contains("Credit to you $50.00");
    }

    @Test
    void aPaymentWithoutAReferenceHasNoEmptyLine() throws IOException {
        var cash = new Payment("P-3", REST.on(), REST.amount(), "cash", "", false);
        var money = new MoneyIn(WetSwitches.signed(), Optional.of("I-1"), List.of(cash), Papers.usd("350.00"));
        var file = ReceiptPdf.write(money, "P-3", Papers.text(), PageFormat.A4);
        assertThat(new ReadBack(file).text()).contains("Method cash").doesNotContain("Reference");
    }

    @Test
    void anUnknownPaymentIsRefusedAndTheKnownOnesAreNamed() {
        assertThatThrownBy(() -> ReceiptPdf.write(money(Optional.empty()), "P-9", Papers.text(), PageFormat.A4))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("P-2026-0001, P-2");
    }

    @Test
    void isWellSetOnBothPapersInBothLanguagesAndTheSameBytesEachTime() throws IOException {
        for (var format : PageFormat.values()) {
            for (var language : List.of("en", "es")) {
                for (var invoice : List.of(Optional.of("I-2026-0001"), Optional.<String>empty())) {
                    var file = ReceiptPdf.write(money(invoice), "P-2", Papers.text(language), format);
                    new ReadBack(file).assertWellSet(format);
                    assertThat(ReceiptPdf.write(money(invoice), "P-2", Papers.text(language), format))
                            .isEqualTo(file);
                }
            }
        }
    }
}
