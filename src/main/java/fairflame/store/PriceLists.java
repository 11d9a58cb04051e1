package fairflame.store;

import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.Stocked;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** Price lists taken over from suppliers. The rows of the shop's folder stay; what imports changed lies over them. */
public interface PriceLists {
    /** Takes a whole price list over; refused when a row of it is. */
    Import take(Preview preview, LocalDate day);

    /** Takes an import back; refused when a later one changed a part of it. */
    Import undo(int id, LocalDate day);

    /** The states that imports left behind, by part number. */
    List<Stocked> states();

    /** All imports, the last first. */
    List<Import> imports();

    /** What an import changed, by part number. */
    List<PartChange> changes(int id);

    /** What a part has cost, the first price first; imports that were undone left no price. */
    List<Price> history(String part);

    /**
     * One import.
     *
     * @param undone day on which it was taken back
     */
    record Import(
            int id, String supplier, String file, LocalDate day, String who, int parts, Optional<LocalDate> undone) {}

    /**
     * A price.
     *
     * @param since day of the import; the price before the first import has the day of that import too
     * @param from file of the price list, or "the shop's folder"
     */
    record Price(LocalDate since, Money cost, Optional<Money> listPrice, String from) {}
}
