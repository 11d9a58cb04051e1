package fairflame.repair;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Repair the heater or replace it, compared by what each costs in a year: the sum spread over its life, gas and further
 * repairs included.
 *
 * @param repair cost of the repair, and how long it is expected to last
 * @param replacement cost of a new heater, and its expected life
 * @param gas what the gas costs in a year with each
 * @param furtherRepairs expected repairs of the old heater in a year
 */
public record RepairOrReplace(YearlyCost repair, YearlyCost replacement, GasUse gas, Money furtherRepairs) {
    /**
     * Gas in a year.
     *
     * @param yearly cost with the old heater
     * @param before thermal efficiency of the old heater
     * @param after thermal efficiency of the new one
     */
    public record GasUse(Money yearly, Percent before, Percent after) {
        public GasUse {
            if (before.value().signum() <= 0 || after.value().signum() <= 0) {
                throw Refusal.outOfRange("efficiency", before + ", " + after, "above 0 %");
            }
        }

        /** Gas saved in a year by the better efficiency; negative when the new heater is worse. */
        public Money saving() {
            var share = BigDecimal.ONE.subtract(before.value().divide(after.value(), MathContext.DECIMAL64));
            return Rounding.NEAREST.times(yearly, share);
        }
    }

    /** Yearly cost of keeping the old heater. */
    public Money keeping() {
        return repair.perYear().plus(furtherRepairs);
    }

    /** Yearly cost of a new heater, less the gas that it saves. */
    public Money replacing() {
        return replacement.perYear().minus(gas.saving());
    }

    /** Whether the new heater costs less in a year. */
    public boolean replaceIsCheaper() {
        return replacing().isLessThan(keeping());
    }

    /**
     * How many years the repair has to last to be the cheaper one, to one decimal; empty when it never is.
     *
     * <p>From the same factor turned around: n = -ln(1 - i k / a) / ln(1 + i), or k / a without interest, where a is
     * what is left for the repair in a year.
     */
    public Optional<BigDecimal> breakEvenYears() {
        var left = replacing().minus(furtherRepairs).getAmount().doubleValue();
        var sum = repair.spent().getAmount().doubleValue();
        var rate = repair.interest().factor().doubleValue();
        if (left <= 0 || rate * sum >= left) {
            return Optional.empty();
        }
        var years = rate == 0 ? sum / left : -Math.log(1 - rate * sum / left) / Math.log(1 + rate);
        return Optional.of(BigDecimal.valueOf(years).setScale(1, RoundingMode.HALF_UP));
    }

    /**
     * Whether both should be shown to the customer: the repair costs more than half of a new heater and the old one is
     * past two thirds of its life. Common practice, no source.
     */
    public boolean showBoth(int heaterYears) {
        var dear = repair.spent().multipliedBy(2).isGreaterThan(replacement.spent());
        return dear && heaterYears * 3 > replacement.years() * 2;
    }

    /** The result and what was assumed, a sentence each. */
    public List<String> sentences() {
        var cheaper = replaceIsCheaper() ? "a new heater" : "the repair";
        var apart = keeping().minus(replacing()).abs();
        return List.of(
                "Keeping the heater costs about " + Printed.amount(keeping()) + " a year, a new one about "
                        + Printed.amount(replacing()) + ": " + cheaper + " is cheaper by " + Printed.amount(apart)
                        + " a year.",
                breakEvenYears()
                        .map(years -> "The repair has to last " + years + " years to be the cheaper one.")
                        .orElse("The repair is not the cheaper one however long it lasts."),
                "Assumed: the repair lasts " + repair.years() + " years, a new heater " + replacement.years()
                        + " (from memory, not checked), interest " + repair.interest() + ", gas "
                        + Printed.amount(gas.yearly()) + " a year at " + gas.before() + " now and " + gas.after()
                        + " later, further repairs " + Printed.amount(furtherRepairs) + " a year.");
    }
}
