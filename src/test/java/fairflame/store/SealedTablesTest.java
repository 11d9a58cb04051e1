package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The database itself refuses to alter what is kept for ever, whoever asks. */
class SealedTablesTest extends RecordsContract {
    private static final String OTHER = "ffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff";

    @BeforeEach
    void fill() {
        var signed = signed();
        change(records -> {
            var chain = records.chain().last();
            records.changeOrders().add(Samples.changeOrder("Q-2026-0001", 1, chain, chain));
            records.invoices().issue("I", 2026, number -> Samples.invoice(number, signed));
            records.payments().add(Samples.receipt("P-1", "Q-2026-0001", Optional.empty(), "20.00"));
            records.completionRecords().put("Q-2026-0001", 1, Samples.completion(""));
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "quote",
                "quote_revision",
                "agreement",
                "change_order",
                "invoice",
                "payment",
                "completion",
                "audit"
            })
    void noRowIsChangedDeletedOrReplaced(String table) {
        var rows = RawDatabase.one(store.file(), "select count(*) from " + table);
        assertThat(rows).isNotEqualTo("0");
        refused("update " + table + " set rowid = rowid");
        refused("delete from " + table);
        refused("insert or replace into " + table + " select * from " + table);
        refused("replace into " + table + " select * from " + table);
        assertThat(RawDatabase.one(store.file(), "select count(*) from " + table))
                .isEqualTo(rows);
        assertThat(store.faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "quote, visit, x",
        "quote_revision, body, x",
        "agreement, body, x",
        "change_order, body, x",
        "invoice, total, 1",
        "invoice, body, x",
        "payment, amount, 1",
        "completion, body, x",
        "audit, who, nobody",
    })
    void noColumnIsChanged(String table, String column, String value) {
        refused("update " + table + " set " + column + " = '" + value + "'");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                // a gap in invoice numbers, positions, seals and the journal
                "insert into invoice select position + 1, 'I-2026-0003', series, year, 3, kind, corrects, quote,"
                        + " revision, issued, due, customer, currency, subtotal, tax, total, complete, body, digest from invoice",
                "insert into invoice select position + 2, 'I-2026-0002', series, year, 2, kind, corrects, quote,"
                        + " revision, issued, due, customer, currency, subtotal, tax, total, complete, body, digest from invoice",
                "insert into audit select 99, at, who, what, subject, before, after from audit limit 1",
                "insert into completion select 99, quote, revision, body, digest from completion",
                "insert into change_order select 'Q-2026-0001-C2', quote, revision, signed_by, signed_at, currency,"
                        + " total, 3, previous, '" + OTHER + "', body, digest, origin from change_order",
                "insert into change_order select 'Q-2026-0001-C2', quote, revision, signed_by, signed_at, currency,"
                        + " total, 4, chain, '" + OTHER + "', body, digest, origin from change_order",
                // text where a whole number of cents belongs, half a day, no currency
                "insert into payment values ('P-2', 'Q-2026-0001', null, '2026-03-02', 'USD', '1.50', 'cash', '', 0)",
                "insert into payment values ('P-2', 'Q-2026-0001', null, '2026-03-02', 'US', 150, 'cash', '', 0)",
                "insert into visit values ('V-2', 'open', 'x', 'Monday', '{}')",
            })
    void noRowBreaksARule(String sql) {
        refused(sql);
    }

    private void refused(String sql) {
        var before = RawDatabase.counts(store.file());
        assertThatThrownBy(() -> RawDatabase.run(store.file(), sql)).as(sql).hasMessageContaining("SQLITE_CONSTRAINT");
        assertThat(RawDatabase.counts(store.file())).isEqualTo(before);
    }
}
