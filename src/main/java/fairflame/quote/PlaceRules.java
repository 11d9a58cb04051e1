package fairflame.quote;

import fairflame.catalog.DepositRule;
import fairflame.catalog.GasTestRule;
import fairflame.catalog.TaxRule;
import fairflame.money.Percent;

/**
 * The rules of a place that go on ruling after the quote is signed.
 *
 * @param jurisdiction id of the profile
 * @param gasLicence class name of the licensed gas fitter
 * @param gasLicencePattern regular expression of a licence number, empty when any text will do
 * @param cancelDays business days in which the customer may cancel, 0 for none
 * @param cancelAlways whether the right covers every contract signed at the home, the repair asked for included
 * @param overrun how far the bill may go above the quote without a signed change order
 */
public record PlaceRules(
        String jurisdiction,
        TaxRule tax,
        DepositRule deposit,
        String gasLicence,
        String gasLicencePattern,
        GasTestRule gasTest,
        int cancelDays,
        boolean cancelAlways,
        Percent overrun) {}
