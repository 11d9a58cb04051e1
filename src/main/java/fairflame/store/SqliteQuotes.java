package fairflame.store;

import fairflame.Refusal;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

final class SqliteQuotes implements Quotes {
    private final Handle handle;
    private final Journal journal;
    private final Body<Quote> body;

    SqliteQuotes(Handle handle, Journal journal, Body<Quote> body) {
        this.handle = handle;
        this.journal = journal;
        this.body = body;
    }

    @Override
    public Quote issue(String series, int year, Function<String, Quote> make) {
        journal.by();
        var number = next(series, year).toString();
        var quote = make.apply(number);
        if (!quote.number().equals(number) || quote.revision() != 1) {
            throw new IllegalArgumentException("number " + number + " was given, but the quote made has "
                    + quote.number() + " revision " + quote.revision());
        }
        add(quote);
        return quote;
    }

    private SerialNumber next(String series, int year) {
        return new SerialNumber(
                series,
                year,
                handle.createQuery("select coalesce(max(sequence), 0) + 1 from quote"
                                + " where series = :series and year = :year")
                        .bind("series", series)
                        .bind("year", year)
                        .mapTo(Long.class)
                        .one());
    }

    @Override
    public void add(Quote quote) {
        journal.by();
        var content = new Content(body.write(quote));
        var subject = subject(quote.number(), quote.revision());
        if (content.isThere(bytes(quote.number(), quote.revision()), "quote", subject)) {
            return;
        }
        addNumber(quote);
        addRevision(quote, content);
        journal.stored("quote stored", subject, content.digest());
    }

    private void addNumber(Quote quote) {
        var visit = handle.createQuery("select visit from quote where number = :number")
                .bind("number", quote.number())
                .mapTo(String.class)
                .findOne();
        if (visit.isPresent()) {
            if (!visit.get().equals(quote.visit())) {
                throw Refusal.notAllowed(
                        "visit of quote " + quote.number(), quote.visit(), "the visit it was made for, " + visit.get());
            }
            return;
        }
        refuseUnknownVisit(quote);
        var number = SerialNumber.parse(quote.number());
        handle.createUpdate("insert into quote (number, series, year, sequence, visit)"
                        + " values (:number, :series, :year, :sequence, :visit)")
                .bind("number", quote.number())
                .bind("series", number.series())
                .bind("year", number.year())
                .bind("sequence", number.sequence())
                .bind("visit", quote.visit())
                .execute();
    }

    private void refuseUnknownVisit(Quote quote) {
        var known = handle.createQuery("select count(*) from visit where id = :id")
                .bind("id", quote.visit())
                .mapTo(Integer.class)
                .one();
        if (known == 0) {
            throw Refusal.unknown("visit of quote " + quote.number(), quote.visit(), "a stored visit");
        }
    }

    private void addRevision(Quote quote, Content content) {
        handle.createUpdate("""
                        insert into quote_revision (number, revision, made, valid_until, customer, site,
                            currency, total, body, digest)
                        values (:number, :revision, :made, :validUntil, :customer, :site,
                            :currency, :total, :body, :digest)""")
                .bind("number", quote.number())
                .bind("revision", quote.revision())
                .bind("made", quote.made().toString())
                .bind("validUntil", quote.validUntil().toString())
                .bind("customer", quote.customer().name())
                .bind("site", String.join(", ", quote.site().address()))
                .bind("currency", quote.currency().getCode())
                .bind("total", suggested(quote).getAmountMinorLong())
                .bind("body", content.bytes())
                .bind("digest", content.digest())
                .execute();
    }

    /** Total of the suggested choice, else of the first; nothing for a quote without choices. */
    private static Money suggested(Quote quote) {
        return quote.choices().stream()
                .filter(Choice::suggested)
                .findFirst()
                .or(() -> quote.choices().stream().findFirst())
                .map(choice -> choice.totals().total())
                .orElse(Money.zero(quote.currency()));
    }

    @Override
    public Optional<Quote> find(String number, int revision) {
        return bytes(number, revision).map(body::read);
    }

    @Override
    public Optional<Quote> latest(String number) {
        return handle.createQuery(
                        "select body from quote_revision where number = :number order by revision desc limit 1")
                .bind("number", number)
                .mapTo(byte[].class)
                .findOne()
                .map(body::read);
    }

    @Override
    public List<Quote> revisions(String number) {
        return handle.createQuery("select body from quote_revision where number = :number order by revision")
                .bind("number", number)
                .map((row, context) -> body.read(row.getBytes("body")))
                .list();
    }

    @Override
    public Optional<byte[]> bytes(String number, int revision) {
        return handle.createQuery("select body from quote_revision where number = :number and revision = :revision")
                .bind("number", number)
                .bind("revision", revision)
                .mapTo(byte[].class)
                .findOne();
    }

    @Override
    public List<QuoteRow> rows() {
        return handle.createQuery("""
                        select r.*, q.visit, a.quote is not null as signed
                        from quote q
                        join quote_revision r on r.number = q.number
                            and r.revision = (select max(revision) from quote_revision where number = q.number)
                        left join agreement a on a.quote = r.number and a.revision = r.revision
                        order by q.year desc, q.series, q.sequence desc""").map((row, context) -> row(row)).list();
    }

    private static QuoteRow row(ResultSet row) throws SQLException {
        return new QuoteRow(
                row.getString("number"),
                row.getInt("revision"),
                row.getString("visit"),
                row.getString("customer"),
                LocalDate.parse(row.getString("made")),
                LocalDate.parse(row.getString("valid_until")),
                Money.ofMinor(CurrencyUnit.of(row.getString("currency")), row.getLong("total")),
                row.getBoolean("signed"));
    }

    static String subject(String number, int revision) {
        return number + " revision " + revision;
    }
}
