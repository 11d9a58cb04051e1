package fairflame.diagnosis;

import fairflame.gas.Fuel;
import fairflame.gas.Reconciliation;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Pressure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A visit written down line by line, the way a technician tells it. Every gate is answered no unless said. */
final class Visit {
    static final Knowledge KNOWLEDGE = Knowledge.shipped();

    private final String complaint;
    private final Map<String, String> plate = new LinkedHashMap<>();
    private final Map<String, GateAnswer> gates = new LinkedHashMap<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<BypassLead> leads = new ArrayList<>();
    private final List<Release> releases = new ArrayList<>();
    private Optional<Reconciliation> pipe = Optional.empty();

    private Visit(String complaint) {
        this.complaint = complaint;
        KNOWLEDGE.gates().stream().filter(Gate::asked).forEach(gate -> gates.put(gate.id(), GateAnswer.NO));
    }

    static Visit of(String complaint) {
        return new Visit(complaint);
    }

    /** Such as {@code plate("input 400000btu/h", "minimum 4inwc", "fuel propane", "flame 1ua")}. */
    Visit plate(String... lines) {
        for (var line : lines) {
            var parts = line.split(" ", 2);
            plate.put(parts[0], parts[1]);
        }
        return this;
    }

    /** Lines such as {@code gas-firing 8.9 inwc [u-tube, furnace-on]}: check, value, instrument and conditions. */
    Visit read(String... lines) {
        Arrays.stream(lines).map(Visit::reading).forEach(readings::add);
        return this;
    }

    Visit with(Reading reading) {
        readings.add(reading);
        return this;
    }

    static Reading reading(String line) {
        int bracket = line.indexOf('[');
        var head = (bracket < 0 ? line : line.substring(0, bracket)).strip();
        var tags = bracket < 0
                ? List.<String>of()
                : Arrays.stream(line.substring(bracket + 1, line.indexOf(']')).split(","))
                        .map(String::strip)
                        .toList();
        var instrument = tags.stream()
                .filter(tag -> KNOWLEDGE.instruments().stream()
                        .anyMatch(each -> each.id().equals(tag)))
                .findFirst()
                .orElse("");
        var conditions = new ArrayList<>(tags);
        conditions.remove(instrument);
        boolean told = conditions.remove("told");
        var parts = head.split(" ", 2);
        var reading = KNOWLEDGE.reading(parts[0], parts[1], instrument, Set.copyOf(conditions));
        return told
                ? new Reading(reading.check(), reading.value(), instrument, reading.conditions(), false, "")
                : reading;
    }

    Visit gate(String id, GateAnswer answer) {
        gates.put(id, answer);
        return this;
    }

    Visit notAsked(String... ids) {
        Arrays.asList(ids).forEach(gates::remove);
        return this;
    }

    Visit lead(String device, boolean removed) {
        leads.add(new BypassLead(device, "A. Technician", removed));
        return this;
    }

    Visit released(String gate, String cause) {
        releases.add(new Release(gate, "B. Fitter", "GF-00001", cause));
        return this;
    }

    Visit pipe(Reconciliation.Verdict verdict, double measured, double predicted) {
        pipe = Optional.of(new Reconciliation(
                verdict,
                Pressure.ofInchesWater(measured),
                Pressure.ofInchesWater(predicted),
                Pressure.ofInchesWater(0.8 * predicted),
                Pressure.ofInchesWater(1.2 * predicted),
                List.of(),
                "The pipe is predicted to lose " + predicted + " in w.c.; measured " + measured + " in w.c."));
        return this;
    }

    CaseFile file() {
        return file(readings);
    }

    CaseFile file(List<Reading> inThisOrder) {
        return new CaseFile(complaint, ratingPlate(), gates, inThisOrder, leads, releases, pipe);
    }

    List<Reading> readings() {
        return List.copyOf(readings);
    }

    Finding finding() {
        return Diagnosis.of(KNOWLEDGE, file());
    }

    private RatingPlate ratingPlate() {
        return new RatingPlate(
                "gas pool heater",
                Fuel.parse(plate.getOrDefault("fuel", "natural")),
                said("input").map(HeatRate::parse),
                said("minimum").map(Pressure::parse),
                said("maximum").map(Pressure::parse),
                said("manifold").map(Pressure::parse),
                said("flame").map(BigDecimal::new),
                said("rise").map(BigDecimal::new),
                said("efficiency").map(BigDecimal::new),
                said("age").map(Integer::valueOf));
    }

    private Optional<String> said(String name) {
        return Optional.ofNullable(plate.get(name));
    }
}
