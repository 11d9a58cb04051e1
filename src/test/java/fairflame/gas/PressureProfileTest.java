package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.HeatingValue;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PressureProfileTest {
    /** The low-pressure equation of IFGC 402.4 solved for the drop, written out apart from the program's own. */
    private static double drop(double bore, double feet, double cfh) {
        return 0.6094 * feet * Math.pow(Math.pow(cfh, 0.381) / (19.17 * bore), 1 / 0.206);
    }

    private static Sites house() {
        return Sites.site()
                .pipe("trunk", "m", "tee", "1", 40)
                .pipe("pool", "tee", "pad", "3/4", 30)
                .pipe("indoor", "tee", "closet", "1/2", 20)
                .appliance("heater", "pad", 200_000, "4inwc")
                .appliance("furnace", "closet", 60_000, "4.5inwc");
    }

    @Test
    void dropsAddUpAlongEachRunWithAllFiring() {
        var profile = PressureProfile.of(Sites.TABLES, house().build(), Firing.all(house().build()));
        var trunk = drop(1.049, 40, 260);
        assertThat(profile.segment("trunk").flow().cubicFeetPerHour()).isEqualTo(260);
        assertThat(profile.segment("trunk").drop().inchesWater()).isCloseTo(trunk, within(1e-9));
        assertThat(profile.appliance("heater").pressure().inchesWater())
                .isCloseTo(7 - trunk - drop(0.824, 30, 200), within(1e-9));
        assertThat(profile.appliance("furnace").pressure().inchesWater())
                .isCloseTo(7 - trunk - drop(0.622, 20, 60), within(1e-9));
        assertThat(profile.enough()).isTrue();
        assertEquals("meter", profile.appliance("heater").zone());
    }

    @Test
    void theHeaterAloneLosesLess() {
        var layout = house().build();
        var alone = PressureProfile.of(Sites.TABLES, layout, Firing.alone(layout, "heater"));
        assertThat(alone.appliance("heater").drop().inchesWater())
                .isCloseTo(drop(1.049, 40, 200) + drop(0.824, 30, 200), within(1e-9));
        assertEquals(0, alone.segment("indoor").drop().inchesWater());
        assertThat(alone.appliance("furnace").enough()).isTrue();
        assertEquals("heater alone", alone.firing().words());
    }

    @Test
    void aMeasuredFlowReplacesThePlate() {
        var layout = house().build();
        var firing = Firing.alone(layout, "heater").with("heater", GasFlow.ofCubicFeetPerHour(150));
        var profile = PressureProfile.of(Sites.TABLES, layout, firing);
        assertEquals(150, profile.segment("pool").flow().cubicFeetPerHour());
    }

    @Test
    void fittingsCountInTheProfile() {
        var fitted = Sites.site()
                .pipe("s", "m", "pad", Sites.steel("3/4"), 30, Fittings.counted(Map.of("ell-90", 2)))
                .appliance("heater", "pad", 200_000, "4inwc")
                .build();
        var profile = PressureProfile.of(Sites.TABLES, fitted, Firing.all(fitted));
        // 2018 IRC Table A.2.2: 2.06 ft for a 3/4 in ell
        assertThat(profile.segment("s").equivalent().feet()).isCloseTo(34.12, within(1e-9));
        assertThat(profile.segment("s").drop().inchesWater()).isCloseTo(drop(0.824, 34.12, 200), within(1e-9));
    }

    @Test
    void pressureUnderTheMinimumIsSeen() {
        var layout = Sites.site()
                .pipe("s", "m", "pad", "3/4", 110)
                .appliance("heater", "pad", 374_000, "6inwc")
                .build();
        var profile = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
        assertThat(profile.appliance("heater").pressure().inchesWater()).isCloseTo(7 - 5.843, within(1e-3));
        assertThat(profile.appliance("heater").enough()).isFalse();
        assertThat(profile.enough()).isFalse();
    }

    @Test
    void aPipeThatCannotCarryItsFlowShowsNoPressureAndNoError() {
        var layout = Sites.site()
                .pipe("s", "m", "pad", "1/2", 200)
                .pipe("t", "pad", "end", "1/2", 10)
                .appliance("heater", "end", 400_000, "6inwc")
                .build();
        var profile = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
        assertEquals(0, profile.segment("s").to().inchesWater());
        assertEquals(0, profile.segment("t").drop().inchesWater());
        assertEquals(0, profile.appliance("heater").pressure().inchesWater());
    }

    @Test
    void pressureExactlyAtTheMinimumIsEnough() {
        var exact = 7 - drop(0.824, 30, 200);
        var layout = Sites.site()
                .pipe("s", "m", "pad", "3/4", 30)
                .appliance("heater", "pad", 200_000, String.format(java.util.Locale.ROOT, "%.9finwc", exact))
                .build();
        assertThat(PressureProfile.of(Sites.TABLES, layout, Firing.all(layout)).enough())
                .isTrue();
    }

    @Test
    void theProfileStartsFromThePressureWhileFiring() {
        var source = new Source(
                Source.Kind.METER,
                "m",
                Pressure.parse("10.2inwc"),
                Optional.of(Pressure.parse("9.8inwc")),
                Optional.empty());
        var layout = house().from(source).build();
        var profile = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
        assertEquals(9.8, profile.segment("trunk").from().inchesWater());
    }

    @Test
    void elevatedPressureLosesInSquaresOfAbsolutePressure() {
        var layout = Sites.site()
                .from(Sites.meter("2psi"))
                .pipe("s1", "m", "x", "3/4", 80)
                .pipe("s2", "x", "pad", "3/4", 40)
                .regulator("R1", "heater", "8inwc", "500cfh")
                .appliance("heater", "pad", 400_000, "5inwc")
                .build();
        var profile = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
        // High-pressure equation of IFGC 402.4 solved for P1^2 - P2^2
        var lost = 0.6094 * 120 / 0.9992 * Math.pow(Math.pow(400, 0.381) / (18.93 * 0.824), 1 / 0.206);
        var end = Math.sqrt(16.7 * 16.7 - lost) - 14.7;
        assertThat(profile.segment("s2").to().psi()).isCloseTo(end, within(1e-9));
        var regulator = profile.regulators().get(0);
        assertThat(regulator.inlet().psi()).isCloseTo(end, within(1e-9));
        assertEquals(400, regulator.flow().cubicFeetPerHour());
        assertThat(regulator.trouble()).isEmpty();
        assertEquals(8, profile.appliance("heater").pressure().inchesWater(), 1e-9);
        assertEquals("regulator R1", profile.appliance("heater").zone());
        assertThat(profile.enough()).isTrue();
    }

    @Test
    void aStarvedOrOverloadedRegulatorIsNamed() {
        var site = Sites.site()
                .from(Sites.meter("2psi"))
                .pipe("s1", "m", "pad", "1/2", 300)
                .regulator("R1", "heater", "8inwc", "380cfh")
                .appliance("heater", "pad", 400_000, "5inwc");
        var profile = PressureProfile.of(Sites.TABLES, site.build(), Firing.all(site.build()));
        var regulator = profile.regulators().get(0);
        assertThat(regulator.overRating()).isTrue();
        assertThat(regulator.starved()).isTrue();
        assertThat(regulator.trouble().orElseThrow()).startsWith("regulator R1 passes 400");
        assertThat(regulator.outlet()).isEqualTo(regulator.inlet());
        assertThat(profile.enough()).isFalse();
    }

    @Test
    void aRegulatorBeforeASegmentBeginsANewZone() {
        var layout = Sites.site()
                .from(Sites.meter("2psi"))
                .pipe("s1", "m", "x", "3/4", 50)
                .pipe("s2", "x", "house", "1", 40)
                .regulator("R1", "s2", "7inwc", "500cfh")
                .appliance("furnace", "house", 100_000, "5inwc")
                .build();
        var profile = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
        assertEquals(7, profile.segment("s2").from().inchesWater(), 1e-9);
        assertThat(profile.segment("s2").drop().inchesWater()).isCloseTo(drop(1.049, 40, 100), within(1e-9));
    }

    @Test
    void csstLosesWhatItsTableIsPrintedFor() {
        // IFGC 402.4(15): EHD 25 carries 192 cfh over 10 ft for 0.5 in w.c.
        var tube = new Pipe(Material.CSST, "25");
        var loss = new PressureLoss(Sites.TABLES, Gas.ofCode(Fuel.NATURAL));
        assertThat(loss.of(FlowEquation.LOW, tube, Length.ofFeet(10), 192)).isCloseTo(0.5, within(1e-9));
        assertThat(loss.of(FlowEquation.LOW, tube, Length.ofFeet(20), 192)).isCloseTo(1.0, within(1e-9));
        // Far outside of the rows it still grows with the flow.
        assertThat(loss.of(FlowEquation.LOW, tube, Length.ofFeet(10), 2000)).isGreaterThan(30);
        assertThat(loss.of(FlowEquation.LOW, tube, Length.ofFeet(10), 5)).isBetween(0.0, 0.01);
        assertEquals(0, loss.of(FlowEquation.LOW, tube, Length.ofFeet(10), 0));
        assertThatThrownBy(() -> loss.of(FlowEquation.HIGH, tube, Length.ofFeet(10), 100))
                .isInstanceOf(Refusal.NotAllowed.class);
    }

    @Test
    void csstWithPropaneLosesWhatTheDerivedCapacityIsMadeFor() {
        var tube = new Pipe(Material.CSST, "25");
        var loss = new PressureLoss(Sites.TABLES, Gas.ofCode(Fuel.PROPANE));
        assertThat(loss.of(FlowEquation.LOW, tube, Length.ofFeet(10), 192 * 0.63))
                .isCloseTo(0.5, within(1e-9));
    }

    @Test
    void inputsAreTakenDownWithAltitudeFromSeaLevelOnceAboveTwoThousandFeet() {
        // An appliance manual and NFPA 54-2015 Table E.1.1(d): 4,300 ft is 4 x 4.3 = 17 % less; another manual: 12 % at
        // 3,000
        assertEquals(0.828, Altitude.share(Length.ofFeet(4300)), 1e-12);
        assertEquals(0.88, Altitude.share(Length.ofFeet(3000)), 1e-12);
        assertEquals(1, Altitude.share(Length.ofFeet(2000)));
        assertEquals(0.52, Altitude.share(Length.ofFeet(12_000)), 1e-12);
        assertThatThrownBy(() -> Altitude.share(Length.ofFeet(12_001))).isInstanceOf(Refusal.OutOfRange.class);
        var layout = house().at(4300).build();
        assertEquals(0.828 * 260, layout.connectedLoad().cubicFeetPerHour(), 1e-9);
    }

    @Test
    void theMakersInputAtTheSiteComesFirst() {
        var heater = new Appliance(
                "heater",
                "pad",
                HeatRate.ofBtuPerHour(400_000),
                new InletRange(Pressure.parse("4inwc"), Pressure.parse("14inwc")),
                Optional.of(HeatRate.ofBtuPerHour(360_000)),
                Optional.empty());
        var layout = Sites.site()
                .at(5000)
                .of(Gas.of(Fuel.NATURAL, Optional.empty(), Optional.of(HeatingValue.ofBtuPerCubicFoot(900))))
                .pipe("s", "m", "pad", "1", 10)
                .appliance(heater)
                .build();
        assertEquals(400, layout.connectedLoad().cubicFeetPerHour(), 1e-9);
    }

    @Test
    void unknownNamesAreRefused() {
        var layout = house().build();
        assertThatThrownBy(() -> Firing.alone(layout, "sauna"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("heater, furnace");
        var profile = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
        assertThatThrownBy(() -> profile.segment("zz")).isInstanceOf(Refusal.Unknown.class);
        assertThatThrownBy(() -> profile.appliance("zz")).isInstanceOf(Refusal.Unknown.class);
        assertThatThrownBy(() -> layout.segment("zz")).hasMessageContaining("trunk, pool, indoor");
        assertEquals("heater", layout.largest().id());
        assertEquals(
                List.of("trunk", "pool", "indoor"),
                layout.segments().stream().map(Segment::id).toList());
    }

    @Test
    void aSupplyAboveThePlatesMaximumIsSeen() {
        var layout = house().from(Sites.meter("14.5inwc")).build();
        var profile = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
        assertThat(profile.appliance("heater").supplyTooHigh()).isTrue();
        assertThat(PressureProfile.of(Sites.TABLES, house().build(), Firing.all(layout))
                        .appliance("heater")
                        .supplyTooHigh())
                .isFalse();
    }
}
