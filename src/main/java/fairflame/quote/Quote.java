package fairflame.quote;

import java.time.LocalDate;
import java.util.List;
import org.joda.money.CurrencyUnit;

/**
 * A quote with everything it was made from, so that opening it again gives the same paper.
 *
 * @param number unique in the shop, such as {@code Q-2026-0001}
 * @param revision from 1
 * @param visit id of the visit
 * @param repair false for a diagnosis-only quote
 * @param validUntil last day on which it may be signed
 * @param heater what the plate says, in words
 * @param place name of the jurisdiction
 * @param rules the rules of the place that the quote was made under, for change orders, invoices and credits
 * @param assumed sentences for everything that was assumed because the place or a value is unknown
 * @param notes notes of the whole quote, the boxed ones first
 * @param terms printed terms
 * @param madeFrom names and versions of catalog, knowledge, templates and profile
 */
public record Quote(
        String number,
        int revision,
        String visit,
        boolean repair,
        LocalDate made,
        LocalDate validUntil,
        CurrencyUnit currency,
        Party seller,
        String sellerLicence,
        Party customer,
        Party site,
        String heater,
        String place,
        PlaceRules rules,
        FindingSheet finding,
        List<Choice> choices,
        List<Note> notes,
        List<String> terms,
        List<String> assumed,
        List<String> madeFrom) {
    public Quote {
        choices = List.copyOf(choices);
        notes = List.copyOf(notes);
        terms = List.copyOf(terms);
        assumed = List.copyOf(assumed);
        madeFrom = List.copyOf(madeFrom);
    }
}
