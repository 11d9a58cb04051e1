package fairflame.store;

import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.Stocked;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.catalog.upkeep.Watch;
import java.time.LocalDate;
import java.util.List;

/** Price lists taken over from suppliers. The rows of the shop's folder stay; what imports changed lies over them. */
public interface PriceLists {
    /** Takes a whole price list over; refused when a row of it is. */
    default TakenOver take(Preview preview, LocalDate day) {
        return take(preview, day, Watch.NONE);
    }

    /** As {@link #take(Preview, LocalDate)}, watched. */
    TakenOver take(Preview preview, LocalDate day, Watch watch);

    /** Takes an import back; refused when a later one changed a part of it. */
    TakenOver undo(int id, LocalDate day);

    /** The states that imports left behind, by part number. */
    List<Stocked> states();

    /** All imports, the last first. */
    List<TakenOver> imports();

    /** What an import changed, by part number. */
    List<PartChange> changes(int id);

    /** What a part has cost, the first price first; imports that were undone left no price. */
    List<PastPrice> history(String part);
}
