package fairflame.agreement;

import fairflame.Refusal;
import fairflame.quote.Line;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The customer's right to cancel what was signed at home.
 *
 * @param signed day of the signature
 * @param businessDays how many business days it lasts
 * @param lastDay until midnight of this day
 */
public record CancelRight(LocalDate signed, int businessDays, LocalDate lastDay) {
    private static final int MOST_DAYS = 60;

    /**
     * The right under the rules that the quote carries; none where the place gives none, or gives it only for further
     * sales and nothing further was sold (16 CFR 429.0(a), repair asked for by the buyer).
     */
    public static Optional<CancelRight> of(SignedRevision signed) {
        var rules = signed.quote().rules();
        var further = signed.taken().lines().stream().anyMatch(Line::further);
        if (rules.cancelDays() == 0 || !(rules.cancelAlways() || further)) {
            return Optional.empty();
        }
        var day = signed.signature().at().toLocalDate();
        return Optional.of(new CancelRight(day, rules.cancelDays(), lastDay(day, rules.cancelDays())));
    }

    /**
     * Midnight of which day ends a right of so many business days. Saturday is a business day; Sundays and federal
     * holidays are not (16 CFR 429.0(f)).
     *
     * @param days 1 to 60
     */
    public static LocalDate lastDay(LocalDate signed, int days) {
        if (days < 1 || days > MOST_DAYS) {
            throw Refusal.outOfRange("business days to cancel", days, "1 to " + MOST_DAYS);
        }
        var day = signed;
        for (int counted = 0; counted < days; ) {
            day = day.plusDays(1);
            if (day.getDayOfWeek() != DayOfWeek.SUNDAY && !FederalHolidays.on(day)) {
                counted++;
            }
        }
        return day;
    }
}
