package fairflame.quote;

import fairflame.Refusal;
import fairflame.money.Amounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** Answers "why this number?": the chain from reading to tax rule, a sentence each, for every line and every total. */
public final class Why {
    private static final Set<String> HOURS =
            Set.of("standard time", "access step", "condition", "rounding", "minimum charge");

    private Why() {}

    /** What can be asked of a choice: the ids of its lines, then its totals. */
    public static List<String> questions(Choice choice) {
        var ids = new ArrayList<>(choice.lines().stream().map(Line::id).toList());
        ids.addAll(List.of("hours", "subtotal", "discount", "tax", "total", "deposit"));
        return ids;
    }

    /**
     * The chain behind a number.
     *
     * @param question a line id such as {@code L1}, or hours, subtotal, discount, tax, total, deposit
     */
    public static List<String> chain(Quote quote, String choiceId, String question) {
        var choice = quote.choice(choiceId);
        return switch (question) {
            case "hours" -> hours(choice);
            case "subtotal" -> List.of(subtotal(choice));
            case "discount" -> discount(choice);
            case "tax" -> tax(quote, choice);
            case "total" -> total(quote, choice);
            case "deposit" ->
                List.of("Deposit " + choice.deposit() + ": "
                        + Deposit.words(quote.rules().deposit())
                        + source(quote.rules().deposit().source()));
            default -> line(choice, question);
        };
    }

    private static List<String> line(Choice choice, String id) {
        var line = choice.lines().stream()
                .filter(candidate -> candidate.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("line or total", id, String.join(", ", questions(choice))));
        var sentences = new ArrayList<String>();
        sentences.add(line.id() + ", " + line.description() + ": " + line.net());
        line.basis().forEach(basis -> sentences.add(words(basis)));
        return sentences;
    }

    private static List<String> hours(Choice choice) {
        var sentences = new ArrayList<String>();
        sentences.add("Hours: " + OwnTime.plain(choice.hours()) + " h");
        choice.lines().stream()
                .filter(line -> line.kind() == LineKind.LABOUR)
                .flatMap(line -> line.basis().stream())
                .filter(basis -> HOURS.contains(basis.what()))
                .forEach(basis -> sentences.add(words(basis)));
        return sentences;
    }

    private static String subtotal(Choice choice) {
        return "Subtotal " + choice.totals().subtotal() + ": sum of the lines, "
                + sum(choice.lines().stream()
                        .map(line -> named(line, line.net()))
                        .toList());
    }

    private static List<String> discount(Choice choice) {
        var off = choice.totals().discount();
        if (off.isZero()) {
            return List.of("Discount " + off + ": none on the document");
        }
        var shares = choice.lines().stream()
                .filter(line -> !line.discount().isZero())
                .map(line -> named(line, line.discount()))
                .toList();
        return List.of(
                "Discount " + off + ": shared to the cent over the lines that may be discounted, first between taxed "
                        + "and untaxed, then by line; " + sum(shares));
    }

    private static List<String> tax(Quote quote, Choice choice) {
        var rule = quote.rules().tax();
        var sentences = new ArrayList<String>();
        sentences.add("Tax " + choice.totals().tax() + ": " + Taxation.words(rule) + source(rule.source()));
        var taxed = choice.lines().stream()
                .filter(Line::taxable)
                .map(line -> named(line, line.afterDiscount()))
                .toList();
        if (!taxed.isEmpty()) {
            sentences.add("Taxed after discount: " + sum(taxed));
        }
        for (var layer : choice.totals().taxes()) {
            var exact = layer.base().getAmount().multiply(layer.rate().factor());
            sentences.add(layer.name() + ": " + layer.base() + " x " + layer.rate()
                    + (rule.perItem() ? ", rounded on each line, " : " = " + plain(exact) + ", rounded once to ")
                    + layer.amount());
        }
        return sentences;
    }

    private static List<String> total(Quote quote, Choice choice) {
        var totals = choice.totals();
        var sentences = new ArrayList<String>();
        sentences.add("Total " + totals.total() + ": " + Amounts.plain(totals.subtotal()) + " - "
                + Amounts.plain(totals.discount()) + " + " + Amounts.plain(totals.tax()));
        sentences.add(subtotal(choice));
        sentences.addAll(discount(choice));
        sentences.addAll(tax(quote, choice));
        return sentences;
    }

    private static String named(Line line, Money amount) {
        return line.id() + " " + Amounts.plain(amount);
    }

    private static String sum(List<String> terms) {
        return terms.stream().collect(Collectors.joining(" + "));
    }

    private static String plain(BigDecimal exact) {
        return exact.stripTrailingZeros().toPlainString();
    }

    private static String words(Basis basis) {
        return basis.what() + ": " + basis.words() + source(basis.source());
    }

    private static String source(String source) {
        return source.isBlank() ? "" : " [" + source + "]";
    }
}
