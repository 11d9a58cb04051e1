package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The questions about the gas line alone, by the contract for scripts. */
class GasCommandsTest {
    private static final String LAYOUT = "docs/formats/layout.example.json";

    @TempDir
    private Path folder;

    @Test
    void capacityNamesTheTableAndItsNumber() {
        var said = Shell.run(
                        "capacity",
                        "--gas",
                        "natural",
                        "--material",
                        "steel-schedule-40",
                        "--size",
                        "1-1/4",
                        "--length",
                        "60ft",
                        "--inlet",
                        "7inwc",
                        "--drop",
                        "0.5inwc",
                        "--json")
                .done()
                .json();
        // IFGC 402.4(2), 1-1/4 in, 60 ft
        assertThat(said.get("capacityCfh").doubleValue()).isEqualTo(528);
        assertThat(said.get("capacityBtuPerHour").intValue()).isEqualTo(528_000);
        assertThat(said.get("by").textValue()).contains("402.4(2)");
    }

    @Test
    void theSameInMetricUnits() {
        var said = Shell.run(
                        "capacity",
                        "--gas",
                        "natural",
                        "--material",
                        "steel-schedule-40",
                        "--size",
                        "1-1/4",
                        "--length",
                        "18.288m",
                        "--inlet",
                        "1.7436kPa",
                        "--drop",
                        "1.2454mbar",
                        "--json")
                .done()
                .json();
        assertThat(said.get("capacityCfh").doubleValue()).isEqualTo(528);
    }

    @Test
    void sizePrintsSegmentsAndPressuresAndDrawsTheLine() throws IOException {
        var svg = folder.resolve("line.svg");
        var said = Shell.run("size", LAYOUT, "--json", "--svg", svg.toString())
                .done()
                .json();
        assertThat(said.get("segments"))
                .hasSize(4)
                .allSatisfy(segment -> assertThat(segment.fieldNames())
                        .toIterable()
                        .contains("id", "flowCfh", "lengthUsedFt", "requiredSize", "installedSize", "enough"));
        assertThat(said.get("appliances"))
                .hasSize(3)
                .allSatisfy(appliance ->
                        assertThat(appliance.get("pressureInH2O").doubleValue()).isBetween(5.0, 7.4));
        assertThat(said.at("/alone/pressureInH2O").doubleValue())
                .isGreaterThan(said.at("/appliances/0/pressureInH2O").doubleValue());
        assertThat(Files.readString(svg)).startsWith("<svg").contains("pool heater", "too small");
    }

    @Test
    void planPrintsTheProofAndItsAlternatives() throws IOException {
        var svg = folder.resolve("plan.svg");
        var said = Shell.run(
                        "plan", LAYOUT, "--place", "larkwell", "--raise-to", "2psi", "--json", "--svg", svg.toString())
                .done()
                .json();
        assertThat(said.at("/proof/optimalCost")).isEqualTo(said.at("/best/cost"));
        assertThat(said.at("/proof/states").intValue()).isPositive();
        assertThat(said.get("alternatives")).isNotEmpty();
        assertThat(said.at("/best/appliances"))
                .allSatisfy(outlet ->
                        assertThat(outlet.get("enough").booleanValue()).isTrue());
        assertThat(Files.readString(svg)).contains("Before", "After");
    }

    @Test
    void reconcileSaysWhetherPipeIsToBlame() {
        var said = Shell.run(
                        "reconcile",
                        LAYOUT,
                        "--static",
                        "7.4inwc",
                        "--firing",
                        "3.0inwc",
                        "--meter-firing",
                        "7.0inwc",
                        "--json")
                .done()
                .json();
        assertThat(said.get("verdict").textValue()).isIn("explains-part", "does-not-explain");
        assertThat(said.get("lookAt")).isNotEmpty();
        Shell.run("reconcile", LAYOUT, "--static", "7inwc", "--firing", "9inwc").refused("firing", "9");
    }

    @Test
    void aDrawingIsNotWrittenOverAFolder() {
        Shell.run("size", LAYOUT, "--svg", folder.toString())
                .refused(folder.getFileName().toString());
    }

    @Test
    void theKnowledgeAndTheRepairBookHoldTogether() {
        var said = Shell.run("knowledge", "--json").done().json();
        assertThat(said.get("problems")).isEmpty();
        assertThat(said.get("causes").intValue()).isGreaterThan(60);
        assertThat(said.get("repairs").intValue()).isGreaterThanOrEqualTo(40);
    }

    @Test
    void aCoolingTestIsNotTakenForALeak() {
        var said = Shell.run("air-test", "--start", "20psi", "--from", "70f", "--to", "40f", "--json")
                .done()
                .json();
        // 2018 IFGC A.7.5: 18 psig
        assertThat(said.get("pressurePsi").doubleValue()).isBetween(17.95, 18.05);
        Shell.run("air-test", "--start", "20psi", "--from", "700f", "--to", "40f")
                .refused("700");
    }
}
