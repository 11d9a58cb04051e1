package fairflame.screen.office;

import fairflame.invoice.report.ShopReport;
import fairflame.invoice.report.TimeComparison;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.SpreadBar;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.math.BigDecimal;
import javafx.geometry.Insets;
import javafx.scene.layout.VBox;

/** Hours worked against standard times; a suggested time changes nothing before a person accepts it with a reason. */
final class HoursCard extends VBox {
    private static final double ROOM = 1.04;
    /** Least and most that a whole line stands for, in standard times of its own task. */
    private static final double LEAST = 1.3;

    private static final double MOST = 3;

    private final FiguresModel model;
    private final Words words;

    HoursCard(FiguresModel model, ShopReport report, Words words) {
        super(10);
        this.model = model;
        this.words = words;
        getStyleClass().add("card");
        setPadding(new Insets(14));
        getChildren()
                .addAll(
                        Texts.words(words.say("figures.hours"), "large", "strong"),
                        Texts.words(words.say("figures.hours-note"), "small", "slate"));
        var widest = report.hours().stream()
                .mapToDouble(row -> row.upper().doubleValue() / row.standard().doubleValue())
                .max()
                .orElse(1);
        var standards = Math.min(MOST, Math.max(LEAST, widest)) * ROOM;
        report.hours().forEach(row -> getChildren().add(row(row, row.standard().doubleValue() * standards)));
        if (report.hours().isEmpty()) {
            getChildren().add(Texts.words(words.say("figures.nothing"), "slate"));
        }
    }

    private VBox row(TimeComparison row, double full) {
        var condition = row.condition().isEmpty()
                ? ""
                : ", "
                        + words.sayOr(
                                "condition." + row.condition(), row.condition().replace('-', ' '));
        var box = Texts.column(
                3,
                Texts.words(model.name(row.task()) + condition, "semi"),
                new SpreadBar(new SpreadBar.Values(
                        row.lower().doubleValue(),
                        row.median().doubleValue(),
                        row.upper().doubleValue(),
                        row.standard().doubleValue(),
                        full)),
                Texts.words(
                        words.say(
                                "figures.spread",
                                row.jobs(),
                                words.number(row.median()),
                                words.number(row.lower()),
                                words.number(row.upper()),
                                words.number(row.standard())),
                        "small"));
        row.suggestion().ifPresent(factor -> suggest(box, row, factor));
        if (row.condition().isEmpty()) {
            model.decision(row.task())
                    .ifPresent(decision -> box.getChildren()
                            .add(Texts.words(
                                    words.say(
                                            "figures.decided",
                                            words.number(decision.factor()),
                                            decision.who(),
                                            words.day(decision.on()),
                                            decision.reason()),
                                    "small",
                                    "moss")));
        }
        return box;
    }

    private void suggest(VBox box, TimeComparison row, BigDecimal factor) {
        box.getChildren().add(Texts.words(words.say("figures.suggests", words.number(factor)), "amber"));
        if (!FiguresModel.acceptable(row)) {
            box.getChildren().add(Texts.words(words.say("figures.look-at-condition"), "small", "slate"));
            return;
        }
        var typed = model.reason(row.task());
        var accept =
                Texts.button(words.say("figures.accept", words.number(factor)), () -> model.accept(row.task(), factor));
        accept.setId("accept-" + row.task());
        box.getChildren()
                .add(Texts.column(
                        Texts.GAP,
                        new Slip("reason-" + row.task(), words.say("figures.reason"), typed.value(), typed.refusal()),
                        Cards.keys(accept)));
    }
}
