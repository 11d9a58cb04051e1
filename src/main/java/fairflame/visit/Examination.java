package fairflame.visit;

import fairflame.Refusal;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Diagnosis;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.ReadingVerdict;
import fairflame.gas.Layout;
import fairflame.gas.LayoutReader;
import java.util.List;
import java.util.Optional;

/**
 * What a visit comes to: every reading judged, the gas line computed, and the finding.
 *
 * @param file the case with the gas line's reconciliation in it
 * @param layout the gas line, when it was drawn
 * @param verdicts what each reading is worth on its own
 */
public record Examination(
        VisitRecord visit, CaseFile file, Optional<Layout> layout, List<ReadingVerdict> verdicts, Finding finding) {
    public Examination {
        verdicts = List.copyOf(verdicts);
    }

    /** Judges a visit. Pure: the same visit and library give the same examination. */
    public static Examination of(VisitRecord visit, Library library) {
        var layout = layout(visit, library);
        var file = layout.map(line -> GasEvidence.added(visit.file(), line, library.tables()))
                .orElse(visit.file());
        return new Examination(
                visit,
                file,
                layout,
                Diagnosis.verdicts(library.knowledge(), file),
                Diagnosis.of(library.knowledge(), file));
    }

    /** The same visit judged by the same library in another language. */
    Examination in(Library told) {
        return of(visit, told);
    }

    /** The drawn gas line of a visit; refused with its field when it cannot be. */
    static Optional<Layout> layout(VisitRecord visit, Library library) {
        try {
            return visit.layout().map(json -> new LayoutReader(library.tables()).read(json));
        } catch (Refusal refusal) {
            throw refusal.at("field layout");
        }
    }
}
