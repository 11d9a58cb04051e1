package fairflame.document.page;

import java.time.LocalDate;

/**
 * What the file says about itself.
 *
 * @param language tag of BCP 47, such as {@code en-US}
 * @param made printed in the file's properties, so that the same paper has the same bytes
 */
public record PaperInfo(String title, String author, String language, LocalDate made) {}
