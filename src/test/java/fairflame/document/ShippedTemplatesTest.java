package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The spreadsheets that travel with the program are what {@link TemplateMaking} makes, and can be remade by it. */
class ShippedTemplatesTest {
    private static final Path FOLDER = Path.of("templates");

    @Test
    void theShippedSpreadsheetsAreTheOnesMadeFromNothing() throws IOException {
        var made = Map.of("quote.xlsx", TemplateMaking.quote(), "invoice.xlsx", TemplateMaking.invoice());
        if (Boolean.getBoolean("golden.write")) {
            for (var file : made.entrySet()) {
                Files.write(FOLDER.resolve(file.getKey()), file.getValue());
            }
            fail("wrote the spreadsheets of " + FOLDER + "; look at them and run again");
        }
        for (var file : made.entrySet()) {
            assertThat(Files.readAllBytes(FOLDER.resolve(file.getKey())))
                    .as(file.getKey())
                    .isEqualTo(file.getValue());
        }
    }
}
