package fairflame.document;

import fairflame.invoice.books.Entry;
import fairflame.invoice.books.Posting;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/** The journal as CSV (RFC 4180), a row for each posting. The format stands in docs/formats/journal.md. */
public final class JournalCsv {
    private static final List<String> HEADER = List.of(
            "entry",
            "date",
            "document",
            "account",
            "account_name",
            "account_type",
            "debit",
            "credit",
            "currency",
            "text");

    private JournalCsv() {}

    public static String write(List<Entry> entries) {
        var text = new StringBuilder(CsvText.row(HEADER));
        for (int i = 0; i < entries.size(); i++) {
            for (var posting : entries.get(i).postings()) {
                text.append(CsvText.row(cells(i + 1, entries.get(i), posting)));
            }
        }
        return text.toString();
    }

    private static List<String> cells(int number, Entry entry, Posting posting) {
        var cells = new ArrayList<String>();
        cells.add(Integer.toString(number));
        cells.add(entry.on().toString());
        cells.add(entry.document());
        cells.add(posting.account().number());
        cells.add(posting.account().name());
        cells.add(posting.account().type().word());
        cells.add(posting.amount().isPositive() ? plain(posting.amount()) : "");
        cells.add(posting.amount().isNegative() ? plain(posting.amount()) : "");
        cells.add(posting.amount().getCurrencyUnit().getCode());
        cells.add(entry.text());
        return cells;
    }

    private static String plain(Money amount) {
        return amount.abs().getAmount().toPlainString();
    }
}
