package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.quote.Quote;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** The gas line of the second demo visit under other rules, and the arithmetic beside its choices. */
class GasWorkTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static Quote quote(Consumer<ObjectNode> change) {
        try {
            var visit = (ObjectNode)
                    MAPPER.readTree(Files.readString(Path.of("src/main/resources/fairflame/demo/visit-2.json")));
            change.accept(visit);
            var record = Pad.LIBRARY.visits().read(visit.toString());
            return new QuoteMaking(Pad.LIBRARY).quote(Examination.of(record, Pad.LIBRARY), "Q-2026-0001", 1, Pad.DAY);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void aPlaceThatAsksForAnExcessFlowValveGetsOneOnANewLine() {
        var asked = quote(visit -> {
            visit.put("jurisdiction", "brinefield");
            visit.remove("repair");
        });
        // The line of its own starts at the source, so the valve stands at its head; the larger line starts behind the
        // tee. 388 ft3/h go through it, so the valve of 275 would close on the heater.
        var own = asked.choice("own-line");
        assertThat(Pad.work(own)).contains("R58");
        assertThat(own.lines())
                .anySatisfy(line -> assertThat(line.description()).contains("Excess-flow valve", "600"));
        assertThat(Pad.work(asked.choice("larger-line"))).doesNotContain("R58");
        assertThat(quote(visit -> {}).choices())
                .allSatisfy(choice -> assertThat(Pad.work(choice)).doesNotContain("R58"));
    }

    @Test
    void aHigherPressureIsOfferedOnlyWhereTheSupplierAgreed() {
        assertThat(quote(visit -> {}).choices()).noneMatch(choice -> choice.id().startsWith("raised-pressure"));
        var raised = quote(visit -> ((ObjectNode) visit.get("repair")).put("raisedDelivery", "2psi"));
        assertThat(raised.choices()).anyMatch(choice -> choice.id().startsWith("raised-pressure"));
        assertThat(Pad.work(raised.choice("raised-pressure"))).contains("R20").doesNotContain("R18");
    }

    @Test
    void theArithmeticOfTheDecisionStandsBesideTheChoiceWithItsAssumptions() {
        var words = String.join(" ", quote(visit -> {}).choices().get(0).arithmetic());
        // 15,000 gal x 8.34 x 10 F = 1,251,000 Btu; / 82 % / 100,000 = 15.26 therm; at 1.50 = 22.88; and
        // 1,251,000 / (328,000 - 40,000) = 4.3 h
        assertThat(words).contains("15.26 therm", "22.88", "4.3 hours", "Assumed:");
        assertThat(words).contains("Keeping the heater costs about");
        assertThat(words).doesNotContain("longer for a warm-up");
    }

    @Test
    void anUnderfiredHeaterIsToldInTimeAndNotAsASavingOfGas() {
        var words = String.join(
                " ",
                quote(visit -> {
                            for (var reading : visit.get("readings")) {
                                if (reading.get("check").textValue().equals("clocked-flow")) {
                                    // 272 ft3/h x 1,030 = 280,160 Btu/h: 70 % of the plate
                                    ((ObjectNode) reading).put("value", "272 cfh");
                                }
                            }
                            ((ObjectNode) visit.get("layout").get("segments").get(1)).put("length", "115ft");
                        })
                        .choices()
                        .get(0)
                        .arithmetic());
        assertThat(words).contains("At 70 % of its input", "hours longer for a warm-up", "Waiting 3 months costs");
        assertThat(words).doesNotContain("saves gas");
    }

    @Test
    void whatWasNotToldIsNotShown() {
        assertThat(quote(visit -> visit.remove("decision")).choices())
                .allSatisfy(choice -> assertThat(choice.arithmetic()).isEmpty());
    }
}
