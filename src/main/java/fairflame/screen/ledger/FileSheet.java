package fairflame.screen.ledger;

import fairflame.agreement.SignedRevision;
import fairflame.screen.file.FileCards;
import fairflame.screen.file.FileModel;
import fairflame.screen.file.RepriceCard;
import fairflame.screen.file.RepriceModel;
import fairflame.screen.file.Section;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.visit.JobFile;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** All papers of one visit on one sheet: what has to happen next, and everything the office does for it. */
final class FileSheet extends VBox {
    private final LedgerModel model;
    private final Words words;

    FileSheet(LedgerModel model, LedgerWork.File file, Words words, LedgerView.Ways ways) {
        super(14);
        this.model = model;
        this.words = words;
        getStyleClass().add("sheet");
        setPadding(new Insets(20));
        getChildren().addAll(head(file), keys(file, ways), said("ledger-said"), Texts.rule("rule-strong"));
        file.job().ifPresentOrElse(job -> signed(file, job), () -> unsigned(file));
    }

    private VBox head(LedgerWork.File file) {
        var entry = model.entry();
        return Texts.column(
                2,
                Texts.words(entry.map(LedgerWork.Entry::customer).orElse(file.visit()), "heading"),
                Texts.words(
                        entry.map(found -> words.say("next." + LedgerView.key(found.next())))
                                        .orElse("")
                                + "  \u00B7  " + file.visit(),
                        "slate"));
    }

    private FlowPane keys(LedgerWork.File file, LedgerView.Ways ways) {
        var keys = new FlowPane(Texts.GAP, Texts.GAP);
        var open =
                Texts.button(words.say("ledger.open-bench"), () -> ways.bench().accept(file.visit()));
        open.setId("open-bench");
        keys.getChildren().add(open);
        var quote = file.quote().filter(offered -> file.signed().isEmpty());
        if (quote.isPresent()) {
            var away = Texts.button(
                    words.say("away.open"), () -> ways.away().accept(quote.get().number()));
            away.setId("away");
            keys.getChildren().add(away);
        }
        file.signed().ifPresent(signed -> {
            var verify = Texts.button(words.say("ledger.verify"), model::verify);
            verify.setId("verify");
            var paper = Texts.button(words.say("ledger.paper"), () -> model.paper(signed));
            paper.setId("signed-paper");
            keys.getChildren().addAll(verify, paper);
        });
        return keys;
    }

    /** What the last act did; stands at both ends of the sheet, so that it is seen wherever one was. */
    private VBox said(String id) {
        var said = Texts.words("", "lagoon");
        said.setId(id);
        said.textProperty()
                .bind(Bindings.createStringBinding(() -> told(model.said().get()), model.said()));
        said.managedProperty().bind(model.said().isNotEmpty());
        var refusal = Texts.words("", "refusal");
        refusal.textProperty().bind(model.refusal());
        refusal.managedProperty().bind(model.refusal().isNotEmpty());
        return new VBox(said, refusal);
    }

    /** What an act did: the key of its words, and what they name after a tab. */
    private String told(String said) {
        if (said.equals(LedgerModel.PROVED)) {
            return words.say("ledger.proved");
        }
        var parts = said.split("\t", 2);
        return parts.length > 1 ? words.say(parts[0], parts[1]) : words.sayOr(said, said);
    }

    private void unsigned(LedgerWork.File file) {
        var told = file.quote()
                .map(quote ->
                        words.say("ledger.unsigned", quote.number(), quote.revision(), words.day(quote.validUntil())))
                .orElse(words.say("ledger.no-quote"));
        getChildren().add(Texts.words(told));
        file.quote().ifPresent(quote -> {
            quote.choices()
                    .forEach(choice -> getChildren()
                            .add(pair(
                                    choice.title(), words.money(choice.totals().total()))));
            var reprice =
                    new RepriceModel(model.work().papers(), quote.number(), model.runner(), said -> model.done(said));
            getChildren().add(new RepriceCard(reprice, words));
        });
    }

    private void signed(LedgerWork.File file, JobFile job) {
        var signed = job.agreed().signed();
        var choice = signed.taken();
        getChildren()
                .add(Texts.words(words.say(
                        "ledger.signed-by",
                        choice.title(),
                        signed.signature().name(),
                        words.moment(signed.signature().at()),
                        signed.seal().brief())));
        var cards = new FileCards(
                new FileModel(model.work().papers(), job, model.runner(), said -> model.done(said)),
                words,
                file.leadsPlaced(),
                model::print);
        var chosen = cards.sections().contains(model.section().get())
                ? model.section().get()
                : model.begin();
        var bar = new Chips();
        cards.sections()
                .forEach(section -> bar.one(
                        "section-" + section.key(), words.say("section." + section.key()), section == chosen, () -> {
                            model.section().set(section);
                            cards.show(section);
                        }));
        getChildren().addAll(bar, cards);
        cards.show(cards.sections().contains(chosen) ? chosen : Section.BILL);
        getChildren().add(said("file-said"));
        declined(signed);
    }

    private void declined(SignedRevision signed) {
        signed.declined()
                .forEach(left -> getChildren()
                        .add(Texts.words(
                                words.say("handover.declined", left.title(), words.money(left.total())),
                                "small",
                                "slate")));
    }

    private static HBox pair(String left, String right) {
        var text = Texts.words(left);
        text.setMinWidth(0);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        var row = new HBox(16, text, Texts.line(right, "figure"));
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }
}
