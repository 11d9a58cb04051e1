package fairflame.document.returned;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import fairflame.Refusal;
import fairflame.document.AnswerSheet;
import fairflame.document.PaperIdentity;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/** A paper for a customer who is away, as it came back. Nothing in it is trusted before it is proved. */
public final class ReturnedPaper {
    /** Largest file that is read, in bytes. */
    public static final int MOST_BYTES = 20 * 1024 * 1024;

    static final String WHAT = "returned paper";
    private static final byte[] MAGIC = "%PDF-".getBytes(StandardCharsets.US_ASCII);
    // Readers take a file whose first bytes stand within the first 1024 (ISO 32000-1, annex H.3).
    private static final int HEAD = 1024;
    private static final int MOST_NAMED = 5;

    private final byte[] bytes;
    private final PdfReader reader;

    private ReturnedPaper(byte[] bytes, PdfReader reader) {
        this.bytes = bytes;
        this.reader = reader;
    }

    /** Opens a file; refused when it is no PDF, damaged, protected by a password, or too large. */
    public static ReturnedPaper open(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            throw Refusal.outOfRange(WHAT, bytes.length + " bytes", "at most 20 MiB");
        }
        if (!isPdf(bytes)) {
            throw Refusal.malformed(WHAT, kind(bytes), "the PDF file that was sent, filled in");
        }
        Inflation.refuseAboveLimit(bytes);
        refuseProtected(bytes);
        return new ReturnedPaper(bytes, reader(bytes));
    }

    private static void refuseProtected(byte[] bytes) {
        try (var document = Loader.loadPDF(bytes)) {
            if (document.isEncrypted()) {
                throw protectedFile();
            }
        } catch (InvalidPasswordException e) {
            throw protectedFile();
        } catch (IOException | RuntimeException e) {
            throw damaged(e);
        }
    }

    private static Refusal protectedFile() {
        return Refusal.notAllowed(WHAT, "encrypted or protected by a password", "a file saved without protection");
    }

    private static PdfReader reader(byte[] bytes) {
        try {
            return new PdfReader(bytes);
        } catch (IOException | RuntimeException e) {
            throw damaged(e);
        }
    }

    private static boolean isPdf(byte[] bytes) {
        for (int i = 0; i + MAGIC.length <= Math.min(bytes.length, HEAD); i++) {
            if (Arrays.equals(bytes, i, i + MAGIC.length, MAGIC, 0, MAGIC.length)) {
                return true;
            }
        }
        return false;
    }

    private static String kind(byte[] bytes) {
        if (bytes.length == 0) {
            return "an empty file";
        }
        boolean jpeg = bytes.length > 1 && (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xD8;
        boolean png = bytes.length > 1 && (bytes[0] & 0xFF) == 0x89 && bytes[1] == 'P';
        return jpeg || png ? "a picture: what is written on it cannot be read" : "a file that is not a PDF";
    }

    /** Which quote it says it is of; refused when the field for it is gone or makes no sense. */
    public PaperIdentity identity() {
        var text = answers().text(AnswerSheet.IDENTITY);
        if (text.isEmpty()) {
            throw Refusal.missing(
                    "field '" + AnswerSheet.IDENTITY + "' of the " + WHAT,
                    "the paper for a customer who is away, its fields not printed fast or taken out");
        }
        return PaperIdentity.parse(text);
    }

    /** What was filled in. */
    public Answers answers() {
        try {
            return Answers.in(reader);
        } catch (RuntimeException e) {
            throw damaged(e);
        }
    }

    /** What a field told that belongs in it; empty when there is no such field. */
    public String told(String field) {
        var item = reader.getAcroFields().getFieldItem(field);
        var told = item == null ? null : item.getMerged(0).getAsString(PdfName.TU);
        return told == null ? "" : told.toUnicodeString();
    }

    /** Refuses, naming page, field and figure, when anything but the fields' content is not as it was written. */
    public void proveAgainst(byte[] written) {
        var found = alterations(written);
        if (!found.isEmpty()) {
            var named = String.join("; ", found.subList(0, Math.min(found.size(), MOST_NAMED)));
            var more = found.size() > MOST_NAMED ? "; and " + (found.size() - MOST_NAMED) + " more" : "";
            throw Refusal.notAllowed(
                    WHAT, "altered: " + named + more, "the paper as it was sent, with nothing changed but its fields");
        }
    }

    private List<String> alterations(byte[] written) {
        try {
            var before = new PdfReader(written);
            var found = new Alterations(before, reader);
            var named = found.find();
            if (named.isEmpty() && !found.rewritten().isEmpty()) {
                return new SecondLook(written, bytes, found.fieldPlaces()).differences(found.rewritten());
            }
            return named;
        } catch (IOException | RuntimeException e) {
            throw damaged(e);
        }
    }

    private static Refusal damaged(Exception e) {
        return e instanceof Refusal refusal
                ? refusal
                : Refusal.malformed(WHAT, "a damaged PDF (" + e + ")", "the PDF file that was sent");
    }
}
