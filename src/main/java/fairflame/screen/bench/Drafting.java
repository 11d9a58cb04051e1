package fairflame.screen.bench;

import fairflame.wording.Language;
import java.time.LocalDate;
import java.util.Set;

/** Begins a draft and ends it as the text of a visit file. */
public final class Drafting {
    private Drafting() {}

    /** A draft with its number, day and technician; everything else is asked. */
    public static Draft fresh(String number, LocalDate day, String technician) {
        return Terms.withUnits(PlateCard.withUnits(Draft.empty()
                .with("id", number)
                .with("date", day.toString())
                .with("technician", technician)
                .with("customer.role", "owner")
                .with("customer.language", Language.ENGLISH.code())
                .with("heater.fuel", "natural")
                .with("price.zone", "standard")));
    }

    /** The whole draft as the text of a visit file; what cannot be read in it is refused by its reader. */
    public static String visitText(Draft draft) {
        return new VisitText(draft, Set.of()).json();
    }
}
