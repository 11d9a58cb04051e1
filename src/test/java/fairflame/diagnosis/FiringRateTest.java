package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiringRateTest {
    private static FiringRate of(Visit visit) {
        return FiringRate.of(Visit.KNOWLEDGE, visit.file());
    }

    // Meter clocking pages: 1/2 ft3 in 29 s is 62 cfh; 1/2 ft3 in 22 s is 81.82 cfh and 81,820 Btu/h at 1,000; the
    // others
    // are the same arithmetic: 3600 x ft3 x heating value / seconds.
    @ParameterizedTest(name = "{0} ft3 in {1} s at {2} Btu/ft3")
    @CsvSource(textBlock = """
        0.5, 29, 1000, 62.07,  62069
        0.5, 22, 1000, 81.82,  81818
        1,   36, 1050, 100,   105000
        2,   18, 1037, 400,   414800
        2,   20, 1030, 360,   370800
        2,   25, 1030, 288,   296640
        """)
    void clocksAMeter(String volume, String seconds, String value, double cfh, double btu) {
        var rate = of(Visit.of("weak-heat")
                .read(
                        "clock-volume " + volume + " ft3",
                        "clock-seconds " + seconds + " s",
                        "heating-value " + value + " btu/ft3"));

        assertThat(FiringRate.flow(Double.parseDouble(volume), Double.parseDouble(seconds))
                        .cubicFeetPerHour())
                .isEqualTo(cfh, within(0.005));
        assertThat(rate.clocked().orElseThrow().btuPerHour()).isEqualTo(btu, within(0.5));
        assertThat(rate.assumed()).isFalse();
    }

    @Test
    void comparesWithThePlate() {
        var rate = of(Visit.of("weak-heat")
                .plate("input 400000btu/h")
                .read("clock-volume 2 ft3", "clock-seconds 25 s", "heating-value 1030 btu/ft3"));

        assertThat(rate.share()).contains(new BigDecimal("74.2"));
        assertThat(rate.words().orElseThrow())
                .isEqualTo("Clocked input 296,640 Btu/h, 74 % of the plate's 400,000 Btu/h.");
        assertThat(rate.agree()).isEmpty();
    }

    @Test
    void assumesAHeatingValueAndSaysSo() {
        var natural = of(Visit.of("weak-heat").plate("input 400000btu/h").read("clocked-flow 380 cfh"));
        assertThat(natural.share()).contains(new BigDecimal("95.0"));
        assertThat(natural.words().orElseThrow()).contains("with an assumed heating value");

        var propane = of(
                Visit.of("weak-heat").plate("fuel propane", "input 400000btu/h").read("clocked-flow 152 cfh"));
        assertThat(propane.share()).contains(new BigDecimal("95.0"));
    }

    @Test
    void theVolumeOnTheDialGoesBeforeAFlowAndAFlowBeforeAnInput() {
        var visit = Visit.of("weak-heat").read("clocked-input 100000 btu/h");
        assertThat(of(visit).clocked().orElseThrow().btuPerHour()).isEqualTo(100_000);
        visit.read("clocked-flow 200 cfh");
        assertThat(of(visit).clocked().orElseThrow().btuPerHour()).isEqualTo(200_000);
        visit.read("clock-volume 1 ft3", "clock-seconds 12 s");
        assertThat(of(visit).clocked().orElseThrow().btuPerHour()).isEqualTo(300_000);
    }

    // 4 percent less for each 1,000 ft above sea level once the site is above 2,000 ft; 17 percent at 4,300 ft is the
    // usual
    // reading of the table (4 x 4.3 = 17.2).
    @ParameterizedTest(name = "{0} ft: {1}")
    @CsvSource(textBlock = """
        0,     1
        2000,  1
        2001,  0.91996
        3000,  0.88
        4300,  0.828
        26000, 0
        """)
    void altitudeReducesTheInputThatIsRight(double feet, double share) {
        assertThat(FiringRate.derating(feet)).isEqualTo(share, within(1e-9));
    }

    @Test
    void aHeaterInTheMountainsIsNotCalledUnderfired() {
        var visit =
                Visit.of("weak-heat").plate("input 400000btu/h").read("clocked-input 340000 btu/h", "altitude 4000 ft");

        assertThat(of(visit).share()).contains(new BigDecimal("101.2"));
    }

    // 328,000 Btu/h out at 65 gpm is a rise of 10.1 F; at 30 gpm 21.9 F: 500 Btu/h for each gpm and degree.
    @ParameterizedTest(name = "{0} gpm, {1} F")
    @CsvSource(textBlock = """
        65, 10.1
        30, 21.9
        """)
    void riseAndFlowGiveASecondEstimate(String flow, String rise) {
        var rate = of(Visit.of("weak-heat")
                .plate("input 400000btu/h", "efficiency 82")
                .read("water-flow " + flow + " gpm", "water-rise " + rise + " f"));

        assertThat(0.82 * rate.byWater().orElseThrow().btuPerHour()).isEqualTo(328_000, within(600.0));
    }

    @Test
    void theTwoEstimatesAreReconciled() {
        var visit = Visit.of("weak-heat")
                .plate("input 400000btu/h", "efficiency 82")
                .read("clocked-input 292000 btu/h", "water-in 78 f", "water-out 85 f", "water-flow 65 gpm");

        assertThat(of(visit).apart()).contains(new BigDecimal("-5.0"));
        assertThat(of(visit).agree()).isEqualTo(Optional.of(true));
        assertThat(of(visit).words().orElseThrow()).contains("; by water flow and rise 277,439 Btu/h.");

        var apart = Visit.of("weak-heat")
                .plate("input 400000btu/h", "efficiency 80")
                .read("clocked-input 300000 btu/h", "water-rise 14.4 f", "water-flow 40 gpm");
        assertThat(of(apart).apart()).contains(new BigDecimal("20.0"));
        assertThat(of(apart).agree()).isEqualTo(Optional.of(true));
        assertThat(of(apart.read("altitude 10 ft")).share()).contains(new BigDecimal("75.0"));
    }

    @Test
    void aNegativeRiseOrNoEfficiencyGivesNoSecondEstimate() {
        assertThat(of(Visit.of("weak-heat").plate("efficiency 80").read("water-rise -3 f", "water-flow 40 gpm"))
                        .byWater())
                .isEmpty();
        assertThat(of(Visit.of("weak-heat").read("water-rise 9 f", "water-flow 40 gpm"))
                        .byWater())
                .isEmpty();
        assertThat(of(Visit.of("weak-heat")).words()).isEmpty();
        assertThat(of(Visit.of("weak-heat")).share()).isEmpty();
    }
}
