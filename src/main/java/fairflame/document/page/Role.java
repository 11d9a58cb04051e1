package fairflame.document.page;

import com.lowagie.text.pdf.PdfName;

/** What a block is to a reader that cannot see it. Standard structure types of PDF 1.7, 14.8.4. */
public enum Role {
    HEADING_1("H1"),
    HEADING_2("H2"),
    HEADING_3("H3"),
    PARAGRAPH("P"),
    LIST("L"),
    LIST_ITEM("LI"),
    TABLE("Table"),
    ROW("TR"),
    HEADER_CELL("TH"),
    CELL("TD"),
    SECTION("Sect"),
    FIGURE("Figure");

    private final PdfName tag;

    Role(String tag) {
        this.tag = new PdfName(tag);
    }

    PdfName tag() {
        return tag;
    }
}
