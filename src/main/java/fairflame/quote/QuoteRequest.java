package fairflame.quote;

import fairflame.catalog.Jurisdiction;
import fairflame.diagnosis.Release;
import fairflame.wording.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a quote is made from besides the finding, the repair and the shop.
 *
 * @param heater what the plate says, in words
 * @param fitter the licensed gas fitter who is to do gas work, once known
 * @param gauges pictures of measured against allowed for the finding
 * @param releases licensed releases of danger gates
 */
public record QuoteRequest(
        Head head,
        People people,
        String heater,
        Jurisdiction place,
        PricingInputs inputs,
        Paper paper,
        Optional<LicensedPerson> fitter,
        List<Gauge> gauges,
        List<Release> releases) {
    public QuoteRequest {
        gauges = List.copyOf(gauges);
        releases = List.copyOf(releases);
    }

    /**
     * Which quote it is.
     *
     * @param number unique in the shop, such as {@code Q-2026-0001}
     * @param revision from 1
     * @param visit id of the visit
     * @param made day on which it is made
     */
    public record Head(String number, int revision, String visit, LocalDate made) {}

    /** Who is on it. */
    public record People(Party seller, String sellerLicence, Party customer, Party site) {}

    /**
     * What is printed and which state of things it was made from.
     *
     * @param madeFrom names and versions of catalog, knowledge, templates and profile
     * @param pricesUntil last day on which the price list holds; empty when it has none
     * @param wording the language of the paper; notes, terms, finding and plan are handed in with its words already
     */
    public record Paper(
            NoteBook notes,
            List<String> terms,
            List<String> madeFrom,
            Optional<LocalDate> pricesUntil,
            Wording wording) {
        /** A paper in English. */
        public Paper(NoteBook notes, List<String> terms, List<String> madeFrom, Optional<LocalDate> pricesUntil) {
            this(notes, terms, madeFrom, pricesUntil, Wording.ENGLISH);
        }

        public Paper {
            terms = List.copyOf(terms);
            madeFrom = List.copyOf(madeFrom);
        }
    }
}
