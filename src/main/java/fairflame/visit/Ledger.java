package fairflame.visit;

import fairflame.Refusal;
import fairflame.document.JournalCsv;
import fairflame.document.ReportPdf;
import fairflame.document.StatementPdf;
import fairflame.document.UblInvoice;
import fairflame.document.page.PageFormat;
import fairflame.invoice.Invoice;
import fairflame.invoice.account.Ageing;
import fairflame.invoice.account.Movement;
import fairflame.invoice.account.Statement;
import fairflame.invoice.books.Books;
import fairflame.invoice.books.Chart;
import fairflame.invoice.books.Entry;
import fairflame.invoice.report.ShopReport;
import fairflame.invoice.report.TimeComparison;
import fairflame.quote.Quote;
import fairflame.store.Records;
import fairflame.wording.Told;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** What customers owe, the books, and the figures of the shop. */
public final class Ledger {
    private final Workplace workplace;

    public Ledger(Workplace workplace) {
        this.workplace = workplace;
    }

    /** A result with the names of the files written into the folder. */
    public record Written<T>(T content, List<String> files) {
        public Written {
            files = List.copyOf(files);
        }
    }

    private org.joda.money.CurrencyUnit currency() {
        return workplace.library().shop().currency();
    }

    /** Open invoices by how long they are overdue today. */
    public Ageing ageing() {
        return workplace
                .store()
                .reading(records -> Ageing.of(workplace.today(), currency(), Accounts.all(records, currency())));
    }

    /** The statement of a customer, by name as it stands on the quotes, in the language of the latest one; its PDF too. */
    public Written<Statement> statement(String customer, Statement.Span span) {
        return workplace.store().reading(records -> {
            var quote = latest(records, customer);
            var accounts = Accounts.ofCustomer(records, currency(), customer);
            var told = workplace.library().in(quote);
            var statement = Told.in(told.wording(), Statement.of(quote.customer(), currency(), accounts, span));
            var ageing = Ageing.of(span.to(), currency(), accounts);
            var name = "statement-" + customer.replaceAll("[^A-Za-z0-9]+", "-") + "-" + span.to() + ".pdf";
            workplace
                    .folder()
                    .write(Map.of(name, StatementPdf.write(statement, ageing, told.paper(), PageFormat.LETTER)));
            return new Written<>(statement, List.of(name));
        });
    }

    private static Quote latest(Records records, String customer) {
        return records.quotes().rows().stream()
                .filter(row -> row.customer().equals(customer))
                .findFirst()
                .flatMap(row -> records.quotes().latest(row.number()))
                .orElseThrow(() -> Refusal.unknown("customer", customer, "the name on a quote in this folder"));
    }

    /** Pays back money of the customer that no invoice uses. */
    public Movement refund(String quote, Money amount, String method, String reason) {
        return workplace.store().inTransaction(workplace.by(), records -> {
            if (records.quotes().latest(quote).isEmpty()) {
                throw Refusal.unknown("quote", quote, "the number of a quote in this folder");
            }
            Accounts.of(records, quote, currency()).refuseRefundOf(amount);
            return put(records, Movement.Kind.REFUND, quote, Optional.empty(), amount, method, reason);
        });
    }

    /** Gives up what is open of an invoice, or a part of it. */
    public Movement writeOff(String number, Money amount, String reason) {
        return workplace.store().inTransaction(workplace.by(), records -> {
            var invoice = records.invoices()
                    .find(number)
                    .orElseThrow(() -> Refusal.unknown("invoice", number, "the number of an invoice in this folder"));
            Accounts.of(records, invoice.quote(), currency()).refuseWriteOffOf(number, amount);
            return put(records, Movement.Kind.WRITE_OFF, invoice.quote(), Optional.of(number), amount, "", reason);
        });
    }

    private Movement put(
            Records records,
            Movement.Kind kind,
            String quote,
            Optional<String> invoice,
            Money amount,
            String method,
            String reason) {
        var register = records.registers().movements();
        var letter = kind == Movement.Kind.REFUND ? "R" : "W";
        var id = letter + "-" + quote + "-" + (register.all().size() + 1);
        var movement = new Movement(id, kind, workplace.today(), quote, invoice, amount, method, false, reason.strip());
        register.put(id, movement);
        return movement;
    }

    /** The journal of some days, written as CSV into the folder. */
    public Written<List<Entry>> journal(Statement.Span span) {
        var chart = Chart.parse(workplace.library().accounts());
        var entries = workplace
                .store()
                .reading(records -> Books.journal(chart, Accounts.papers(records), Accounts.movements(records)))
                .stream()
                .filter(entry -> span.holds(entry.on()))
                .toList();
        var name = "journal-" + span.from() + "-" + span.to() + ".csv";
        workplace.folder().write(Map.of(name, JournalCsv.write(entries).getBytes(StandardCharsets.UTF_8)));
        return new Written<>(entries, List.of(name));
    }

    /** An invoice or credit note as UBL 2.1 in the folder; its name. */
    public String electronic(String number) {
        var seller = workplace.library().paper(Library.ENGLISH).company().electronic();
        var stored = workplace.store().reading(records -> records.invoices().find(number));
        var invoice = stored.filter(paper -> paper.kind() == Invoice.Kind.CREDIT)
                .orElseGet(() -> new Billing(workplace).shown(number).invoice());
        var name = number + ".xml";
        workplace.folder().write(Map.of(name, UblInvoice.write(invoice, seller).getBytes(StandardCharsets.UTF_8)));
        return name;
    }

    /** The figures of the shop over some days. */
    public ShopReport figures(Statement.Span span) {
        return workplace.store().reading(records -> {
            var quotes = records.quotes().rows().stream()
                    .filter(row -> span.holds(row.made()))
                    .flatMap(row -> records.quotes().latest(row.number()).stream())
                    .toList();
            var signed =
                    Signed.all(records).stream().map(agreed -> agreed.signed()).toList();
            var papers = Accounts.papers(records).stream()
                    .filter(paper -> span.holds(paper.issued()))
                    .toList();
            var hours = JobHours.known(records, workplace.folderShop()).stream()
                    .filter(job -> span.holds(job.on()))
                    .toList();
            return new ShopReport(
                    span.from(),
                    span.to(),
                    ShopReport.wins(quotes, signed),
                    ShopReport.revenue(papers, signed, currency()),
                    TimeComparison.of(hours));
        });
    }

    /** The figures of the shop over some days, with their PDF in the folder. */
    public Written<ShopReport> report(Statement.Span span) {
        var report = figures(span);
        var name = "report-" + span.from() + "-" + span.to() + ".pdf";
        var text = workplace.library().paper(Library.ENGLISH);
        workplace.folder().write(Map.of(name, ReportPdf.write(report, names(), text, PageFormat.LETTER)));
        return new Written<>(report, List.of(name));
    }

    /** Words for the ids in a report. */
    public Map<String, String> names() {
        var names = new HashMap<String, String>();
        workplace.library().shop().tasks().forEach(task -> names.put(task.id(), task.title()));
        workplace.library().knowledge().causes().forEach(cause -> names.put(cause.id(), cause.title()));
        return names;
    }
}
