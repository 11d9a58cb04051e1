package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

/** Findings taken as the kind that a test expects. */
final class Findings {
    private Findings() {}

    static Finding.Settled settled(Finding finding) {
        assertThat(finding).isInstanceOf(Finding.Settled.class);
        return (Finding.Settled) finding;
    }

    static Finding.Unsettled unsettled(Finding finding) {
        assertThat(finding).isInstanceOf(Finding.Unsettled.class);
        return (Finding.Unsettled) finding;
    }

    static Finding.StopWork stopWork(Finding finding) {
        assertThat(finding).isInstanceOf(Finding.StopWork.class);
        return (Finding.StopWork) finding;
    }

    static Candidate candidate(Finding finding, String cause) {
        return finding.candidates().stream()
                .filter(candidate -> candidate.cause().equals(cause))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no candidate " + cause));
    }
}
