package fairflame.catalog;

import fairflame.Refusal;
import java.util.Map;

/**
 * The text of one file of a shop's folder, already decoded.
 *
 * @param name file name inside the folder, with {@code /} between folder and file
 */
record FileText(String name, String text) {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final char REPLACEMENT = '\uFFFD';

    /** The file of that name; refused when it is absent, empty or was not saved as UTF-8. */
    static FileText in(Map<String, String> files, String name) {
        var text = files.get(name);
        if (text == null) {
            throw Refusal.missing("file " + name, "a text file of this name in the catalog folder");
        }
        // A spreadsheet program may write one mark in front; that one is harmless.
        var bare = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        if (bare.isBlank()) {
            throw Refusal.missing("content", "at least one entry").at(name);
        }
        return new FileText(name, readable(name, bare));
    }

    private static String readable(String name, String text) {
        for (int i = 0; i < text.length(); i++) {
            var mark = text.charAt(i);
            if (mark == BYTE_ORDER_MARK || mark == REPLACEMENT || mark == 0) {
                var line =
                        1 + text.substring(0, i).chars().filter(c -> c == '\n').count();
                throw Refusal.malformed("character", String.format("U+%04X", (int) mark), "text saved as UTF-8")
                        .at(name + " line " + line);
            }
        }
        return text;
    }
}
