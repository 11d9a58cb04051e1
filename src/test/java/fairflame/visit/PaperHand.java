package fairflame.visit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.form.PDCheckBox;

/** A customer's program: fills a paper in with another library than the one that wrote it. */
public final class PaperHand {
    private PaperHand() {}

    /** Something done to an open file. */
    public interface Act {
        void on(PDDocument document) throws IOException;
    }

    /** The answers of a person who takes one choice and says all that belongs to it. */
    public static Map<String, String> taking(String choice, String... others) {
        var fields = new LinkedHashMap<String, String>();
        fields.put("choice", "take-" + choice);
        fields.put("order-" + choice, "tick");
        for (var other : others) {
            fields.put("decline-" + other, "tick");
        }
        fields.put("electronic", "tick");
        fields.put("role", "owner");
        fields.put("name", "Marguerite Oduya");
        fields.put("signature", "M. Oduya");
        fields.put("date", "2026-06-12");
        return fields;
    }

    public static Act fill(Map<String, String> fields) {
        return document -> {
            var form = document.getDocumentCatalog().getAcroForm();
            for (var field : fields.entrySet()) {
                var found = form.getField(field.getKey());
                if (found instanceof PDCheckBox box) {
                    box.check();
                } else {
                    found.setValue(field.getValue());
                }
            }
        };
    }

    /** The file written anew as a whole. */
    public static byte[] whole(byte[] paper, Act... acts) {
        return saved(paper, false, acts);
    }

    /** The file with the changes behind it, its first bytes untouched. */
    public static byte[] behind(byte[] paper, Act... acts) {
        return saved(paper, true, acts);
    }

    private static byte[] saved(byte[] paper, boolean behind, Act... acts) {
        try (var document = Loader.loadPDF(paper)) {
            for (var act : acts) {
                act.on(document);
            }
            var out = new ByteArrayOutputStream();
            if (behind) {
                document.saveIncremental(out);
            } else {
                document.save(out);
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
