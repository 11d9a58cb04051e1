package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.document.page.PageFormat;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class StopWorkPdfTest {
    private static final byte[] FILE = StopWorkPdf.write(Unsettled.gasSmell(), Papers.text(), PageFormat.LETTER);

    @Test
    void saysTheKeptWords() throws IOException {
        Golden.assertSame("stop-work-gas-smell.txt", new ReadBack(FILE).golden());
    }

    @Test
    void looksLikeTheKeptPicture() throws IOException {
        Golden.assertSame("stop-work-gas-smell.png", new ReadBack(FILE).picture(1, 40));
    }

    @Test
    void carriesNoPriceAnywhere() throws IOException {
        assertThat(new ReadBack(FILE).text()).doesNotContain("$").doesNotContainPattern("\\d\\.\\d\\d\\b");
    }

    @Test
    void theSignatureIsAReceiptAndNoOrder() throws IOException {
        assertThat(new ReadBack(FILE).text())
                .contains("Do not use this heater")
                .contains("It is not a quote and not a bill.")
                .contains("My signature is a receipt. It orders no work. Signature Name in print");
    }

    @Test
    void isWellSetOnBothPapersAndAlwaysTheSame() throws IOException {
        for (var format : PageFormat.values()) {
            var file = StopWorkPdf.write(Unsettled.gasSmell(), Papers.text("es"), format);
            new ReadBack(file).assertWellSet(format);
            assertThat(file).isEqualTo(StopWorkPdf.write(Unsettled.gasSmell(), Papers.text("es"), format));
        }
    }
}
