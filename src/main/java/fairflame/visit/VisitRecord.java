package fairflame.visit;

import fairflame.diagnosis.CaseFile;
import fairflame.quote.Party;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One visit as it was taken down at the heater.
 *
 * @param id unique in the shop, such as {@code V-2026-0001}
 * @param on day of the visit
 * @param technician who took the readings
 * @param site where the heater stands
 * @param jurisdiction id of the place's profile
 * @param file complaint, plate, gates, readings, leads and releases
 * @param layout JSON text of the gas line's layout, when it was drawn
 * @param terms what the price depends on besides the repair
 * @param json the text it was read from, kept as evidence
 */
public record VisitRecord(
        String id,
        LocalDate on,
        String technician,
        Party customer,
        Party site,
        String jurisdiction,
        CaseFile file,
        Optional<String> layout,
        PriceTerms terms,
        String json) {}
