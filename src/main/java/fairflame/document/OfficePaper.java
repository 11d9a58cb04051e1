package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.PageFormat;
import fairflame.document.page.PaperFile;
import fairflame.document.page.PaperInfo;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The frame of the papers that the office makes: letterhead, heading, numbered pages. */
final class OfficePaper {
    private final PaperText text;
    private final PageFormat format;
    private final LocalDate made;

    OfficePaper(PaperText text, PageFormat format, LocalDate made) {
        this.text = text;
        this.format = format;
        this.made = made;
    }

    /**
     * The file's bytes.
     *
     * @param title heading and name of the paper
     * @param addressee beside the seller on later pages
     */
    byte[] write(TitleBlock heading, String title, String addressee, List<Block> content) {
        var company = text.company();
        var blocks = new ArrayList<Block>();
        blocks.add(Letterhead.of(company.seller(), company.licence(), company));
        blocks.add(new Space(14));
        blocks.add(heading.block());
        blocks.addAll(content);
        var name = title + "  \u00B7  " + text.figures().date(made);
        var info = new PaperInfo(title, company.seller().name(), text.language(), made);
        return new PaperFile(info, format, new RunningLines(company.seller().name(), addressee, name, text))
                .write(new Stack(blocks));
    }
}
