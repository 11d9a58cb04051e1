package fairflame.invoice.permit;

import fairflame.Refusal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The permit for the work of a signed quote.
 *
 * @param quote number of the signed quote
 * @param place name of the jurisdiction
 * @param opened day it was found to be needed
 * @param steps in the order they happened
 */
public record Permit(String quote, int revision, String place, LocalDate opened, List<PermitStep> steps) {
    public Permit {
        steps = List.copyOf(steps);
    }

    /** A permit that is needed. */
    public static Permit needed(String quote, int revision, String place, LocalDate opened) {
        return new Permit(quote, revision, place, opened, List.of());
    }

    public PermitState state() {
        return steps.isEmpty()
                ? PermitState.NEEDED
                : steps.get(steps.size() - 1).to();
    }

    /** The number the office gave it; empty before. */
    public String number() {
        return last(PermitState.ISSUED).map(PermitStep::number).orElse("");
    }

    /** Last day of the permit, where known. */
    public Optional<LocalDate> expires() {
        return last(PermitState.ISSUED).flatMap(PermitStep::day);
    }

    /** Day of the inspection that is booked now. */
    public Optional<LocalDate> inspection() {
        return state() == PermitState.BOOKED ? last(PermitState.BOOKED).flatMap(PermitStep::day) : Optional.empty();
    }

    private Optional<PermitStep> last(PermitState state) {
        return steps.stream().filter(step -> step.to() == state).reduce((first, second) -> second);
    }

    /** The permit after one more step. Refused: a step that does not follow, an earlier day, an expired permit. */
    public Permit after(PermitStep step) {
        if (!state().next().contains(step.to())) {
            throw Refusal.notAllowed(
                    "permit of " + quote + ", now " + state().word(),
                    step.to().word(),
                    PermitState.words(state().next()));
        }
        var latest = steps.isEmpty() ? opened : steps.get(steps.size() - 1).on();
        if (step.on().isBefore(latest)) {
            throw Refusal.outOfRange("day of the step", step.on(), latest + " or later");
        }
        step.day()
                .filter(day -> step.to() == PermitState.BOOKED)
                .ifPresent(day -> refuseWrongInspection(step.on(), day));
        var longer = new ArrayList<>(steps);
        longer.add(step);
        return new Permit(quote, revision, place, opened, longer);
    }

    private void refuseWrongInspection(LocalDate on, LocalDate day) {
        if (day.isBefore(on)) {
            throw Refusal.outOfRange("day of the inspection", day, on + " or later");
        }
        expires().filter(day::isAfter).ifPresent(end -> {
            throw Refusal.outOfRange("day of the inspection", day, "not after " + end + ", the permit's last day");
        });
    }

    /** What a record of completion says of the permit; empty while neither number nor release is known. */
    public String forCompletion() {
        return switch (state()) {
            case NOT_NEEDED -> {
                var told = steps.get(steps.size() - 1);
                yield "not required: " + told.words() + ", " + told.on();
            }
            default -> number();
        };
    }
}
