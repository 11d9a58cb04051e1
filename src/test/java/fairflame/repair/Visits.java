package fairflame.repair;

import fairflame.diagnosis.BypassLead;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.RatingPlate;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Release;
import fairflame.diagnosis.Value;
import fairflame.gas.Fuel;
import fairflame.gas.Reconciliation;
import fairflame.quantity.Dimension;
import fairflame.quantity.Measure;
import fairflame.quantity.Pressure;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Findings and case files for tests, written by hand: nothing here is reasoned out. */
final class Visits {
    private Visits() {}

    static Finding.Settled settled(Candidate... causes) {
        return new Finding.Settled(Arrays.asList(causes), Arrays.asList(causes), List.of());
    }

    static Candidate cause(String id, String... devices) {
        return new Candidate(
                id,
                "cause " + id,
                "plain words",
                Candidate.Standing.SETTLED,
                List.of(),
                List.of(),
                List.of(),
                "the deciding check",
                List.of(devices));
    }

    static CaseFile file(Reading... readings) {
        return new CaseFile(
                "drops-out",
                plate(Optional.empty()),
                Map.of(),
                Arrays.asList(readings),
                List.of(),
                List.of(),
                Optional.empty());
    }

    static CaseFile withHeaterYears(CaseFile file, int years) {
        return new CaseFile(
                file.complaint(),
                plate(Optional.of(years)),
                file.gates(),
                file.readings(),
                file.leads(),
                file.releases(),
                file.pipe());
    }

    static CaseFile withPipe(CaseFile file, Reconciliation.Verdict verdict) {
        var zero = Pressure.ofInchesWater(0);
        var pipe = new Reconciliation(verdict, zero, zero, zero, zero, List.of(), "computed against measured");
        return new CaseFile(
                file.complaint(),
                file.plate(),
                file.gates(),
                file.readings(),
                file.leads(),
                file.releases(),
                Optional.of(pipe));
    }

    static CaseFile released(CaseFile file) {
        return new CaseFile(
                file.complaint(),
                file.plate(),
                file.gates(),
                file.readings(),
                file.leads(),
                List.of(new Release("G3", "M. Ferrante", "GF-20417", "flue passages blocked")),
                file.pipe());
    }

    static CaseFile bypassed(CaseFile file) {
        return new CaseFile(
                file.complaint(),
                file.plate(),
                file.gates(),
                file.readings(),
                List.of(new BypassLead("high-limit-switch", "R. Okonma", true)),
                file.releases(),
                file.pipe());
    }

    static Reading ohms(String check, String value, String... conditions) {
        return new Reading(
                check,
                new Value.Measured(Measure.parse(Dimension.RESISTANCE, value)),
                "ohmmeter",
                Set.of(conditions),
                true,
                "");
    }

    static Reading open(String check, String... conditions) {
        return new Reading(check, new Value.OpenLine(), "ohmmeter", Set.of(conditions), true, "");
    }

    static Reading years(String check, String value) {
        return new Reading(check, new Value.Measured(Measure.parse(Dimension.TIME, value)), "", Set.of(), true, "");
    }

    static Reading word(String check, String word) {
        return new Reading(check, new Value.Word(word), "", Set.of(), true, "");
    }

    private static RatingPlate plate(Optional<Integer> years) {
        return new RatingPlate(
                "gas pool heater, fan assisted",
                Fuel.NATURAL,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                years);
    }
}
