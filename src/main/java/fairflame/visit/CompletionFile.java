package fairflame.visit;

import fairflame.Refusal;
import fairflame.invoice.Completion;
import fairflame.invoice.PressureTest;
import fairflame.invoice.TestRecord;
import fairflame.store.TextFile;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Reads the record of finished work from its JSON text. Format: docs/formats/completion.schema.json. */
public final class CompletionFile {
    /** The format's name and edition, in every file. */
    public static final String FORMAT = "fairflame-completion-1";

    private static final Set<String> MEDIA = Set.of("air", "nitrogen", "carbon dioxide", "inert gas");

    /** Nothing on record yet. */
    public static final Completion NOTHING = new Completion("", "", "", Map.of(), Optional.empty(), false);

    /** No work was done on the heater, as after a diagnosis, and no test lead is left. */
    public static final Completion NO_WORK = new Completion("", "", "", Map.of(), Optional.empty(), true);

    private CompletionFile() {}

    /** The record in a file; a refusal names the file. */
    public static Completion read(Path file) {
        var text = TextFile.read(file);
        try {
            return read(text);
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
    }

    /** The record in a text; refused as a whole when any field is. */
    public static Completion read(String json) {
        var top = Fields.of(json).only("format", "permitNumber", "fitter", "tests", "pressureTest", "leadsRemoved");
        top.word("format", Set.of(FORMAT));
        var fitter = top.optionalObject("fitter").map(fields -> fields.only("name", "licence"));
        return new Completion(
                top.textOr("permitNumber", ""),
                fitter.map(fields -> fields.text("name")).orElse(""),
                fitter.map(fields -> fields.text("licence")).orElse(""),
                top.optionalObject("tests").map(CompletionFile::tests).orElse(Map.of()),
                top.optionalObject("pressureTest").map(CompletionFile::pressure),
                top.flag("leadsRemoved", false));
    }

    private static Map<String, TestRecord> tests(Fields fields) {
        var tests = new TreeMap<String, TestRecord>();
        for (var letter : fields.names()) {
            if (!letter.matches("[A-Z]")) {
                throw Refusal.unknown("field " + fields.path(letter), letter, "the letter of a test, A to Z");
            }
            var test = fields.object(letter).only("passed", "result");
            if (!test.has("passed")) {
                throw Refusal.missing("field " + test.path("passed"), "true, false");
            }
            tests.put(letter, new TestRecord(test.flag("passed", false), test.text("result")));
        }
        return tests;
    }

    private static PressureTest pressure(Fields fields) {
        fields.only("psi", "minutes", "gaugeTopPsi", "medium", "witness", "held");
        if (!fields.has("held")) {
            throw Refusal.missing("field " + fields.path("held"), "true, false");
        }
        return new PressureTest(
                psi(fields, "psi"),
                fields.whole("minutes", 1, 10_000)
                        .orElseThrow(() -> Refusal.missing("field " + fields.path("minutes"), "1 to 10000")),
                psi(fields, "gaugeTopPsi"),
                fields.word("medium", MEDIA),
                fields.textOr("witness", ""),
                fields.flag("held", false));
    }

    private static BigDecimal psi(Fields fields, String name) {
        var text = fields.text(name);
        if (!text.matches("\\d{1,3}(\\.\\d{1,2})?\\s*psi")) {
            throw Refusal.malformed("field " + fields.path(name), text, "a pressure such as 3psi, 0 to 999 psi");
        }
        return new BigDecimal(text.replaceFirst("\\s*psi$", ""));
    }
}
