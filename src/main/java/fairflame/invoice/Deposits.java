package fairflame.invoice;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import fairflame.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes the deposit of a signed quote: nothing before the signature, never more than was agreed, which already keeps to
 * the cap of the place. A deposit is money held until it is earned; the invoice shows it as paid (EN 16931, BT-113).
 */
public final class Deposits {
    private Deposits() {}

    /**
     * All deposits with one more.
     *
     * @param taken deposits of this quote so far
     * @param today no payment is taken from the future
     */
    public static List<Payment> receive(SignedRevision signed, List<Payment> taken, Payment deposit, LocalDate today) {
        var currency = signed.quote().currency();
        Amounts.same(currency, deposit.amount());
        var signedOn = signed.signature().at().toLocalDate();
        if (deposit.on().isBefore(signedOn) || deposit.on().isAfter(today)) {
            throw Refusal.outOfRange(
                    "day of the deposit", deposit.on(), "from " + signedOn + ", the day of signing, up to " + today);
        }
        if (taken.stream().anyMatch(known -> known.id().equals(deposit.id()))) {
            throw Refusal.notAllowed("payment " + deposit.id(), "entered already", "each payment once");
        }
        var left = signed.taken()
                .deposit()
                .minus(Amounts.sum(currency, taken.stream().map(Payment::amount).toList()));
        if (!deposit.amount().isPositive() || deposit.amount().isGreaterThan(left)) {
            throw Refusal.outOfRange("deposit", deposit.amount(), "above zero and up to " + left);
        }
        var all = new ArrayList<>(taken);
        all.add(deposit);
        return List.copyOf(all);
    }
}
