package fairflame.catalog;

import fairflame.wording.Spoken;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.Money;

/**
 * The rules of a place, as the shop has written them down. A field that is not known takes the cautious side and its
 * name stands in {@link #unknown}, so that the paper says that it was assumed.
 *
 * @param id such as {@code demo-city}; {@code unknown} for the most cautious profile
 * @param codes adopted fuel gas and electrical codes with their editions, in words
 * @param permits need by permit class of a task
 * @param permitFee passed through as its own line
 * @param permitFeeTaxed whether that line is taxed
 * @param testTap who may open a gas test tap
 * @param gasLicence class name of the licensed gas fitter
 * @param gasLicencePattern regular expression of a licence number, empty when any text will do
 * @param gasTest pressure test of new piping
 * @param tax tax rule
 * @param deposit deposit rule
 * @param validityDays how long a quote may be signed
 * @param cancelDays business days in which the customer may cancel, 0 for none
 * @param cancelAlways whether the notice prints on every contract signed at the home
 * @param facts further fields as read, in words, such as burial depth, by field name
 * @param notes note texts of the place that replace the shop's, by note id
 * @param unknown names of the fields that are not known for this place
 * @param sources source of single fields, by field name
 * @param source source of all other fields, or "invented for the demo"
 */
public record Jurisdiction(
        String id,
        @Spoken String name,
        List<String> codes,
        Map<String, PermitNeed> permits,
        Money permitFee,
        boolean permitFeeTaxed,
        Set<Trade> testTap,
        @Spoken String gasLicence,
        String gasLicencePattern,
        GasTestRule gasTest,
        TaxRule tax,
        DepositRule deposit,
        int validityDays,
        int cancelDays,
        boolean cancelAlways,
        Map<String, String> facts,
        @Spoken Map<String, String> notes,
        Set<String> unknown,
        Map<String, String> sources,
        String source) {
    public Jurisdiction {
        codes = List.copyOf(codes);
        permits = Map.copyOf(permits);
        testTap = Set.copyOf(testTap);
        facts = Map.copyOf(facts);
        notes = Map.copyOf(notes);
        unknown = Set.copyOf(unknown);
        sources = Map.copyOf(sources);
    }

    /** A place all of whose fields have one source. */
    public Jurisdiction(
            String id,
            String name,
            List<String> codes,
            Map<String, PermitNeed> permits,
            Money permitFee,
            boolean permitFeeTaxed,
            Set<Trade> testTap,
            String gasLicence,
            String gasLicencePattern,
            GasTestRule gasTest,
            TaxRule tax,
            DepositRule deposit,
            int validityDays,
            int cancelDays,
            boolean cancelAlways,
            Map<String, String> facts,
            Map<String, String> notes,
            Set<String> unknown,
            String source) {
        this(
                id,
                name,
                codes,
                permits,
                permitFee,
                permitFeeTaxed,
                testTap,
                gasLicence,
                gasLicencePattern,
                gasTest,
                tax,
                deposit,
                validityDays,
                cancelDays,
                cancelAlways,
                facts,
                notes,
                unknown,
                Map.of(),
                source);
    }

    /**
     * The most cautious rules, for a place that the shop has no profile for: permit asked or needed, licensed gas
     * fitter, the strictest test with a witness, notice of the right to cancel, no deposit.
     *
     * @param charged the tax and the permit fee, which cannot be assumed
     */
    public static Jurisdiction cautious(String id, UnknownPlace charged) {
        return CautiousPlace.of(id, charged);
    }

    /** Whether the shop has no profile for this place and everything here is assumed. */
    public boolean assumed() {
        return unknown.containsAll(CautiousPlace.FIELDS);
    }

    /** The source of a field. */
    public String sourceOf(String field) {
        return sources.getOrDefault(field, source);
    }

    /** The same place under a tax rule that somebody states for this visit. */
    public Jurisdiction withTax(TaxRule stated) {
        return new Jurisdiction(
                id,
                name,
                codes,
                permits,
                permitFee,
                stated.taxableKinds().contains("permit-fee"),
                testTap,
                gasLicence,
                gasLicencePattern,
                gasTest,
                stated,
                deposit,
                validityDays,
                cancelDays,
                cancelAlways,
                facts,
                notes,
                unknown,
                sources,
                source);
    }

    /** The need for a permit; a class that the place does not list has to be asked about. */
    public PermitNeed permit(String permitClass) {
        return permitClass.equals("none") ? PermitNeed.NO : permits.getOrDefault(permitClass, PermitNeed.ASK);
    }
}
