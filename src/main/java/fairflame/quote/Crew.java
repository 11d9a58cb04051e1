package fairflame.quote;

import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Task;
import fairflame.catalog.Trade;
import java.util.Set;
import java.util.stream.Collectors;

/** Who has to do a task in a place. */
final class Crew {
    private Crew() {}

    /** The trades of a task, with "technician where the place allows it" decided by the place. */
    static Set<Trade> of(Task task, Jurisdiction place) {
        return task.in(place).trades();
    }

    /** As printed on a labour line. */
    static String words(Set<Trade> crew, Jurisdiction place) {
        return crew.stream().sorted().map(trade -> word(trade, place)).collect(Collectors.joining(" and "));
    }

    private static String word(Trade trade, Jurisdiction place) {
        return switch (trade) {
            case TECHNICIAN, TEST_TAP -> "service technician";
            case GAS_FITTER -> place.gasLicence();
            case ELECTRICIAN -> "licensed electrician";
            case UTILITY -> "office, for the gas utility";
        };
    }
}
