package fairflame.catalog.upkeep;

import java.util.Optional;
import org.joda.money.Money;

/**
 * One readable row of a price list. What the list has no column for, or leaves empty, is absent and stays as it is.
 *
 * @param row as a spreadsheet counts
 */
record Offer(
        int row,
        String number,
        Money cost,
        Optional<String> description,
        Optional<Money> listPrice,
        Optional<String> unit,
        Optional<String> role,
        Optional<String> size,
        Optional<Boolean> consumable,
        Optional<Integer> warrantyMonths,
        Optional<String> replacedBy) {}
