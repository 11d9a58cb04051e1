package fairflame.quote;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a price depends on besides scope, shop and place.
 *
 * @param zone key of the shop's trip charges
 * @param conditions keys of the shop's time conditions, such as {@code tight-space}
 * @param discount on the whole document
 * @param lineDiscounts on single lines, taken first
 * @param extras subcontractors, disposal and the like
 * @param further ids of choices sold beyond the repair that was asked for
 */
public record PricingInputs(
        String zone,
        Set<String> conditions,
        Optional<Discount> discount,
        List<LineDiscount> lineDiscounts,
        Optional<PaidDiagnosis> paidDiagnosis,
        List<ExtraLine> extras,
        Set<String> further) {
    public PricingInputs {
        conditions = Set.copyOf(conditions);
        lineDiscounts = List.copyOf(lineDiscounts);
        extras = List.copyOf(extras);
        further = Set.copyOf(further);
    }

    /** A plain repair in a zone: no conditions, discounts or extras. */
    public static PricingInputs inZone(String zone) {
        return new PricingInputs(zone, Set.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of());
    }

    /** The same with time conditions. */
    public PricingInputs under(Set<String> conditions) {
        return new PricingInputs(zone, conditions, discount, lineDiscounts, paidDiagnosis, extras, further);
    }

    /** The same with a document discount. */
    public PricingInputs less(Discount discount) {
        return new PricingInputs(
                zone, conditions, Optional.of(discount), lineDiscounts, paidDiagnosis, extras, further);
    }

    /** The same with discounts on single lines. */
    public PricingInputs less(List<LineDiscount> lineDiscounts) {
        return new PricingInputs(zone, conditions, discount, lineDiscounts, paidDiagnosis, extras, further);
    }

    /** The same with a diagnostic fee paid earlier. */
    public PricingInputs credited(PaidDiagnosis paid) {
        return new PricingInputs(zone, conditions, discount, lineDiscounts, Optional.of(paid), extras, further);
    }

    /** The same with further lines. */
    public PricingInputs with(List<ExtraLine> extras) {
        return new PricingInputs(zone, conditions, discount, lineDiscounts, paidDiagnosis, extras, further);
    }
}
