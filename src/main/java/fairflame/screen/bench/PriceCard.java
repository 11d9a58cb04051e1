package fairflame.screen.bench;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.scene.layout.VBox;

/** What the price depends on besides the repair: trip zone, conditions of the site, discount, a fee already paid. */
final class PriceCard extends VBox {
    private static final double LEAST = 150;

    PriceCard(BenchModel model, Words words) {
        super(12);
        var zones = new Chips();
        model.work()
                .zones()
                .forEach(zone -> zones.one(
                        "zone-" + zone.id(),
                        zone.title(),
                        zone.id().equals(model.draft().get("price.zone")),
                        () -> model.history().change(draft -> draft.with("price.zone", zone.id()))));
        var conditions = new Chips();
        model.work()
                .timeConditions()
                .forEach(condition -> conditions.any(
                        "site-" + condition.id(),
                        words.sayOr("site." + condition.id(), condition.title()),
                        ReadingCard.set(model.draft(), "price.conditions").contains(condition.id()),
                        on -> model.history()
                                .change(draft -> draft.with(
                                        "price.conditions",
                                        Chips.toggled(
                                                ReadingCard.set(draft, "price.conditions"), condition.id(), on)))));
        getChildren()
                .addAll(
                        Texts.words(words.say("step.price"), "large", "strong"),
                        Texts.words(words.say("price.zone"), "small", "slate"),
                        zones,
                        Texts.words(words.say("price.conditions"), "small", "slate"),
                        conditions,
                        new Columns(
                                LEAST,
                                12,
                                List.of(
                                        slip(model, words, "price.discountPercent"),
                                        slip(model, words, "price.discountAmount"),
                                        slip(model, words, "price.discountReason"),
                                        slip(model, words, "price.diagnosisPaid"),
                                        slip(model, words, "price.diagnosisPaidOn"),
                                        slip(model, words, "price.taxRate"))));
    }

    private static Slip slip(BenchModel model, Words words, String field) {
        return new Slip(field, words.say(field), model.typed(field), model.allowed(field));
    }
}
