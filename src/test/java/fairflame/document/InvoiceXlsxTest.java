package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.document.page.PageFormat;
import fairflame.invoice.Invoice;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class InvoiceXlsxTest {
    private static SheetBack read(Invoice invoice) throws IOException {
        return new SheetBack(InvoiceXlsx.write(
                invoice, Papers.text(), PageFormat.A4, Papers.sheets().invoice()));
    }

    @Test
    void theFormulasGiveTheCentsOfTheInvoiceAndItsBalance() throws IOException {
        for (var invoice : List.of(WetSwitches.invoice(), GasLine.invoice())) {
            try (var book = read(invoice)) {
                var sheet = book.sheet("Invoice");
                sheet.assertSame(invoice.lines(), invoice.totals());
                assertThat(sheet.cents("Balance due")).isEqualTo(invoice.balance());
            }
        }
    }

    @Test
    void aCreditNoteIsTheInvoiceMirrored() throws IOException {
        var credit = WetSwitches.credit();
        try (var book = read(credit)) {
            book.sheet("Credit note").assertSame(credit.lines(), credit.totals());
            assertThat(book.sheet("Credit note").cents("Total"))
                    .isEqualTo(WetSwitches.invoice().totals().total().negated());
        }
    }

    @Test
    void theSameInvoiceGivesTheSameBytes() {
        var text = Papers.text();
        assertThat(InvoiceXlsx.write(
                        WetSwitches.invoice(),
                        text,
                        PageFormat.A4,
                        Papers.sheets().invoice()))
                .isEqualTo(InvoiceXlsx.write(
                        WetSwitches.invoice(),
                        text,
                        PageFormat.A4,
                        Papers.sheets().invoice()));
    }
}
