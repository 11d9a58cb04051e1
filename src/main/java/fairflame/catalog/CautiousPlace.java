package fairflame.catalog;

import fairflame.money.Percent;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The cautious side of every field of a place: taken where the shop does not know the rule. */
final class CautiousPlace {
    /** Classes of work that a permit table can list. */
    static final List<String> PERMIT_CLASSES =
            List.of("minor-part", "gas-valve", "gas-piping", "heater", "vent", "electrical");

    static final String ASSUMED = "not checked for this place, the cautious side is assumed";

    /** Work on gas, vent or line voltage needs a permit; for a small part the office is asked. */
    static final Map<String, PermitNeed> PERMITS = permits();

    static final Set<Trade> TEST_TAP = Set.of(Trade.GAS_FITTER);
    static final String GAS_LICENCE = "licensed gas fitter";

    /**
     * The strictest of the rules read: 10 psi (a second model code, S-CODECHK), 30 minutes (a Texas town, S-PTX), top
     * of the gauge at most five times the test pressure (IFGC 406.4, S-PTEST2); a witness is assumed.
     */
    static final GasTestRule GAS_TEST =
            new GasTestRule(BigDecimal.TEN, 30, BigDecimal.valueOf(5), true, "S-CODECHK; S-PTX; S-PTEST2");

    /** California's rule for a service and repair contract: nothing before completion (S-CASR). */
    static final DepositRule DEPOSIT =
            new DepositRule(Percent.ZERO, Optional.of(Percent.ZERO), Optional.empty(), "S-CASR");

    static final int VALIDITY_DAYS = 30;

    /** The longest right to cancel that was read: five business days in Alaska (S-AKHS). */
    static final int CANCEL_DAYS = 5;

    /** Names of the fields that can be unknown. */
    static final List<String> FIELDS =
            List.of("codes", "permits", "testTap", "gasLicence", "gasTest", "deposit", "validityDays", "cancel");

    private CautiousPlace() {}

    private static Map<String, PermitNeed> permits() {
        var permits = new HashMap<String, PermitNeed>();
        PERMIT_CLASSES.forEach(permitClass -> permits.put(permitClass, PermitNeed.YES));
        permits.put("minor-part", PermitNeed.ASK);
        return Map.copyOf(permits);
    }

    /** A place of which only the money is known. */
    static Jurisdiction of(String id, UnknownPlace charged) {
        var unknown = new TreeSet<>(FIELDS);
        unknown.add("tax");
        unknown.add("permitFee");
        return new Jurisdiction(
                id,
                id + " (not in the shop's list of places)",
                List.of("codes not known for this place"),
                PERMITS,
                charged.permitFee(),
                charged.tax().taxableKinds().contains("permit-fee"),
                TEST_TAP,
                GAS_LICENCE,
                "",
                GAS_TEST,
                charged.tax(),
                DEPOSIT,
                VALIDITY_DAYS,
                CANCEL_DAYS,
                true,
                Map.of(),
                Map.of(),
                unknown,
                Map.of("tax", charged.tax().source(), "permitFee", charged.source()),
                ASSUMED);
    }
}
