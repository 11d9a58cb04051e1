package fairflame.screen.file;

import fairflame.invoice.actual.ActualEntry;
import fairflame.invoice.actual.ActualRow;
import fairflame.invoice.actual.OutsideWork;
import fairflame.quote.LineKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Hours and parts as they are typed in. */
public final class ActualModel {
    private static final Set<LineKind> COUNTED =
            Set.of(LineKind.PART, LineKind.CONSUMABLE, LineKind.LABOUR, LineKind.SUBCONTRACT);
    private static final String VISIT = "visit";

    private final FileModel file;
    private final Form form = new Form();
    private final Set<String> borne = new TreeSet<>();
    private final Set<String> tasks = new TreeSet<>();
    private final StringProperty kind = new SimpleStringProperty(LineKind.LABOUR.word());
    private boolean outsideBorne;

    public ActualModel(FileModel file) {
        this.file = file;
        rows().forEach(row -> {
            form.with(field(row), row.told() ? plain(row.actual()) : "");
            form.beside("quantity of line " + row.line().id(), field(row));
            if (row.borne()) {
                borne.add(row.line().id());
            }
        });
        var told = file.job().actuals().latest();
        file.job().agreed().signed().taken().work().forEach(each -> {
            if (tasks.add(each.task())) {
                form.with(
                        task(each.task()),
                        told.map(state -> state.tasks().get(each.task()))
                                .map(ActualModel::plain)
                                .orElse(""));
                form.beside("hours of task " + each.task(), task(each.task()));
            }
        });
        form.beside("worth of", "outside-worth").beside("work outside", "outside-words");
    }

    public Form form() {
        return form;
    }

    /** The lines of which hours or pieces can be told. */
    public List<ActualRow> rows() {
        return file.job().actuals().work().rows().stream()
                .filter(row -> COUNTED.contains(row.line().kind())
                        && !row.line().unit().equals(VISIT))
                .toList();
    }

    /** Ids of the signed tasks. */
    public List<String> tasks() {
        return List.copyOf(tasks);
    }

    static String field(ActualRow row) {
        return "actual-" + row.line().id();
    }

    static String task(String id) {
        return "task-" + id;
    }

    /** Kind of the work outside, as in data files. */
    public StringProperty kind() {
        return kind;
    }

    public boolean borne(String line) {
        return borne.contains(line);
    }

    public void bear(String line, boolean yes) {
        if (yes) {
            borne.add(line);
        } else {
            borne.remove(line);
        }
    }

    public void bearOutside(boolean yes) {
        outsideBorne = yes;
    }

    /** Fills every field that is still blank with the signed quantity. */
    public void asSigned() {
        rows().stream()
                .filter(row -> form.isBlank(field(row)))
                .forEach(row -> form.with(field(row), plain(row.line().quantity())));
    }

    /** Keeps what is typed. */
    public boolean keep() {
        return file.act(form, "file.said.actual", () -> file.work().actual(file.quote(), entry()));
    }

    /** Takes work outside back. */
    public boolean takeBack(OutsideWork outside) {
        return file.act(form, "file.said.actual", () -> {
            var none = new OutsideWork(
                    outside.words(), outside.kind(), outside.worth().minus(outside.worth()), false);
            file.work()
                    .actual(
                            file.quote(),
                            new ActualEntry(
                                    java.util.Map.of(),
                                    List.of(none),
                                    Set.of(),
                                    Set.of(),
                                    java.util.Map.of(),
                                    form.words("actual-note")));
        });
    }

    private ActualEntry entry() {
        var quantities = new TreeMap<String, BigDecimal>();
        rows().stream()
                .filter(row -> !form.isBlank(field(row)))
                .forEach(row -> quantities.put(row.line().id(), form.number(field(row))));
        var hours = new TreeMap<String, BigDecimal>();
        tasks.stream()
                .filter(task -> !form.isBlank(task(task)))
                .forEach(task -> hours.put(task, form.number(task(task))));
        var charged = rows().stream()
                .filter(row -> row.borne() && !borne.contains(row.line().id()))
                .map(row -> row.line().id())
                .toList();
        return new ActualEntry(
                quantities, outside(), Set.copyOf(borne), Set.copyOf(charged), hours, form.text("actual-note"));
    }

    private List<OutsideWork> outside() {
        if (form.isBlank("outside-words") && form.isBlank("outside-worth")) {
            return List.of();
        }
        var word = kind.get();
        var chosen = java.util.Arrays.stream(LineKind.values())
                .filter(each -> each.word().equals(word))
                .findFirst()
                .orElse(LineKind.LABOUR);
        var currency = file.job().agreed().signed().quote().currency();
        return List.of(new OutsideWork(
                form.words("outside-words"), chosen, form.money("outside-worth", currency), outsideBorne));
    }

    static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}
