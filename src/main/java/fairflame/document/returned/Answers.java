package fairflame.document.returned;

import com.lowagie.text.pdf.AcroFields;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import fairflame.Refusal;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What stands in the fields of a paper, by name of the field. */
public record Answers(Map<String, String> values) {
    private static final String OFF = "Off";

    public Answers {
        values = Map.copyOf(values);
    }

    /** Reads all fields; refused when a group of buttons shows two as chosen, or another than it keeps. */
    static Answers in(PdfReader reader) {
        var fields = reader.getAcroFields();
        var values = new TreeMap<String, String>();
        for (var name : fields.getAllFields().keySet()) {
            var value = fields.getField(name);
            values.put(name, value == null ? "" : value);
            if (isButton(fields.getFieldType(name))) {
                values.put(name, shown(fields.getFieldItem(name), name, values.getOrDefault(name, "")));
            }
        }
        return new Answers(values);
    }

    private static boolean isButton(int type) {
        return type == AcroFields.FIELD_TYPE_CHECKBOX || type == AcroFields.FIELD_TYPE_RADIOBUTTON;
    }

    /** What a reader sees has to be what the field keeps. */
    private static String shown(AcroFields.Item item, String name, String kept) {
        var on = new TreeSet<String>();
        for (int i = 0; i < item.size(); i++) {
            state(item.getWidget(i)).ifPresent(on::add);
        }
        var value = kept.equals(OFF) ? "" : kept;
        if (on.size() > 1) {
            throw Refusal.notAllowed("field '" + name + "'", String.join(" and ", on) + " are both chosen", "one");
        }
        if (!on.equals(value.isEmpty() ? new TreeSet<String>() : new TreeSet<>(java.util.Set.of(value)))) {
            throw Refusal.notAllowed(
                    "field '" + name + "'",
                    "shows " + told(on.stream().collect(Collectors.joining())) + ", keeps " + told(value),
                    "the same in both");
        }
        return value;
    }

    private static String told(String state) {
        return state.isEmpty() ? "nothing" : "'" + state + "'";
    }

    private static java.util.Optional<String> state(PdfDictionary widget) {
        var state = widget.getAsName(PdfName.AS);
        var text = state == null ? OFF : PdfName.decodeName(state.toString());
        return text.equals(OFF) ? java.util.Optional.empty() : java.util.Optional.of(text);
    }

    /** Text of a line, or value of the chosen button; empty for none. */
    public String text(String name) {
        return values.getOrDefault(name, "").strip();
    }

    public boolean ticked(String name) {
        return !text(name).isEmpty();
    }
}
