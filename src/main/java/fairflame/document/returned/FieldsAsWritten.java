package fairflame.document.returned;

import com.lowagie.text.pdf.AcroFields;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import fairflame.document.AnswerSheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Whether the fields are those that were written, where they were written, and nothing was laid over the pages. */
final class FieldsAsWritten {
    private static final Set<PdfName> DRAWN = Set.of(PdfName.INK, PdfName.STAMP);
    // Readers round the corners of a field when they save.
    private static final float SLACK = 0.6f;

    private final PdfReader written;
    private final PdfReader returned;
    private final AcroFields before;
    private final AcroFields after;
    private final List<String> found = new ArrayList<>();

    FieldsAsWritten(PdfReader written, PdfReader returned) {
        this.written = written;
        this.returned = returned;
        this.before = written.getAcroFields();
        this.after = returned.getAcroFields();
    }

    List<String> differences() {
        var names = new TreeSet<>(before.getAllFields().keySet());
        names.addAll(after.getAllFields().keySet());
        names.forEach(this::field);
        hidden(names);
        var fixed = before.getField(AnswerSheet.IDENTITY);
        if (fixed != null && !fixed.equals(after.getField(AnswerSheet.IDENTITY))) {
            found.add(name(AnswerSheet.IDENTITY) + ": its text");
        }
        for (int page = 1; page <= Math.min(written.getNumberOfPages(), returned.getNumberOfPages()); page++) {
            laidOver(page);
        }
        return found;
    }

    /** Fields that stand on no page are in the form all the same. */
    private void hidden(Set<String> seen) {
        var listed = listed(returned);
        listed.removeAll(listed(written));
        listed.removeAll(seen);
        listed.forEach(name -> found.add(name(name) + ": added"));
    }

    private static Set<String> listed(PdfReader reader) {
        var form = reader.getCatalog().getAsDict(PdfName.ACROFORM);
        var fields = form == null ? null : form.getAsArray(PdfName.FIELDS);
        var names = new TreeSet<String>();
        for (int i = 0; fields != null && i < fields.size(); i++) {
            var field = fields.getAsDict(i);
            var name = field == null ? null : field.getAsString(PdfName.T);
            names.add(name == null ? "" : name.toUnicodeString());
        }
        return names;
    }

    private static String name(String field) {
        return "field '" + field + "'";
    }

    private void field(String name) {
        var was = before.getFieldItem(name);
        var is = after.getFieldItem(name);
        if (was == null) {
            found.add(name(name) + ": added");
        } else if (is == null) {
            found.add(name(name) + ": gone");
        } else if (was.size() != is.size() || before.getFieldType(name) != after.getFieldType(name)) {
            found.add(name(name) + ": another kind of field");
        } else {
            for (int i = 0; i < was.size(); i++) {
                part(name, i, was, is);
            }
        }
    }

    private void part(String name, int i, AcroFields.Item was, AcroFields.Item is) {
        for (var key : List.of(PdfName.FF, PdfName.MAXLEN, PdfName.TU)) {
            if (!text(was.getMerged(i), key).equals(text(is.getMerged(i), key))) {
                found.add(name(name) + ": its properties");
                return;
            }
        }
        if (!states(was.getMerged(i)).equals(states(is.getMerged(i)))) {
            found.add(name(name) + ": what it stands for");
        }
        if (!was.getPage(i).equals(is.getPage(i)) || !near(box(was.getWidget(i)), box(is.getWidget(i)))) {
            found.add(name(name) + ": its place");
        }
    }

    private static String text(PdfDictionary field, PdfName key) {
        var value = PdfReader.getPdfObject(field.get(key));
        return value == null ? "0" : value.toString();
    }

    /** Names of the states of a button; none for other fields. */
    private static Set<String> states(PdfDictionary field) {
        var looks = field.getAsDict(PdfName.AP);
        var normal = looks == null ? null : PdfReader.getPdfObject(looks.get(PdfName.N));
        var names = new TreeSet<String>();
        if (normal instanceof PdfDictionary states && !normal.isStream()) {
            states.getKeys().forEach(key -> names.add(key.toString()));
            names.remove("/Off");
        }
        return names;
    }

    private void laidOver(int page) {
        var boxes = boxes(written, page);
        for (var annotation : annotations(returned, page)) {
            var kind = annotation.getAsName(PdfName.SUBTYPE);
            if (PdfName.WIDGET.equals(kind)) {
                if (!boxes.removeIf(box -> near(box, box(annotation)))) {
                    found.add("page " + page + ": a field laid over it");
                }
            } else if (!PdfName.POPUP.equals(kind) && !(DRAWN.contains(kind) && inRoom(page, box(annotation)))) {
                found.add("page " + page + ": something laid over it ("
                        + (kind == null ? "of no kind" : PdfName.decodeName(kind.toString())) + ")");
            }
        }
        if (!boxes.isEmpty()) {
            found.add("page " + page + ": a field taken away");
        }
    }

    private static List<float[]> boxes(PdfReader reader, int page) {
        var boxes = new ArrayList<float[]>();
        annotations(reader, page).forEach(annotation -> boxes.add(box(annotation)));
        return boxes;
    }

    private static List<PdfDictionary> annotations(PdfReader reader, int page) {
        var array = reader.getPageN(page).getAsArray(PdfName.ANNOTS);
        var all = new ArrayList<PdfDictionary>();
        for (int i = 0; array != null && i < array.size(); i++) {
            var annotation = array.getAsDict(i);
            if (annotation != null) {
                all.add(annotation);
            }
        }
        return all;
    }

    /** Whether something stands within the room for a drawn signature. */
    private boolean inRoom(int page, float[] box) {
        var room = before.getFieldItem(AnswerSheet.DRAWN);
        if (room == null || room.getPage(0) != page) {
            return false;
        }
        var place = box(room.getWidget(0));
        return box[0] >= place[0] - SLACK
                && box[1] >= place[1] - SLACK
                && box[2] <= place[2] + SLACK
                && box[3] <= place[3] + SLACK;
    }

    private static boolean near(float[] one, float[] other) {
        for (int i = 0; i < one.length; i++) {
            if (!(Math.abs(one[i] - other[i]) <= SLACK)) {
                return false;
            }
        }
        return true;
    }

    private static float[] box(PdfDictionary annotation) {
        PdfArray rectangle = annotation.getAsArray(PdfName.RECT);
        var box = new float[4];
        Arrays.fill(box, Float.NaN);
        for (int i = 0; rectangle != null && i < Math.min(box.length, rectangle.size()); i++) {
            var number = rectangle.getAsNumber(i);
            box[i] = number == null ? Float.NaN : number.floatValue();
        }
        return new float[] {
            Math.min(box[0], box[2]), Math.min(box[1], box[3]), Math.max(box[0], box[2]), Math.max(box[1], box[3])
        };
    }

    /** Where the fields were written, by page. */
    Map<Integer, List<float[]>> places() {
        var places = new TreeMap<Integer, List<float[]>>();
        for (int page = 1; page <= written.getNumberOfPages(); page++) {
            places.put(page, boxes(written, page));
        }
        return places;
    }
}
