package fairflame.diagnosis;

/** The answer to a danger gate. A gate that was not asked has no answer, and that is not a "no". */
public enum GateAnswer {
    YES,
    NO
}
