package fairflame.document.returned;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What of a paper is not as it was written, its fields' content aside: each thing named. */
final class Alterations {
    private static final Map<PdfName, String> ACTS = Map.of(
            PdfName.OPENACTION, "an act on opening",
            PdfName.AA, "an act on opening or printing",
            PdfName.COLLECTION, "a collection of other files");
    private static final Map<PdfName, String> NAMED =
            Map.of(PdfName.JAVASCRIPT, "a script", PdfName.EMBEDDEDFILES, "an attached file");

    private final PdfReader written;
    private final PdfReader returned;
    private final FieldsAsWritten fields;
    private final List<String> found = new ArrayList<>();
    private final List<Integer> rewritten = new ArrayList<>();

    Alterations(PdfReader written, PdfReader returned) {
        this.written = written;
        this.returned = returned;
        this.fields = new FieldsAsWritten(written, returned);
    }

    /** All of them; looked for once. */
    List<String> find() throws IOException {
        if (written.getNumberOfPages() != returned.getNumberOfPages()) {
            found.add("number of pages: " + written.getNumberOfPages() + " were sent, " + returned.getNumberOfPages()
                    + " came back");
            return found;
        }
        for (int page = 1; page <= written.getNumberOfPages(); page++) {
            page(page);
        }
        acts();
        found.addAll(fields.differences());
        return found;
    }

    /** Pages whose content is written in another way and has to be looked at. */
    List<Integer> rewritten() {
        return List.copyOf(rewritten);
    }

    /** Where the fields stand, by page. */
    Map<Integer, List<float[]>> fieldPlaces() {
        return fields.places();
    }

    private void page(int page) throws IOException {
        if (!size(written, page).equals(size(returned, page))) {
            found.add("page " + page + ": size or rotation");
        }
        boolean same = Arrays.equals(written.getPageContent(page), returned.getPageContent(page))
                && ObjectText.of(resources(written, page)).equals(ObjectText.of(resources(returned, page)));
        if (!same) {
            rewritten.add(page);
        }
        if (returned.getPageN(page).get(PdfName.AA) != null) {
            found.add("page " + page + ": an act on opening");
        }
    }

    private static String size(PdfReader reader, int page) {
        return reader.getPageSize(page) + " " + reader.getCropBox(page) + " " + reader.getPageRotation(page);
    }

    private static PdfDictionary resources(PdfReader reader, int page) {
        var resources = reader.getPageN(page).getAsDict(PdfName.RESOURCES);
        return resources == null ? new PdfDictionary() : resources;
    }

    private void acts() {
        var catalog = returned.getCatalog();
        new TreeMap<>(texts(ACTS)).forEach((key, told) -> {
            if (catalog.get(new PdfName(key)) != null) {
                found.add("the file: " + told);
            }
        });
        var names = catalog.getAsDict(PdfName.NAMES);
        if (names != null) {
            NAMED.forEach((key, told) -> {
                if (names.get(key) != null) {
                    found.add("the file: " + told);
                }
            });
        }
        var form = catalog.getAsDict(PdfName.ACROFORM);
        if (form != null && form.get(new PdfName("XFA")) != null) {
            found.add("the file: a second form beside the fields");
        }
    }

    private static Map<String, String> texts(Map<PdfName, String> acts) {
        var texts = new TreeMap<String, String>();
        acts.forEach((key, told) -> texts.put(PdfName.decodeName(key.toString()), told));
        return texts;
    }
}
