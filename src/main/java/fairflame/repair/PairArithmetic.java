package fairflame.repair;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.Money;

/**
 * One of a pair now, or both: both are worth it when what they cost more is less than the second visit times the chance
 * that it will be needed. Arithmetic only; the chance is the reader's, no published rate was found.
 *
 * @param one price of one now
 * @param both price of both now
 * @param later price of a second visit for the other
 * @param discountFactor worth today of money spent later, above 0 to 1; 1 for a year or two
 * @param withoutHeat what being without heat until that visit is worth to the customer
 */
public record PairArithmetic(Money one, Money both, Money later, BigDecimal discountFactor, Money withoutHeat) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    public PairArithmetic {
        if (discountFactor.signum() <= 0 || discountFactor.compareTo(BigDecimal.ONE) > 0) {
            throw Refusal.outOfRange("discount factor", discountFactor.toPlainString(), "above 0 to 1");
        }
        if (later.isNegative()
                || withoutHeat.isNegative()
                || later.plus(withoutHeat).isZero()) {
            throw Refusal.outOfRange("price of a later visit", later.getAmount(), "more than 0.00");
        }
    }

    /**
     * From the ingredients of a visit. Consumables and tax are left out on both sides; they hardly move the result.
     *
     * @param labourOne labour of one part, its access included
     * @param labourBoth labour of both in one visit, the access once
     * @param part price of one part
     * @param trip charge for the way
     * @param diagnosis charge for a second diagnosis; zero when none is charged
     */
    public static PairArithmetic ofVisits(Money labourOne, Money labourBoth, Money part, Money trip, Money diagnosis) {
        return new PairArithmetic(
                labourOne.plus(part),
                labourBoth.plus(part).plus(part),
                trip.plus(labourOne).plus(part).plus(diagnosis),
                BigDecimal.ONE,
                Money.zero(part.getCurrencyUnit()));
    }

    /** What both cost more now. */
    public Money difference() {
        return both.minus(one);
    }

    private BigDecimal laterExact() {
        return later.getAmount().multiply(discountFactor).add(withoutHeat.getAmount());
    }

    /** The chance of a second failure from which on both are cheaper, to three decimals; above 1 means never. */
    public BigDecimal breakEven() {
        return difference().getAmount().divide(laterExact(), 3, RoundingMode.HALF_UP);
    }

    /** What the second visit costs on average, given its chance. */
    public Money expectedLater(Percent chance) {
        return Rounding.NEAREST.apply(
                one.getCurrencyUnit(), laterExact().multiply(inRange(chance).factor()));
    }

    /** Which is cheaper on average, given the chance; one when both come out even. */
    public Cheaper cheaper(Percent chance) {
        var expected = laterExact().multiply(inRange(chance).factor());
        return difference().getAmount().compareTo(expected) < 0 ? Cheaper.BOTH : Cheaper.ONE;
    }

    private static Percent inRange(Percent chance) {
        if (chance.value().signum() < 0 || chance.value().compareTo(HUNDRED) > 0) {
            throw Refusal.outOfRange("chance", chance, "0 to 100 %");
        }
        return chance;
    }

    /** The result and what was assumed, a sentence each. */
    public List<String> sentences() {
        return List.of(
                "Both now cost " + Printed.amount(difference())
                        + " more than one; coming again for the other would cost " + Printed.amount(later) + ".",
                verdict(),
                "Assumed: today's prices, the heater opened once for both, " + laterWords() + ", " + coldWords()
                        + ", tax and sealing material left out. A part that measured wet is replaced whatever this says.");
    }

    private String laterWords() {
        return discountFactor.compareTo(BigDecimal.ONE) == 0
                ? "money later counted in full"
                : "money later counted at " + discountFactor.toPlainString();
    }

    private String coldWords() {
        return withoutHeat.isZero()
                ? "days without heat not counted"
                : "being without heat valued at " + Printed.amount(withoutHeat);
    }

    private String verdict() {
        var edge = breakEven();
        if (edge.signum() <= 0) {
            return "Both are never dearer than one.";
        }
        if (edge.compareTo(BigDecimal.ONE) > 0) {
            return "Both never pay for themselves: the second visit is cheaper than the second part now.";
        }
        return "Both pay when the chance that the other fails is above " + edge.toPlainString() + " ("
                + edge.multiply(HUNDRED).setScale(0, RoundingMode.HALF_UP) + " in 100).";
    }

    /** What costs less on average. */
    public enum Cheaper {
        ONE,
        BOTH
    }
}
