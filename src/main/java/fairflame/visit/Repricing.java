package fairflame.visit;

import fairflame.Refusal;
import fairflame.money.Amounts;
import fairflame.quote.Choice;
import fairflame.quote.Line;
import fairflame.quote.Quote;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * What an unsigned quote would come to at today's prices and times. It is only shown: the quote keeps the prices it was
 * made with until somebody asks for a new revision.
 */
public final class Repricing {
    private final Workplace workplace;
    private final Progress progress;

    public Repricing(Workplace workplace) {
        this(workplace, Progress.UNWATCHED);
    }

    /** As it is watched: ended before all papers are made, there is no new revision. */
    public Repricing(Workplace workplace, Progress progress) {
        this.workplace = workplace;
        this.progress = progress;
    }

    /**
     * One choice then and now.
     *
     * @param lines what differs, a phrase each
     */
    public record Difference(String choice, Money then, Money now, List<String> lines) {
        public Difference {
            lines = List.copyOf(lines);
        }
    }

    /** The choices whose price would differ; none when nothing has changed. */
    public List<Difference> differences(String number) {
        var old = quote(number);
        var now = new QuoteMaking(workplace.library())
                .quote(Examination.of(visit(old), workplace.library()), number, old.revision(), old.made());
        var found = new ArrayList<Difference>();
        for (var choice : old.choices()) {
            now.choices().stream()
                    .filter(other -> other.id().equals(choice.id()))
                    .findFirst()
                    .filter(other -> !other.totals().equals(choice.totals()))
                    .ifPresent(other -> found.add(new Difference(
                            choice.id(), choice.totals().total(), other.totals().total(), lines(choice, other))));
        }
        return found;
    }

    /** Makes the new revision at today's prices. */
    public Quote make(String number) {
        var visit = visit(quote(number));
        return new Offer(workplace, progress).make(visit, List.of()).match(Offer.Quoted::quote, halted -> {
            throw Refusal.stopWork(
                    "quote", number, "no price: " + halted.sheet().headline());
        });
    }

    private Quote quote(String number) {
        return workplace.store().reading(records -> {
            var quote = records.quotes()
                    .latest(number)
                    .orElseThrow(() -> Refusal.unknown("quote", number, "the number of a quote in this folder"));
            if (records.agreements().find(number, quote.revision()).isPresent()) {
                throw Refusal.notAllowed(
                        "new price of quote " + number,
                        "signed already",
                        "the price that was signed, or a change order");
            }
            return quote;
        });
    }

    private VisitRecord visit(Quote quote) {
        var text = workplace
                .store()
                .reading(records -> records.visits()
                        .find(quote.visit())
                        .orElseThrow(() -> Refusal.unknown("visit", quote.visit(), "a visit in this folder"))
                        .text());
        return workplace.library().visits().read(text);
    }

    /** Lines are told apart by what they are, because a new line moves the numbers of those behind it. */
    private static List<String> lines(Choice then, Choice now) {
        var before = nets(then);
        var after = nets(now);
        var words = new ArrayList<String>();
        before.forEach((name, net) -> {
            var other = after.remove(name);
            if (other == null) {
                words.add(name + ": " + Amounts.plain(net) + " -> gone");
            } else if (!other.equals(net)) {
                words.add(name + ": " + Amounts.plain(net) + " -> " + Amounts.plain(other));
            }
        });
        after.forEach((name, net) -> words.add(name + ": new, " + Amounts.plain(net)));
        return words;
    }

    private static Map<String, Money> nets(Choice choice) {
        var nets = new LinkedHashMap<String, Money>();
        choice.lines().forEach(line -> nets.merge(name(line), line.net(), Money::plus));
        return nets;
    }

    private static String name(Line line) {
        return line.item().isEmpty() ? line.description() : line.item() + ", " + line.description();
    }
}
