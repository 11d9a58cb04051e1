package fairflame.visit;

import fairflame.diagnosis.CaseFile;
import fairflame.gas.GasTables;
import fairflame.gas.Layout;

/** Brings the computed gas line into a case: the measured dip held against the predicted one. */
final class GasEvidence {
    private GasEvidence() {}

    static CaseFile added(CaseFile file, Layout layout, GasTables tables) {
        return file;
    }
}
