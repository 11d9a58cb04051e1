package fairflame.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import fairflame.quote.DemoQuotes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * A signed revision kept as a file. Its content digest and chain value were computed with other tools, Python's json and
 * hashlib modules:
 *
 * <pre>
 * rest = {k: v for k, v in json.load(open(file)).items() if k != "seal"}
 * text = json.dumps(rest, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
 * content = hashlib.sha256(text.encode()).hexdigest()
 * chain = hashlib.sha256(("0" * 64 + content).encode()).hexdigest()
 * </pre>
 *
 * (Python sorts names by code point; the names in this file are plain letters, where that is the same order.)
 */
class KeptSealTest {
    private static final Path KEPT = Path.of("src/test/resources/fairflame/agreement/signed-diagnosis.json");
    private static final String CONTENT = "0cc21cd78ed147fb403be69c6f7f72b04d78bc51af515fc56d6bd0796f615744";
    private static final String CHAIN = "2d2b5eddc35d72462b38e7261cc70cff6c019dfa3e9d853b2a047b761e2a68ae";

    @Test
    void aSealFromAnotherToolIsTheSame() throws IOException {
        if (Boolean.getBoolean("golden.write")) {
            var quote = DemoQuotes.quoting(DemoQuotes.request()).diagnosisOnly(DemoQuotes.UNSETTLED);
            var signed = DemoAgreements.sign(quote, "diagnosis", Map.of());
            Files.write(KEPT, CanonicalForm.write(signed));
            fail("rewrote " + KEPT + "; compute its digests with the other tool, review the difference and run again");
        }
        var bytes = Files.readAllBytes(KEPT);
        assertThat(Sealing.verify(bytes)).isEmpty();
        assertThat(new String(bytes, StandardCharsets.UTF_8))
                .contains("\"content\":\"" + CONTENT)
                .contains("\"chain\":\"" + CHAIN);
    }
}
