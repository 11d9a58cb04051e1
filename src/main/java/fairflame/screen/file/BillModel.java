package fairflame.screen.file;

import fairflame.Refusal;
import fairflame.invoice.Completion;
import fairflame.invoice.TestRecord;
import fairflame.quote.Line;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** The bill for all that is left, with the tests after the work, or for a part. Nothing is passed before somebody says so. */
public final class BillModel {
    private final FileModel file;
    private final Form whole = new Form();
    private final Form part = new Form();
    private final Map<String, BooleanProperty> passed = new LinkedHashMap<>();
    private final long leadsPlaced;

    /**
     * The bills of a file.
     *
     * @param leadsPlaced bypass leads not recorded as removed
     */
    public BillModel(FileModel file, long leadsPlaced) {
        this.file = file;
        this.leadsPlaced = leadsPlaced;
        var today = file.work().today().toString();
        whole.with("bill-day", today).beside("invoice for work of", "bill-day");
        part.with("part-day", today).beside("invoice for work of", "part-day");
        var known = file.job().completion().tests();
        for (var test : tests()) {
            var record = known.get(test);
            whole.with(test(test), record == null ? "" : record.result());
            passed.put(test, new SimpleBooleanProperty(record != null && record.passed()));
        }
        open().forEach(line -> part.beside("quantity of line " + line.id(), part(line)));
        open().forEach(line -> part.with(part(line), ""));
    }

    public Form whole() {
        return whole;
    }

    public Form part() {
        return part;
    }

    static String test(String letter) {
        return "test-" + letter;
    }

    static String part(Line line) {
        return "part-" + line.id();
    }

    /** Letters of the tests after the work. */
    public List<String> tests() {
        return file.job().agreed().tests();
    }

    /** Lines with something left to bill. */
    public List<Line> open() {
        return file.job().open().stream()
                .filter(line -> line.quantity().signum() > 0)
                .toList();
    }

    /** What is left of a line. */
    public BigDecimal left(Line line) {
        return line.quantity().subtract(file.job().billed().getOrDefault(line.id(), BigDecimal.ZERO));
    }

    public BooleanProperty passed(String test) {
        return passed.computeIfAbsent(test, letter -> new SimpleBooleanProperty(false));
    }

    /** What is missing before the work is complete, besides the tests on this card. */
    public List<String> missing() {
        return file.job().permit().missing().stream()
                .filter(words -> !words.startsWith("The result of test") && !words.startsWith("Every test lead"))
                .toList();
    }

    /** Bills all that is left as complete work. */
    public void invoice() {
        file.written(whole, "file.said.invoiced", () -> {
            var done = completion();
            var day = whole.day("bill-day");
            return progress -> {
                file.work().invoice(file.quote(), done, day, progress);
                return "";
            };
        });
    }

    /** What the register does not know; the rest it adds. */
    private Completion completion() {
        var known = file.job().completion();
        var tests = new LinkedHashMap<String, TestRecord>();
        passed.forEach((letter, ok) -> {
            if (ok.get() || !whole.isBlank(test(letter))) {
                tests.put(letter, new TestRecord(ok.get(), whole.text(test(letter))));
            }
        });
        return new Completion(
                known.permitNumber(),
                known.fitterName(),
                known.fitterLicence(),
                tests,
                known.pressureTest(),
                leadsPlaced == 0);
    }

    /** Fills in all that is left of every line, as far as it was done. */
    public void allThatWasDone() {
        var done = new TreeMap<String, BigDecimal>();
        file.job().actuals().work().rows().forEach(row -> done.put(row.line().id(), row.actual()));
        open().forEach(line -> part.with(
                part(line),
                ActualModel.plain(left(line)
                        .min(done.getOrDefault(line.id(), line.quantity()))
                        .max(BigDecimal.ZERO))));
    }

    /** Bills what was typed of each line. */
    public void billPart() {
        file.written(part, "file.said.part", () -> {
            var done = new TreeMap<String, BigDecimal>();
            for (var line : open()) {
                if (!part.isBlank(part(line)) && part.number(part(line)).signum() > 0) {
                    done.put(line.id(), part.number(part(line)));
                }
            }
            if (done.isEmpty()) {
                throw Refusal.missing("work to bill", "a quantity of at least one line");
            }
            var day = part.day("part-day");
            return progress -> {
                file.work().part(file.quote(), done, day, progress);
                return "";
            };
        });
    }
}
