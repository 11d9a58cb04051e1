package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BypassTallyTest {
    private static final BypassTally EMPTY = new BypassTally(List.of(), Set.of());

    @Test
    void aLeadIsSignedOutAndIn() {
        var out = EMPTY.place("high-limit-switch", "A. Technician");
        assertThat(out.out()).extracting(BypassLead::device).containsExactly("high-limit-switch");
        assertThat(out.mayClose()).isFalse();
        assertThat(out.problems().get(0)).contains("A. Technician", "high-limit-switch", "cannot close");

        var back = out.remove("high-limit-switch");
        assertThat(back.mayClose()).isTrue();
        assertThat(back.leads()).containsExactly(new BypassLead("high-limit-switch", "A. Technician", true));
        assertThat(EMPTY.leads()).isEmpty();
    }

    @Test
    void onlyTheNamedLeadComesBack() {
        var two = EMPTY.place("high-limit-switch", "A").place("outlet-switch", "A");

        assertThat(two.remove("outlet-switch").out())
                .extracting(BypassLead::device)
                .containsExactly("high-limit-switch");
    }

    @ParameterizedTest
    @ValueSource(strings = {"thermal-fuse", "rollout-fuse", "air-switch"})
    void someDevicesAreNeverBridged(String device) {
        assertThatThrownBy(() -> EMPTY.place(device, "A"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining(device);
        assertThatThrownBy(() -> Visit.of("drops-out").lead(device, true).finding())
                .isInstanceOf(Refusal.NotAllowed.class);
    }

    @Test
    void refusesASecondLeadANamelessOneAndALeadThatIsNotOut() {
        var out = EMPTY.place("outlet-switch", "A");

        assertThatThrownBy(() -> out.place("outlet-switch", "B")).hasMessageContaining("one lead on a device");
        assertThatThrownBy(() -> EMPTY.place("outlet-switch", " ")).isInstanceOf(Refusal.Missing.class);
        assertThatThrownBy(() -> EMPTY.remove("outlet-switch")).hasMessageContaining("no lead is out");
        assertThatThrownBy(() -> out.remove("high-limit-switch")).hasMessageContaining("allowed: outlet-switch");
        assertThat(out.remove("outlet-switch").place("outlet-switch", "B").out())
                .hasSize(1);
    }

    @Test
    void aBypassWithoutALeadInTheTallyKeepsTheVisitOpen() {
        var tried = BypassTally.of(
                Visit.of("drops-out").read("bypass-pair stays-lit").file());
        assertThat(tried.problems()).hasSize(1);
        assertThat(tried.problems().get(0)).contains("no test lead is in the tally");

        assertThat(BypassTally.of(Visit.of("drops-out")
                                .read("bypass-pair not measured")
                                .file())
                        .mayClose())
                .isTrue();
        assertThat(BypassTally.of(Visit.of("drops-out")
                                .read("bypass-pair stays-lit")
                                .lead("outlet-switch", true)
                                .file())
                        .mayClose())
                .isTrue();
    }

    @Test
    void theFindingShowsWhatKeepsTheVisitOpen() {
        var finding = Visit.of("drops-out").lead("outlet-switch", false).finding();

        assertThat(finding.conflicts()).anyMatch(words -> words.contains("still bridges outlet-switch"));
        assertThat(Findings.unsettled(finding).next().get(0).title()).contains("Take the test lead off outlet-switch");
    }

    @Test
    void aBridgeThatStayedTooLongProvesNothing() {
        var visit = Visit.of("drops-out")
                .plate("minimum 4inwc")
                .read("gas-static 10 inwc", "gas-firing 9 inwc", "bypass-pair stays-lit", "bypass-seconds 61 s")
                .lead("high-limit-switch", true);

        assertThat(visit.finding()).isInstanceOf(Finding.Unsettled.class);
    }

    @ParameterizedTest(name = "not by bypass: {0}")
    @ValueSource(
            strings = {
                "header-at-trip 126 f",
                "seconds-to-drop-out 301 s",
                "leak-outlet over 20 megohm [warm]",
                "first-to-fall flame",
                "gas-firing 6.5 inwc"
            })
    void aHeaterThatRunsBridgedDoesNotAlwaysProveTheSwitchBad(String reading) {
        var visit = Visit.of("drops-out")
                .plate("minimum 4inwc")
                .read("gas-static 10 inwc", "gas-firing 9 inwc", "bypass-pair stays-lit", "bypass-seconds 20 s")
                .lead("high-limit-switch", true);
        assertThat(visit.finding()).isInstanceOf(Finding.Settled.class);

        assertThat(visit.read(reading).finding()).isInstanceOf(Finding.Unsettled.class);
    }

    @Test
    void aMinuteTripNeedsTheTemperatureOfTheWater() {
        var visit = Visit.of("trips-after-minutes")
                .plate("minimum 4inwc")
                .read("gas-static 10 inwc", "gas-firing 9 inwc", "bypass-pair stays-lit", "bypass-seconds 20 s")
                .lead("high-limit-switch", true);
        assertThat(visit.finding()).isInstanceOf(Finding.Unsettled.class);

        assertThat(Findings.settled(visit.read("header-at-trip 121 f").finding())
                        .causes()
                        .get(0)
                        .cause())
                .isEqualTo("LD01");
    }
}
