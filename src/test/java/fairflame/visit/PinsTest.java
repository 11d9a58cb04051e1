package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PinsTest {
    private static final String INES = "Ines Calloway";
    private static final Library LIBRARY = Library.load(Sources.samples());

    @TempDir
    Path folder;

    private final Hours clock = new Hours();
    private Workplace workplace;

    /** A clock that goes on when it is told to. */
    private static final class Hours extends Clock {
        private Instant now = Instant.parse("2026-06-03T17:05:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @BeforeEach
    void open() {
        workplace = Workplace.open(folder, LIBRARY, clock, INES);
    }

    @AfterEach
    void close() {
        workplace.close();
    }

    private Pins pins(boolean demo) {
        return new Pins(workplace, demo);
    }

    @Test
    void theDemosDigitsOpenTheDemoShopAndNoOther() {
        assertThat(pins(true).opens(INES, "2468").opens()).isTrue();
        assertThat(pins(false).opens(INES, "2468").opens()).isFalse();
    }

    @Test
    void eachPersonHasDigitsOfTheirOwn() {
        pins(true).change(INES, "2468", "9753");
        assertThat(pins(true).has(INES)).isTrue();
        assertThat(pins(true).opens(INES, "9753").opens()).isTrue();
        assertThat(pins(true).opens(INES, "2468").opens()).isFalse();
        assertThat(pins(true).opens("Bram Ostrow", "2468").opens()).isTrue();
        assertThat(pins(true).opens("Bram Ostrow", "9753").opens()).isFalse();
    }

    @Test
    void theFirstDigitsOfAnOwnShopNeedNoOldOnesAndTheNextDo() {
        pins(false).change(INES, "", "9753");
        assertThatThrownBy(() -> pins(false).change(INES, "", "1357"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("old digits");
        pins(false).change(INES, "9753", "1357");
        assertThat(pins(false).opens(INES, "1357").opens()).isTrue();
    }

    @Test
    void fourToTwelveDigitsThatACustomerWouldNotTryFirstAreTaken() {
        for (var bad : new String[] {"", "123", "12a4", "1234567890123", "2468", "7777"}) {
            assertThatThrownBy(() -> pins(false).change(INES, "", bad))
                    .as(bad)
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("new digits");
        }
        assertThat(pins(false).has(INES)).isFalse();
        assertThatCode(() -> pins(false).change(INES, "", "123456789012")).doesNotThrowAnyException();
    }

    @Test
    void wrongTriesAreSlowedDownAndTheWaitOutlivesTheWindow() {
        pins(false).replace(INES, "9753");
        assertThat(pins(false).opens(INES, "1111").pause()).isZero();
        assertThat(pins(false).opens(INES, "1112").pause()).isZero();
        assertThat(pins(false).opens(INES, "1113").pause()).isEqualTo(Duration.ofSeconds(5));
        workplace.close();
        open();
        assertThat(pins(false).opens(INES, "9753").opens())
                .as("the right digits within the wait")
                .isFalse();
        clock.now = clock.now.plusSeconds(6);
        assertThat(pins(false).opens(INES, "1114").pause()).isEqualTo(Duration.ofSeconds(10));
        clock.now = clock.now.plusSeconds(11);
        assertThat(pins(false).opens(INES, "9753").opens()).isTrue();
        assertThat(pins(false).opens(INES, "1111").pause())
                .as("counted from the start again")
                .isZero();
    }

    @Test
    void theWaitIsNeverLongerThanFiveMinutes() {
        pins(false).replace(INES, "9753");
        var longest = Duration.ZERO;
        for (int i = 0; i < 12; i++) {
            longest = pins(false).opens(INES, "1111").pause();
            clock.now = clock.now.plusSeconds(301);
        }
        assertThat(longest).isEqualTo(Duration.ofMinutes(5));
    }

    @Test
    void theOfficeSetsForgottenOnesAndItStandsInTheJournal() {
        pins(false).change(INES, "", "9753");
        pins(false).replace(INES, "8642");
        assertThat(pins(false).opens(INES, "8642").opens()).isTrue();
        assertThatThrownBy(() -> pins(false).replace("  ", "8642")).hasMessageContaining("name of the person");
        var entries = workplace.store().reading(records -> records.audit().about("pin." + INES));
        assertThat(entries)
                .hasSize(2)
                .allSatisfy(entry -> assertThat(entry.who()).isEqualTo(INES));
    }

    @Test
    void neitherTheDigitsNorTheSameHashAreKept() {
        pins(false).replace(INES, "9753");
        pins(false).replace("Bram Ostrow", "9753");
        var kept = workplace.store().reading(records -> records.settings().all());
        assertThat(kept.get("pin." + INES)).doesNotContain("9753").isNotEqualTo(kept.get("pin.Bram Ostrow"));
    }
}
