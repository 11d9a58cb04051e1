package fairflame.invoice;

import fairflame.Refusal;
import fairflame.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.joda.money.Money;

/**
 * What is owed: invoices and credit notes of one agreement, and what was paid. Payments count for the oldest paper
 * first.
 *
 * @param papers invoices and credit notes in the order of issue
 * @param payments in the order in which they were received
 */
public record Account(List<Invoice> papers, List<Payment> payments) {
    public Account {
        papers = List.copyOf(papers);
        payments = List.copyOf(payments);
        if (papers.isEmpty()) {
            throw Refusal.missing("invoice", "at least one");
        }
    }

    /** All invoices less all credit notes. */
    public Money billed() {
        var currency = papers.get(0).currency();
        return Amounts.sum(
                currency, papers.stream().map(paper -> paper.totals().total()).toList());
    }

    public Money paid() {
        var currency = papers.get(0).currency();
        return Amounts.sum(currency, payments.stream().map(Payment::amount).toList());
    }

    /** What is still to be paid; below zero what the customer has coming back. */
    public Money balance() {
        return billed().minus(paid());
    }

    /**
     * The account with one more payment.
     *
     * @param today no payment is taken from the future
     */
    public Account receive(Payment payment, LocalDate today) {
        Amounts.same(papers.get(0).currency(), payment.amount());
        if (!payment.amount().isPositive()) {
            throw Refusal.outOfRange("payment", payment.amount(), "above zero");
        }
        if (payment.on().isAfter(today)) {
            throw Refusal.outOfRange("day of the payment", payment.on(), "up to " + today);
        }
        if (payments.stream().anyMatch(known -> known.id().equals(payment.id()))) {
            throw Refusal.notAllowed("payment " + payment.id(), "entered already", "each payment once");
        }
        if (payment.method().isBlank()) {
            throw Refusal.missing("method of the payment", "cash, card, cheque, transfer");
        }
        if (payment.amount().isGreaterThan(balance())) {
            throw Refusal.outOfRange("payment", payment.amount(), "up to " + balance() + ", what is due");
        }
        var more = new ArrayList<>(payments);
        more.add(payment);
        return new Account(papers, more);
    }

    /** An invoice of this account with the payments that count for it: what its printed copy shows now. */
    public Invoice shown(String number) {
        var left = paid();
        for (var paper : papers) {
            if (paper.kind() == Invoice.Kind.CREDIT) {
                continue;
            }
            var due = paper.totals().total().plus(credited(paper));
            var share = left.isGreaterThan(due) ? due : left;
            if (paper.number().equals(number)) {
                return paper.paidBy(shares(share, paidBefore(paper)));
            }
            left = left.minus(share);
        }
        var numbers = new TreeSet<String>();
        papers.forEach(paper -> numbers.add(paper.number()));
        throw Refusal.unknown("invoice", number, String.join(", ", numbers));
    }

    private Money credited(Invoice invoice) {
        return Amounts.sum(
                invoice.currency(),
                papers.stream()
                        .filter(paper -> paper.corrects().equals(invoice.number()))
                        .map(paper -> paper.totals().total())
                        .toList());
    }

    private Money paidBefore(Invoice invoice) {
        var sum = Money.zero(invoice.currency());
        for (var paper : papers) {
            if (paper.number().equals(invoice.number())) {
                break;
            }
            if (paper.kind() != Invoice.Kind.CREDIT) {
                sum = sum.plus(paper.totals().total()).plus(credited(paper));
            }
        }
        return sum;
    }

    /** The pieces of payments between two sums of money received. */
    private List<Payment> shares(Money amount, Money skipped) {
        var shares = new ArrayList<Payment>();
        var skip = skipped;
        var left = amount;
        for (var payment : payments) {
            var after = payment.amount().isGreaterThan(skip) ? payment.amount().minus(skip) : zero(amount);
            skip = skip.minus(payment.amount().minus(after));
            var taken = after.isGreaterThan(left) ? left : after;
            if (taken.isPositive()) {
                shares.add(new Payment(
                        payment.id(), payment.on(), taken, payment.method(), payment.reference(), payment.deposit()));
                left = left.minus(taken);
            }
        }
        return shares;
    }

    private static Money zero(Money like) {
        return Money.zero(like.getCurrencyUnit());
    }
}
