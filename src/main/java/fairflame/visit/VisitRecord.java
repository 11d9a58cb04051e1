package fairflame.visit;

import fairflame.Refusal;
import fairflame.diagnosis.CaseFile;
import fairflame.quote.Party;
import fairflame.wording.Language;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One visit as it was taken down at the heater.
 *
 * @param id unique in the shop, such as {@code V-2026-0001}
 * @param on day of the visit
 * @param technician who took the readings
 * @param customer may still be missing while readings are taken; a quote needs it
 * @param language that the customer reads: of the quote and of everything that follows from it
 * @param site where the heater stands, when it is not the customer's own address
 * @param jurisdiction id of the place's profile
 * @param file complaint, plate, gates, readings, leads and releases
 * @param layout JSON text of the gas line's layout, when it was drawn
 * @param repair what the scope depends on besides finding and readings
 * @param decision what the customer told about the pool and its costs
 * @param terms what the price depends on besides the repair
 * @param json the text it was read from, kept as evidence
 */
public record VisitRecord(
        String id,
        LocalDate on,
        String technician,
        Optional<Party> customer,
        Optional<Party> site,
        Language language,
        String jurisdiction,
        CaseFile file,
        Optional<String> layout,
        RepairTerms repair,
        DecisionTerms decision,
        PriceTerms terms,
        String json) {
    /** The customer; refused when the visit has none yet. */
    public Party customerOnPaper() {
        return customer.orElseThrow(
                () -> Refusal.missing("customer of visit " + id, "name and address, before a quote is made"));
    }

    /** Where the heater stands: the site, or the customer's own address. */
    public Party siteOnPaper() {
        return site.orElseGet(this::customerOnPaper);
    }
}
