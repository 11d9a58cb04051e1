package fairflame.catalog.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTextTest {
    private static final String STEPS = """
            id,title,hours,needs
            AX-1,"Power off, tagged",0.10,
            AX-2,Panel,0.15

            "AX-3","The ""top"" of it",0.30,AX-1
            """;

    private static String set(String key, String column, String value) {
        var csv = CsvText.parse("access.csv", STEPS);
        var spot = Spot.of(key, column);
        return csv.with(FieldEdit.set(spot, csv.at(spot).orElseThrow(), value));
    }

    @Test
    void aCellChangesAndNothingElse() {
        assertThat(set("AX-2", "hours", "0.20")).isEqualTo(STEPS.replace("0.15", "0.20"));
        assertThat(set("AX-3", "needs", "AX-2")).isEqualTo(STEPS.replace("0.30,AX-1", "0.30,AX-2"));
        assertThat(set("AX-2", "needs", "AX-1")).isEqualTo(STEPS.replace("0.15", "0.15,AX-1"));
    }

    @Test
    void whatACommaOrAQuotationMarkWouldTearIsQuoted() {
        assertThat(set("AX-2", "title", "Panel, \"front\"")).contains("AX-2,\"Panel, \"\"front\"\"\",0.15\n");
        var again = CsvText.parse("access.csv", set("AX-2", "title", "Panel, \"front\"\nand back"));
        assertThat(again.at(Spot.of("AX-2", "title"))).contains("Panel, \"front\"\nand back");
        assertThat(again.keys()).containsExactly("AX-1", "AX-2", "AX-3");
    }

    @Test
    void aRowComesAndGoes() {
        var line = CsvText.line(List.of("AX-4", "A, b", "0.5", ""));
        var grown = CsvText.parse("access.csv", STEPS).with(FieldEdit.added(Spot.of("AX-4"), line));
        assertThat(grown).isEqualTo(STEPS + "AX-4,\"A, b\",0.5,\n");
        assertThat(CsvText.parse("access.csv", grown).with(FieldEdit.removed(Spot.of("AX-4"), line)))
                .isEqualTo(STEPS);
    }

    @Test
    void aRowThatIsThereAlreadyIsNotAddedTwice() {
        assertThatThrownBy(() ->
                        CsvText.parse("access.csv", STEPS).with(FieldEdit.added(Spot.of("AX-1"), "AX-1,again,0.1,")))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("access.csv, AX-1");
    }

    @Test
    void lineEndsStayAsTheyAre() {
        var windows = STEPS.replace("\n", "\r\n");
        var grown = CsvText.parse("access.csv", windows).with(FieldEdit.added(Spot.of("AX-4"), "AX-4,x,0.5,"));
        assertThat(grown).isEqualTo(windows + "AX-4,x,0.5,\r\n");
    }

    @Test
    void aQuotationMarkThatIsNeverClosedIsRefused() {
        assertThatThrownBy(() -> CsvText.parse("access.csv", "id,title\nAX-1,\"open"))
                .isInstanceOf(Refusal.Malformed.class)
                .hasMessageContaining("access.csv");
    }
}
