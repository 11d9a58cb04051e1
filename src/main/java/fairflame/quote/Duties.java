package fairflame.quote;

import fairflame.catalog.PermitNeed;

/**
 * What the law of the place asks of a choice before its work counts as complete.
 *
 * @param regulatedGas whether gas piping or a gas valve is worked on: a licensed gas fitter, named with the licence
 * @param permit the strictest need for a permit of all its tasks
 * @param pressureTest whether new gas piping has to be pressure-tested
 */
public record Duties(boolean regulatedGas, PermitNeed permit, boolean pressureTest) {
    /** The letter of the pressure test among the tests of a scope. */
    public static final String PRESSURE_TEST = "P";

    /** Nothing beyond the trade's own tests. */
    public static final Duties NONE = new Duties(false, PermitNeed.NO, false);

    /** Both together: the stricter of each. */
    public Duties and(Duties other) {
        return new Duties(
                regulatedGas || other.regulatedGas,
                permit.compareTo(other.permit) >= 0 ? permit : other.permit,
                pressureTest || other.pressureTest);
    }
}
