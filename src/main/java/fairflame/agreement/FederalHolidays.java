package fairflame.agreement;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.Set;
import java.util.TreeSet;

/**
 * Legal public holidays of the United States: 5 USC 6103(a). A fixed day that falls on a Saturday is kept on the Friday
 * before (5 USC 6103(b)), on a Sunday on the Monday after (Executive Order 11582, section 3). Both the day itself and
 * the day on which it is kept are in the set: a right to cancel then runs longer, never shorter.
 */
final class FederalHolidays {
    private FederalHolidays() {}

    static boolean on(LocalDate day) {
        // The Friday before a New Year's Day on a Saturday still lies in the old year.
        return of(day.getYear()).contains(day) || of(day.getYear() + 1).contains(day);
    }

    static Set<LocalDate> of(int year) {
        var days = new TreeSet<LocalDate>();
        addFixed(days, LocalDate.of(year, Month.JANUARY, 1));
        days.add(nth(3, DayOfWeek.MONDAY, year, Month.JANUARY));
        days.add(nth(3, DayOfWeek.MONDAY, year, Month.FEBRUARY));
        days.add(LocalDate.of(year, Month.MAY, 1).with(TemporalAdjusters.lastInMonth(DayOfWeek.MONDAY)));
        addFixed(days, LocalDate.of(year, Month.JUNE, 19));
        addFixed(days, LocalDate.of(year, Month.JULY, 4));
        days.add(nth(1, DayOfWeek.MONDAY, year, Month.SEPTEMBER));
        days.add(nth(2, DayOfWeek.MONDAY, year, Month.OCTOBER));
        addFixed(days, LocalDate.of(year, Month.NOVEMBER, 11));
        days.add(nth(4, DayOfWeek.THURSDAY, year, Month.NOVEMBER));
        addFixed(days, LocalDate.of(year, Month.DECEMBER, 25));
        return days;
    }

    private static LocalDate nth(int which, DayOfWeek weekday, int year, Month month) {
        return LocalDate.of(year, month, 1).with(TemporalAdjusters.dayOfWeekInMonth(which, weekday));
    }

    private static void addFixed(Set<LocalDate> days, LocalDate day) {
        days.add(day);
        if (day.getDayOfWeek() == DayOfWeek.SATURDAY) {
            days.add(day.minusDays(1));
        } else if (day.getDayOfWeek() == DayOfWeek.SUNDAY) {
            days.add(day.plusDays(1));
        }
    }
}
