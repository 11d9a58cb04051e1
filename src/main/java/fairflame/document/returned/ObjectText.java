package fairflame.document.returned;

import com.lowagie.text.pdf.PRStream;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfString;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** An object of a PDF with all that it refers to, as a digest that does not depend on how the file is packed. */
final class ObjectText {
    private static final int DEEPEST = 40;
    private static final Set<PdfName> PACKING =
            Set.of(PdfName.LENGTH, PdfName.FILTER, PdfName.DECODEPARMS, PdfName.PARENT, new PdfName("StructParent"));

    private final MessageDigest digest;

    private ObjectText() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    static String of(@Nullable PdfObject object) throws IOException {
        var text = new ObjectText();
        text.add(object, 0);
        return HexFormat.of().formatHex(text.digest.digest());
    }

    private void add(@Nullable PdfObject reference, int depth) throws IOException {
        var object = PdfReader.getPdfObject(reference);
        if (object == null || object.isNull() || depth > DEEPEST) {
            say("null");
        } else if (object instanceof PdfDictionary dictionary) {
            dictionary(dictionary, depth);
        } else if (object instanceof PdfArray array) {
            say("[");
            for (int i = 0; i < array.size(); i++) {
                add(array.getPdfObject(i), depth + 1);
            }
            say("]");
        } else if (object instanceof PdfString string) {
            say("(");
            digest.update(string.getOriginalBytes());
            say(")");
        } else if (object instanceof PdfNumber number) {
            say(Double.toString(number.doubleValue()));
        } else {
            say(object.toString());
        }
    }

    private void dictionary(PdfDictionary dictionary, int depth) throws IOException {
        say("<<");
        var sorted = new TreeMap<String, PdfName>();
        dictionary.getKeys().stream()
                .filter(key -> !PACKING.contains(key))
                .forEach(key -> sorted.put(key.toString(), key));
        for (var key : sorted.entrySet()) {
            say(key.getKey());
            add(dictionary.get(key.getValue()), depth + 1);
        }
        if (dictionary instanceof PRStream stream) {
            digest.update(bytes(stream));
        }
        say(">>");
    }

    private static byte[] bytes(PRStream stream) throws IOException {
        try {
            return PdfReader.getStreamBytes(stream);
        } catch (IOException | RuntimeException e) {
            // A picture in a form of its own, such as JPEG: as it is packed.
            return PdfReader.getStreamBytesRaw(stream);
        }
    }

    private void say(String word) {
        digest.update(word.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
        digest.update((byte) ' ');
    }
}
