package fairflame.store;

import static fairflame.store.Samples.invoice;
import static fairflame.store.Samples.receipt;
import static fairflame.store.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.agreement.Sealing;
import fairflame.agreement.SignedRevision;
import fairflame.invoice.Invoice;
import fairflame.invoice.Payment;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class InvoicesTest extends RecordsContract {
    private SignedRevision signed;

    @BeforeEach
    void signFirst() {
        signed = signed();
    }

    @Test
    void anInvoiceComesBackAsItWasIssued() {
        var issued = issued();
        assertThat(issued.number()).isEqualTo("I-2026-0001");
        assertThat(seen().invoices().find("I-2026-0001")).contains(issued);
        assertThat(seen().invoices().bytes("I-2026-0001"))
                .hasValueSatisfying(bytes -> assertThat(bytes).isEqualTo(CanonicalForm.write(issued)));
        assertThat(seen().invoices().find("I-2026-0002")).isEmpty();
    }

    @Test
    void anAbortedInvoiceLeavesNoGap() {
        assertThat(issued().number()).isEqualTo("I-2026-0001");
        assertThatThrownBy(() -> change(records -> {
                    records.invoices().issue("I", 2026, number -> invoice(number, signed));
                    throw Refusal.notAllowed("payment", "x", "y");
                }))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> change(records -> records.invoices().issue("I", 2026, number -> {
                    throw new IllegalStateException("no paper");
                })))
                .hasMessage("no paper");
        assertThat(issued().number()).isEqualTo("I-2026-0002");
    }

    @Test
    void eachSeriesAndYearCountsForItself() {
        issued();
        var credit = make(records -> records.invoices()
                .issue("C", 2026, number -> invoice(number, signed, Invoice.Kind.CREDIT, "I-2026-0001")));
        var next = make(records -> records.invoices().issue("I", 2027, number -> invoice(number, signed)));
        assertThat(credit.number()).isEqualTo("C-2026-0001");
        assertThat(next.number()).isEqualTo("I-2027-0001");
        assertThat(seen().invoices().ofQuote("Q-2026-0001"))
                .extracting(Invoice::number)
                .containsExactly("I-2026-0001", "C-2026-0001", "I-2027-0001");
        assertThat(seen().invoices().rows())
                .extracting(InvoiceRow::number)
                .containsExactly("I-2027-0001", "C-2026-0001", "I-2026-0001");
    }

    @Test
    void theListShowsWhatAnOfficeLooksFor() {
        issued();
        assertThat(seen().invoices().rows())
                .containsExactly(new InvoiceRow(
                        "I-2026-0001",
                        Invoice.Kind.FULL,
                        "Q-2026-0001",
                        1,
                        "Odile Marsh",
                        Samples.DAY.plusDays(1),
                        Samples.DAY.plusDays(15),
                        usd("103.71"),
                        true));
    }

    @Test
    void theSameInvoiceAgainChangesNothingAndAnotherIsRefused() {
        var issued = issued();
        change(records -> records.invoices().add(issued));
        assertThat(seen().invoices().rows()).hasSize(1);
        assertThat(seen().audit().about("I-2026-0001")).hasSize(1);
        refused(
                invoice("I-2026-0001", signed, Invoice.Kind.PART, ""),
                "invoice 'I-2026-0001 with other content' is refused");
    }

    @Test
    void aNumberThatIsNotTheNextOneIsRefused() {
        refused(
                invoice("I-2026-0002", signed),
                "invoice number 'I-2026-0002' is refused; allowed: the next one, I-2026-0001");
        refused(invoice("I2026", signed), "such as Q-2026-0001");
    }

    @Test
    void aNumberOtherThanTheGivenOneIsABug() {
        assertThatThrownBy(() -> change(
                        records -> records.invoices().issue("I", 2026, number -> invoice("I-2026-0009", signed))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void onlyASignedRevisionIsInvoiced() {
        var unsigned = quoted();
        refused(
                invoice("I-2026-0001", Samples.signed(unsigned, Sealing.START)),
                "a revision that is signed and stored");
    }

    @Test
    void theSealNamedMustBeTheStoredOne() {
        var other = Samples.signed(signed.quote(), "1".repeat(64));
        refused(invoice("I-2026-0001", other), "seal named by invoice I-2026-0001");
    }

    @Test
    void aCreditNoteNamesAStoredInvoice() {
        refused(invoice("C-2026-0001", signed, Invoice.Kind.CREDIT, "I-2026-0001"), "invoice to correct 'I-2026-0001'");
    }

    private Invoice issued() {
        return make(records -> records.invoices().issue("I", 2026, number -> invoice(number, signed)));
    }

    private void refused(Invoice invoice, String reason) {
        assertThatThrownBy(() -> change(records -> records.invoices().add(invoice)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(reason);
    }

    @Test
    void paymentsComeBackByQuoteAndByInvoice() {
        issued();
        var deposit = receipt("P-1", "Q-2026-0001", Optional.empty(), "20.00");
        var rest = receipt("P-2", "Q-2026-0001", Optional.of("I-2026-0001"), "83.71");
        change(records -> {
            records.payments().add(rest);
            records.payments().add(deposit);
        });
        assertThat(seen().payments().ofQuote("Q-2026-0001")).containsExactly(deposit, rest);
        assertThat(seen().payments().ofInvoice("I-2026-0001")).containsExactly(rest);
        assertThat(seen().payments().ofInvoice("I-2026-0002")).isEmpty();
    }

    @Test
    void theSamePaymentAgainChangesNothingAndAnotherUnderItsIdIsRefused() {
        var deposit = receipt("P-1", "Q-2026-0001", Optional.empty(), "20.00");
        change(records -> records.payments().add(deposit));
        change(records -> records.payments().add(deposit));
        assertThat(seen().payments().ofQuote("Q-2026-0001")).containsExactly(deposit);
        assertThat(seen().audit().about("P-1")).hasSize(1);
        refused(receipt("P-1", "Q-2026-0001", Optional.empty(), "21.00"), "an id that no other payment has");
    }

    @Test
    void aPaymentOfNothingOrForNothingKnownIsRefused() {
        refused(receipt("P-1", "Q-2026-0009", Optional.empty(), "20.00"), "a stored quote");
        refused(receipt("P-1", "Q-2026-0001", Optional.of("I-2026-0001"), "20.00"), "a stored invoice of Q-2026-0001");
        refused(receipt("P-1", "Q-2026-0001", Optional.empty(), "0.00"), "other than zero");
        refused(receipt(" ", "Q-2026-0001", Optional.empty(), "1.00"), "1 to 80 characters");
    }

    @Test
    void aPaymentMustBelongToTheInvoicesOwnQuote() {
        issued();
        quoted();
        refused(receipt("P-1", "Q-2026-0002", Optional.of("I-2026-0001"), "20.00"), "a stored invoice of Q-2026-0002");
    }

    private void refused(Receipt receipt, String reason) {
        assertThatThrownBy(() -> change(records -> records.payments().add(receipt)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(reason);
        assertThat(seen().payments().ofQuote(receipt.quote()))
                .extracting(Receipt::payment)
                .extracting(Payment::amount)
                .doesNotContain(receipt.payment().amount());
    }
}
