package fairflame.screen.file;

import fairflame.invoice.actual.ActualRow;
import fairflame.invoice.actual.Actuals;
import fairflame.invoice.actual.OutsideWork;
import fairflame.quote.LineKind;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Fold;
import fairflame.screen.kit.NumberPad;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import java.util.Objects;
import javafx.beans.property.Property;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Every signed line beside what was done and what was billed, with fields for hours and parts. */
final class WorkCard extends Card {
    private static final double LEAST_COLUMN = 130;
    private static final List<String> KINDS = List.of("labour", "part", "consumable", "subcontract");

    private final FileModel file;
    private final ActualModel model;
    private final StringProperty typed = new SimpleStringProperty("");
    private Property<String> target = new SimpleStringProperty("");

    WorkCard(FileModel file, Words words) {
        super(words, words.say("file.work"));
        this.file = file;
        this.model = new ActualModel(file);
        typed.bindBidirectional(target);
        var told = model.rows();
        for (var row : file.job().actuals().work().rows()) {
            add(row(
                    row,
                    told.stream()
                            .anyMatch(each -> each.line().id().equals(row.line().id()))));
        }
        add(Texts.rule("rule"));
        totals();
        due();
        outside();
        add(slip(model.form(), "actual-note"), whole(model.form()));
        add(keys(key("actual-keep", model::keep, "act"), key("actual-as-signed", model::asSigned)));
        add(new Fold(
                "actual-pad",
                words.say("file.actual-pad"),
                () -> new NumberPad(typed, new SimpleStringProperty(""), List.of(), List.of(), words)));
        if (!model.tasks().isEmpty()) {
            add(new Fold("actual-tasks", words.say("file.actual-tasks"), this::tasks));
        }
        history();
    }

    private Node row(ActualRow row, boolean counted) {
        var line = row.line();
        var billed = file.job().billed().get(line.id());
        var money = file.job().billedAmounts().get(line.id());
        var signed = fact("file.signed", quantity(line.quantity(), line.unit()), words.amount(line.net()));
        Node done = counted ? field(row) : fact("file.done", "\u2013", "");
        var bill = billed == null
                ? fact("file.billed", "\u2013", "")
                : fact("file.billed", quantity(billed, line.unit()), words.amount(Objects.requireNonNull(money)));
        var box = Texts.column(
                4, Texts.words(line.description(), "semi"), new Columns(LEAST_COLUMN, 12, List.of(signed, done, bill)));
        if (row.difference().signum() > 0 && row.told()) {
            beyond(row, box);
        }
        box.setPadding(new Insets(4, 0, 4, 0));
        return box;
    }

    /** More than signed: who bears it. */
    private void beyond(ActualRow row, VBox box) {
        var id = row.line().id();
        var bears = new SimpleBooleanProperty(model.borne(id));
        bears.addListener((property, before, now) -> model.bear(id, now));
        box.getChildren()
                .addAll(
                        Texts.words(
                                words.say(
                                        row.beyond().signum() > 0 ? "file.beyond" : "file.beyond-covered",
                                        quantity(row.difference(), row.line().unit())),
                                row.beyond().signum() > 0 ? "amber" : "moss"),
                        toggle("own-cost-" + id, words.say("file.own-cost"), bears));
    }

    private VBox fact(String key, String quantity, String amount) {
        return Texts.column(
                2,
                Texts.words(words.say(key), "small", "slate"),
                Texts.words(quantity, "figure"),
                Texts.words(amount, "figure", "slate"));
    }

    private String quantity(java.math.BigDecimal quantity, String unit) {
        return words.number(quantity) + " " + words.sayOr("unit." + unit, unit);
    }

    private Slip field(ActualRow row) {
        var field = ActualModel.field(row);
        var slip = slip(model.form(), field, words.say("file.done"));
        slip.prompt(ActualModel.plain(row.line().quantity()));
        watch(slip, model.form().value(field));
        return slip;
    }

    /** The number pad types into the field that was entered last. */
    private void watch(Slip slip, StringProperty value) {
        slip.field().focusedProperty().addListener((property, before, now) -> {
            if (now) {
                typed.unbindBidirectional(target);
                target = value;
                typed.bindBidirectional(target);
            }
        });
    }

    private void totals() {
        var work = file.job().actuals().work();
        add(pair(words.say("file.work-signed"), words.amount(work.signed())));
        add(pair(words.say("file.work-done"), words.amount(work.actual()), "semi"));
        add(Texts.words(
                words.say("file.work-most", words.amount(work.most()), String.valueOf(work.tolerance())),
                "small",
                "slate"));
    }

    private void due() {
        var work = file.job().actuals().work();
        var reasons = work.needsChangeOrder();
        if (!reasons.isEmpty()) {
            add(Texts.words(words.say("file.change-due"), "oxide", "strong"));
            reasons.forEach(reason -> add(Texts.words(reason, "oxide")));
        }
        work.undone()
                .forEach(row ->
                        add(Texts.words(words.say("file.undone", row.line().description()), "oxide")));
    }

    private void outside() {
        file.job().actuals().latest().map(Actuals::outside).orElse(List.of()).forEach(this::known);
        add(new Fold("outside", words.say("file.outside"), () -> {
            var bears = new SimpleBooleanProperty(false);
            bears.addListener((property, before, now) -> model.bearOutside(now));
            return Texts.column(
                    Texts.GAP,
                    slip(model.form(), "outside-words"),
                    one("outside-kind", "kind.", KINDS, model.kind()),
                    slip(model.form(), "outside-worth"),
                    toggle("outside-own-cost", words.say("file.own-cost"), bears));
        }));
    }

    private void known(OutsideWork outside) {
        add(pair(
                words.say(
                        outside.borne() ? "file.outside-borne" : "file.outside-known",
                        outside.words(),
                        words.sayOr(
                                "kind." + outside.kind().word(), outside.kind().word())),
                words.amount(outside.worth())));
        var place = file.job()
                .actuals()
                .latest()
                .map(Actuals::outside)
                .orElse(List.of())
                .indexOf(outside);
        add(keys(key("outside-back-" + place, words.say("file.outside-back"), () -> model.takeBack(outside))));
    }

    private Node tasks() {
        var slips = model.tasks().stream()
                .map(task -> slip(model.form(), ActualModel.task(task), title(task)))
                .toList();
        slips.forEach(slip -> watch(slip, slip.field().textProperty()));
        return Texts.column(
                Texts.GAP,
                Texts.words(words.say("file.actual-tasks-why"), "small", "slate"),
                new Columns(LEAST * 2, 12, slips));
    }

    private String title(String task) {
        return file.job().agreed().signed().taken().work().stream()
                .filter(work -> work.task().equals(task))
                .findFirst()
                .map(work -> words.say("file.task-hours", work.title()))
                .orElse(task);
    }

    private void history() {
        var states = file.job().actuals().history();
        for (int i = states.size() - 1; i >= 0; i--) {
            var state = states.get(i);
            add(Texts.words(
                    words.say("file.told-by", state.by(), words.moment(state.at()))
                            + (state.note().isEmpty() ? "" : ": " + state.note()),
                    "small",
                    "slate"));
        }
    }

    static List<String> kinds() {
        return List.of(
                LineKind.LABOUR.word(), LineKind.PART.word(), LineKind.CONSUMABLE.word(), LineKind.SUBCONTRACT.word());
    }
}
