package fairflame.document.page;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfFormField;
import com.lowagie.text.pdf.PdfWriter;
import com.lowagie.text.pdf.RadioCheckField;
import com.lowagie.text.pdf.TextField;
import fairflame.Refusal;
import java.io.IOException;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The fields of a paper, page by page. What is typed into them is set in the reader's own Helvetica, never embedded. */
final class PdfEntries {
    private static final float SIZE = 11;
    private static final String TICKED = "Yes";

    private final PdfWriter writer;
    private final Map<String, PdfFormField> groups = new LinkedHashMap<>();
    private final Set<String> ended = new HashSet<>();

    PdfEntries(PdfWriter writer) {
        this.writer = writer;
    }

    void add(Entry entry, Rectangle box) {
        try {
            switch (entry.kind()) {
                case LINE -> writer.addAnnotation(told(line(entry, box).getTextField(), entry));
                case TICK ->
                    writer.addAnnotation(told(button(entry, box, TICKED).getFullField(), entry));
                case RADIO -> radio(entry, box);
                case SIGNATURE -> writer.addAnnotation(signature(entry, box));
                case FIXED -> writer.addAnnotation(fixed(entry, box));
            }
        } catch (IOException e) {
            throw new IllegalStateException("a field could not be drawn", e);
        }
    }

    /** Adds the groups of buttons of a page that is drawn. */
    void endPage() {
        groups.values().forEach(writer::addAnnotation);
        ended.addAll(groups.keySet());
        groups.clear();
    }

    private TextField line(Entry entry, Rectangle box) throws IOException {
        var field = new TextField(writer, box, entry.name());
        field.setFont(BaseFont.createFont(BaseFont.HELVETICA, BaseFont.WINANSI, BaseFont.NOT_EMBEDDED));
        field.setFontSize(SIZE);
        field.setTextColor(Ink.INK.color());
        field.setMaxCharacterLength(Entry.LONGEST);
        return field;
    }

    private RadioCheckField button(Entry entry, Rectangle box, String value) {
        var button = new RadioCheckField(writer, box, entry.name(), value);
        button.setCheckType(
                entry.kind() == Entry.Kind.RADIO ? RadioCheckField.TYPE_CIRCLE : RadioCheckField.TYPE_CROSS);
        button.setTextColor(Ink.INK.color());
        return button;
    }

    private void radio(Entry entry, Rectangle box) throws IOException {
        var button = button(entry, box, entry.value());
        if (ended.contains(entry.name())) {
            throw Refusal.notAllowed("paper", "buttons of '" + entry.name() + "' on two pages", "all on one page");
        }
        var group = groups.get(entry.name());
        if (group == null) {
            group = button.getRadioGroup(false, false);
            groups.put(entry.name(), group);
        }
        var kid = button.getKidField();
        kid.setUserName(entry.told());
        group.addKid(kid);
    }

    private PdfFormField signature(Entry entry, Rectangle box) {
        var field = PdfFormField.createSignature(writer);
        field.setFieldName(entry.name());
        field.setWidget(box, PdfAnnotation.HIGHLIGHT_INVERT);
        field.setFlags(PdfAnnotation.FLAGS_PRINT);
        return told(field, entry);
    }

    private PdfFormField fixed(Entry entry, Rectangle box) throws IOException {
        var field = new TextField(writer, box, entry.name());
        field.setFont(BaseFont.createFont(BaseFont.HELVETICA, BaseFont.WINANSI, BaseFont.NOT_EMBEDDED));
        field.setFontSize(SIZE);
        field.setText(entry.value());
        field.setVisibility(TextField.HIDDEN);
        field.setOptions(TextField.READ_ONLY);
        return field.getTextField();
    }

    private static PdfFormField told(PdfFormField field, Entry entry) {
        field.setUserName(entry.told());
        return field;
    }
}
