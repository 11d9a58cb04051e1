package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody did to the file past the program, who took the triggers away first, is found. */
class InspectionTest extends RecordsContract {
    @BeforeEach
    void fill() {
        var signed = signed();
        change(records -> {
            var chain = records.chain().last();
            records.changeOrders().add(Samples.changeOrder("Q-2026-0001", 1, chain, chain));
            records.completionRecords().put("Q-2026-0001", 1, Samples.completion(""));
            records.invoices().issue("I", 2026, number -> Samples.invoice(number, signed));
            records.invoices().issue("I", 2026, number -> Samples.invoice(number, signed));
            records.payments().add(Samples.receipt("P-1", "Q-2026-0001", Optional.of("I-2026-0001"), "1.00"));
        });
        assertThat(store.faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            quote_revision_stays | update quote_revision set body = x'00'                | Q-2026-0001 revision 1: the content is not what was stored
            agreement_stays      | update agreement set body = x'00'                     | signed Q-2026-0001 revision 1: the content is not what was stored
            change_order_stays   | update change_order set body = x'00'                  | Q-2026-0001-C1: the content is not what was stored
            completion_stays     | update completion set body = x'00'                    | completion 1: the content is not what was stored
            invoice_stays        | update invoice set body = x'00' where sequence = 2    | I-2026-0002: the content is not what was stored
            invoice_remains      | delete from invoice where sequence = 1                | a row of payment points to nothing in invoice
            audit_remains        | delete from audit where position = 2                  | the journal has gaps
            change_order_remains | delete from change_order                               | the chain of seals has gaps
            """)
    void tamperingIsFound(String trigger, String sql, String fault) {
        RawDatabase.run(store.file(), "drop trigger " + trigger);
        RawDatabase.run(store.file(), sql.split(";")[0]);
        if (fault.contains("chain")) {
            RawDatabase.run(store.file(), "drop trigger agreement_stays", "update agreement set position = 2");
        }
        assertThat(store.faults()).contains(fault);
    }

    @Test
    void aMissingInvoiceNumberIsFound() {
        RawDatabase.run(store.file(), "drop trigger invoice_remains", "drop trigger payment_remains");
        RawDatabase.run(store.file(), "delete from payment", "delete from invoice where sequence = 1");
        assertThat(store.faults()).containsExactly("invoice numbers I-2026 have gaps");
    }
}
