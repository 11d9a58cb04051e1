package fairflame.screen.stock;

import fairflame.invoice.report.TimeComparison;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.math.BigDecimal;
import javafx.geometry.Insets;
import javafx.scene.layout.VBox;

/** Each task's hours as worked beside its standard time, and the time they suggest once there are enough jobs. */
final class HoursCard extends VBox {
    private final HoursModel model;
    private final Words words;

    HoursCard(StockModel stock, Words words, Ties ties) {
        super(12);
        this.model = new HoursModel(stock.work(), stock::changed);
        this.words = words;
        ties.on(stock.changes(), count -> fill());
    }

    private void fill() {
        getChildren()
                .setAll(
                        Texts.words(words.say("stock.hours"), "large", "strong"),
                        Texts.words(words.say("hours.note", TimeComparison.ENOUGH_JOBS), "slate"));
        var comparisons = model.comparisons();
        if (comparisons.isEmpty()) {
            getChildren().add(Texts.words(words.say("hours.none"), "slate"));
        }
        comparisons.forEach(comparison -> getChildren().add(card(comparison)));
    }

    private VBox card(TimeComparison comparison) {
        var task = comparison.task();
        var title = task + "  " + model.title(task)
                + (comparison.condition().isEmpty()
                        ? ""
                        : "  \u00B7  " + comparison.condition().replace('-', ' '));
        var box = Texts.column(
                Texts.GAP,
                Texts.words(title, "semi"),
                Texts.words(words.say(
                        "hours.figures",
                        comparison.jobs(),
                        hours(comparison.median()),
                        hours(comparison.lower()),
                        hours(comparison.upper()),
                        hours(comparison.standard()))),
                new HoursBar(comparison));
        model.standing(task)
                .filter(decision -> decision.factor().compareTo(BigDecimal.ONE) != 0)
                .ifPresent(decision -> box.getChildren()
                        .add(Texts.words(
                                words.say(
                                        "hours.decided",
                                        hours(model.times(task, decision.factor())),
                                        words.day(decision.on()),
                                        decision.who(),
                                        decision.reason()),
                                "lagoon")));
        deciding(comparison, box);
        box.getStyleClass().add("card");
        box.setPadding(new Insets(10, 14, 12, 14));
        box.setId("hours-" + task + "-" + comparison.condition());
        return box;
    }

    private void deciding(TimeComparison comparison, VBox box) {
        var task = comparison.task();
        var suggestion = model.suggestion(comparison);
        var standing = model.standing(task).filter(decision -> decision.factor().compareTo(BigDecimal.ONE) != 0);
        if (suggestion.isEmpty() && standing.isEmpty()) {
            var few = comparison.jobs() < TimeComparison.ENOUGH_JOBS;
            box.getChildren().add(Texts.words(words.say(few ? "hours.few" : "hours.fits"), "small", "slate"));
            return;
        }
        box.getChildren()
                .add(new Slip("hours-why-" + task, words.say("edit.why"), model.why(task), model.refused(task)));
        suggestion.ifPresent(factor -> {
            var accept = Texts.button(
                    words.say("hours.accept", hours(model.standard(task)), hours(model.times(task, factor))),
                    () -> model.accept(comparison),
                    "act");
            accept.setId("hours-accept-" + task);
            box.getChildren().add(accept);
        });
        standing.ifPresent(decision -> {
            var back = Texts.button(words.say("hours.back", hours(model.standard(task))), () -> model.takeBack(task));
            back.setId("hours-back-" + task);
            box.getChildren().add(back);
        });
    }

    private static String hours(BigDecimal hours) {
        return hours.setScale(2, java.math.RoundingMode.HALF_UP).toPlainString();
    }
}
