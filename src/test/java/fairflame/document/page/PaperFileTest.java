package fairflame.document.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;

class PaperFileTest {
    private static final Style STYLE = new Style(Face.REGULAR, 10, 13, Ink.INK);

    private static final Running RUNNING = new Running() {
        @Override
        public Block head(int page, int pages) {
            return Paragraph.of("head " + page, STYLE);
        }

        @Override
        public Block foot(int page, int pages) {
            return Paragraph.of("page " + page + " of " + pages, STYLE);
        }
    };

    private static byte[] written(String words) {
        var info = new PaperInfo("Quote Q-1", "Sandpiper Pool Heat", "en-US", LocalDate.of(2026, 5, 14));
        var body = Stack.of(
                Paragraph.heading(Role.HEADING_1, "Title", STYLE.with(Face.BOLD)),
                Paragraph.of(words + " \u2713 \u00B5A", STYLE),
                new Grid(
                        Columns.equal(2, 8),
                        List.of(Row.of(Paragraph.of("a", STYLE), Paragraph.of("b", STYLE))),
                        List.of(Row.of(Paragraph.of("c", STYLE), Paragraph.of("d", STYLE))),
                        Grid.Kind.TABLE),
                new Picture(new Drawing() {
                    @Override
                    public double height(double width) {
                        return 20;
                    }

                    @Override
                    public void draw(Pen pen, Place place) {
                        pen.words("drawn", STYLE, place.x(), place.top() + 10);
                    }

                    @Override
                    public String told() {
                        return "a picture in words";
                    }
                }));
        return new PaperFile(info, PageFormat.LETTER, RUNNING).write(body);
    }

    @Test
    void theSameInputGivesTheSameBytes() {
        assertThat(written("same")).isEqualTo(written("same"));
    }

    @Test
    void anotherInputGivesAnotherFileId() throws IOException {
        assertThat(id(written("one"))).hasSize(32).isNotEqualTo(id(written("two")));
    }

    private static String id(byte[] file) {
        var text = new String(file, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf("/ID");
        return text.substring(text.indexOf('<', at) + 1, text.indexOf('>', at));
    }

    @Test
    void theFileStaysReadableAfterItsIdWasFixed() throws IOException {
        try (var document = Loader.loadPDF(written("words"))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
        }
    }

    @Test
    void saysTitleAuthorLanguageAndDate() throws IOException {
        try (var document = Loader.loadPDF(written("words"))) {
            var info = document.getDocumentInformation();
            assertThat(info.getTitle()).isEqualTo("Quote Q-1");
            assertThat(info.getAuthor()).isEqualTo("Sandpiper Pool Heat");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
            assertThat(info.getCreationDate().get(Calendar.YEAR)).isEqualTo(2026);
            assertThat(info.getCreationDate().get(Calendar.DAY_OF_MONTH)).isEqualTo(14);
            assertThat(info.getModificationDate()).isEqualTo(info.getCreationDate());
        }
    }

    @Test
    void embedsEveryFontThatItUses() throws IOException {
        try (var document = Loader.loadPDF(written("words"))) {
            for (var page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    var font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getName()).matches("[A-Z]{6}\\+AtkinsonHyperlegible(Next|Mono).*");
                }
            }
        }
    }

    @Test
    void tellsAReaderWhoCannotSeeItWhatEachPartIs() throws IOException {
        try (var document = Loader.loadPDF(written("words"))) {
            var root = document.getDocumentCatalog().getStructureTreeRoot();
            var types = new ArrayList<String>();
            collect(root, types);
            assertThat(types)
                    .containsExactly(
                            "Document",
                            "H1",
                            "P",
                            "Table",
                            "TR",
                            "TH",
                            "P",
                            "TH",
                            "P",
                            "TR",
                            "TD",
                            "P",
                            "TD",
                            "P",
                            "Figure:a picture in words");
        }
    }

    private static void collect(PDStructureNode node, List<String> types) {
        for (var kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                var told = element.getAlternateDescription();
                types.add(element.getStructureType() + (told == null ? "" : ":" + told));
                collect(element, types);
            }
        }
    }

    @Test
    void leavesNothingOutsideTheStructure() throws IOException {
        try (var document = Loader.loadPDF(written("words"))) {
            int depth = 0;
            var untagged = new ArrayList<String>();
            for (var token : new PDFStreamParser(document.getPage(0)).parse()) {
                if (token instanceof Operator operator) {
                    var name = operator.getName();
                    depth += name.equals("BDC") || name.equals("BMC") ? 1 : name.equals("EMC") ? -1 : 0;
                    if (depth == 0 && List.of("Tj", "TJ", "S", "f").contains(name)) {
                        untagged.add(name);
                    }
                }
            }
            assertThat(untagged).isEmpty();
        }
    }

    @Test
    void usesOnlyTheFacesOfTheBundledFamily() {
        var names = new HashSet<String>();
        for (var face : Face.values()) {
            names.add(Objects.requireNonNull(face.font().getPostscriptFontName()));
        }
        assertThat(names).hasSize(Face.values().length).allMatch(name -> name.startsWith("AtkinsonHyperlegible"));
    }
}
