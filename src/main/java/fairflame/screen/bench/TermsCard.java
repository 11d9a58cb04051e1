package fairflame.screen.bench;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.scene.layout.VBox;

/** What the repair depends on besides the readings: the gas fitter, the old part, facts that the technician states. */
final class TermsCard extends VBox {
    private static final double LEAST = 150;

    private final BenchModel model;
    private final Words words;

    TermsCard(BenchModel model, Words words) {
        super(12);
        this.model = model;
        this.words = words;
        var facts = new Chips();
        model.work()
                .facts()
                .forEach(fact -> facts.any(
                        "fact-" + fact.id(),
                        words.sayOr("fact." + fact.id(), fact.title()),
                        ReadingCard.set(model.draft(), "repair.facts").contains(fact.id()),
                        on -> model.history()
                                .change(draft -> draft.with(
                                        "repair.facts",
                                        Chips.toggled(ReadingCard.set(draft, "repair.facts"), fact.id(), on)))));
        getChildren()
                .addAll(
                        Texts.words(words.say("step.terms"), "large", "strong"),
                        Texts.words(words.say("terms.fitter"), "small", "slate"),
                        new Columns(
                                LEAST, 12, Terms.FITTER.stream().map(this::slip).toList()),
                        Texts.words(words.say("terms.facts"), "small", "slate"),
                        facts,
                        new Columns(LEAST, 12, List.of(slip("repair.partYears"), slip("repair.raisedDelivery"))));
    }

    private Slip slip(String field) {
        return new Slip(field, words.say(field, Terms.symbol(field)), model.typed(field), model.allowed(field));
    }
}
