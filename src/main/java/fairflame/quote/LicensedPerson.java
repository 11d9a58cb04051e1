package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A licensed person who is to do the work.
 *
 * @param number of the licence
 * @param expires last day on which it holds; empty when it is not known
 */
public record LicensedPerson(String name, String number, Optional<LocalDate> expires) {
    public LicensedPerson {
        if (name.isBlank() || number.isBlank()) {
            throw Refusal.missing("licensed gas fitter", "a name and a licence number");
        }
    }

    /** Refuses a licence that has run out or is not written as the place writes it. */
    void check(Jurisdiction place, LocalDate day) {
        if (expires.isPresent() && expires.get().isBefore(day)) {
            throw Refusal.notAllowed(
                    "licence " + number, "expired on " + expires.get(), "a licence that holds on " + day);
        }
        if (!place.gasLicencePattern().isEmpty() && !number.matches(place.gasLicencePattern())) {
            throw Refusal.malformed(
                    "number of the " + place.gasLicence(),
                    number,
                    "as " + place.name() + " writes it: " + place.gasLicencePattern());
        }
    }
}
