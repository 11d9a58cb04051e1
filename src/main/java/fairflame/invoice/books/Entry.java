package fairflame.invoice.books;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * One entry of the journal. Its postings add up to zero.
 *
 * @param document number of the invoice, credit note or movement
 */
public record Entry(LocalDate on, String document, String text, List<Posting> postings) {
    public Entry {
        postings = List.copyOf(postings);
        var sum = postings.stream().map(Posting::amount).reduce(Money::plus);
        if (sum.isEmpty() || !sum.get().isZero()) {
            throw new IllegalArgumentException("entry " + document + " does not balance: " + postings);
        }
    }

    /** Collects the postings of an entry; amounts of zero are left out, amounts on one account added up. */
    static final class Builder {
        private final List<Posting> postings = new ArrayList<>();

        Builder debit(Account account, Money amount) {
            for (int i = 0; i < postings.size(); i++) {
                if (postings.get(i).account().equals(account)) {
                    postings.set(
                            i, new Posting(account, postings.get(i).amount().plus(amount)));
                    return this;
                }
            }
            postings.add(new Posting(account, amount));
            return this;
        }

        Builder credit(Account account, Money amount) {
            return debit(account, amount.negated());
        }

        List<Posting> done() {
            return postings.stream()
                    .filter(posting -> !posting.amount().isZero())
                    .toList();
        }
    }
}
