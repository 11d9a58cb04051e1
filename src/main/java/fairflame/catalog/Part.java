package fairflame.catalog;

import fairflame.wording.Spoken;
import java.util.Optional;
import org.joda.money.Money;

/**
 * One row of the parts list.
 *
 * @param number the shop's part number
 * @param role what it can serve as, maker-neutral: {@code high-limit-switch}, {@code pipe-steel-schedule-40}
 * @param size trade size where the role has sizes, such as {@code 1-1/4}; empty otherwise
 * @param description in words, with unit and size
 * @param consumable true for sealant, tape, pads: own tax kind
 * @param unit selling unit: {@code each}, {@code ft}, {@code tube}
 * @param cost what the shop pays for one unit
 * @param listPrice a fixed selling price that overrides the ladder
 * @param supplier id of the supplier
 * @param warrantyMonths 0 for none
 * @param preferred taken before the other parts of the same role and size
 * @param source "invented for the demo" or the shop's own
 */
public record Part(
        String number,
        String role,
        String size,
        @Spoken String description,
        boolean consumable,
        String unit,
        Money cost,
        Optional<Money> listPrice,
        String supplier,
        int warrantyMonths,
        boolean preferred,
        String source) {
    /** A part that no other of its role and size is held against. */
    public Part(
            String number,
            String role,
            String size,
            String description,
            boolean consumable,
            String unit,
            Money cost,
            Optional<Money> listPrice,
            String supplier,
            int warrantyMonths,
            String source) {
        this(
                number,
                role,
                size,
                description,
                consumable,
                unit,
                cost,
                listPrice,
                supplier,
                warrantyMonths,
                false,
                source);
    }

    /** Pipe, wire and tape are cut to length; everything else is sold by the whole unit. */
    public boolean cutToLength() {
        return unit.equals("ft");
    }
}
