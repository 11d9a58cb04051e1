package fairflame.catalog;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the tables that tasks refer to: {@code tests.csv}, {@code warranty.yaml}, {@code joints.yaml}. */
final class TablesFile {
    static final String TESTS = "tests.csv";
    static final String WARRANTIES = "warranty.yaml";
    static final String JOINTS = "joints.yaml";

    private TablesFile() {}

    static List<AfterTest> tests(Map<String, String> files, Problems problems) {
        return problems.attempt(() -> CsvTable.rows(
                        FileText.in(files, TESTS), List.of("letter", "title", "pass", "plain", "source"), List.of()))
                .map(rows -> {
                    problems.duplicateRows("test", "letter", rows);
                    return problems.each(rows, TablesFile::test);
                })
                .orElse(List.of());
    }

    private static AfterTest test(CsvRow row) {
        return new AfterTest(
                row.id("letter"), row.text("title"), row.text("pass"), row.text("plain"), row.text("source"));
    }

    static List<Warranty> warranties(Map<String, String> files, Problems problems) {
        return entries(files, WARRANTIES, "warranties", problems).stream()
                .flatMap(entry -> problems.attempt(() -> warranty(entry)).stream())
                .toList();
    }

    private static Warranty warranty(YamlEntry entry) {
        entry.only("id", "title", "partsMonths", "labourDays", "words", "source");
        return new Warranty(
                entry.read("id", Fields::id),
                entry.text("title"),
                entry.read("partsMonths", text -> Fields.whole(text, 0, 600)),
                entry.read("labourDays", text -> Fields.whole(text, 0, 36500)),
                entry.text("words"),
                entry.text("source"));
    }

    static List<JointKind> joints(Map<String, String> files, Problems problems) {
        return entries(files, JOINTS, "joints", problems).stream()
                .flatMap(entry -> problems.attempt(() -> joint(entry)).stream())
                .toList();
    }

    private static JointKind joint(YamlEntry entry) {
        entry.only("id", "title", "use", "never", "how", "source");
        entry.field("use");
        return new JointKind(
                entry.read("id", Fields::id),
                entry.text("title"),
                Set.copyOf(entry.texts("use")),
                Set.copyOf(entry.texts("never")),
                entry.text("how"),
                entry.text("source"));
    }

    /** The entries of a file with one list in it. */
    static List<YamlEntry> entries(Map<String, String> files, String name, String list, Problems problems) {
        var entries = problems.attempt(() ->
                        YamlEntry.parse(FileText.in(files, name)).only(list).items(list))
                .orElse(List.of());
        problems.duplicateEntries(list, "id", entries);
        return entries;
    }
}
