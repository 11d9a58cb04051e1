package fairflame.screen.handover;

import fairflame.agreement.SignedRevision;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import fairflame.screen.away.AwayModel;
import fairflame.screen.away.AwaySheet;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Fold;
import fairflame.screen.kit.GaugeCard;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Words;
import fairflame.screen.pin.PinSheet;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One calm page for the customer. Leaving it takes the technician's digits. */
public final class HandoverView extends StackPane {
    private static final double PAGE_EMS = 60;
    private static final double PIN_WIDTH = 380;
    private static final double LEAST_GAUGE = 300;
    private static final double LEAST_SUPPORT = 380;

    private final HandoverModel model;
    private final Words words;
    private final Veil veil;
    private final Ties ties = new Ties();
    private final VBox page = new VBox(22);
    private final Consumer<SignedRevision> leave;

    /** The page of a quote; {@code leave} is run after the technician's digits, with the signed paper if there is one. */
    public HandoverView(
            HandoverModel model, Words words, double em, Veil veil, Consumer<SignedRevision> signed, Runnable leave) {
        this.model = model;
        this.words = words;
        this.veil = veil;
        this.leave = revision -> leave.run();
        getStyleClass().addAll("paper", "handover");
        page.setPadding(new Insets(28, 36, 36, 36));
        page.setMaxWidth(PAGE_EMS * em);
        var middle = new StackPane(page);
        middle.getStyleClass().add("paper");
        var scroll = Texts.scrolling(middle);
        getChildren().add(scroll);
        ties.on(model.signed(), revision -> {
            if (revision.isPresent()) {
                done(revision.get());
                signed.accept(revision.get());
            } else {
                offer();
            }
        });
    }

    private void offer() {
        var quote = model.quote();
        page.getChildren()
                .setAll(
                        top(quote),
                        Texts.words(words.say("handover.found"), "heading"),
                        Texts.words(quote.finding().headline(), "large"));
        if (!quote.finding().gauges().isEmpty()) {
            page.getChildren()
                    .add(new Columns(
                            LEAST_GAUGE,
                            24,
                            quote.finding().gauges().stream()
                                    .map(gauge -> new GaugeCard(gauge, words))
                                    .toList()));
        }
        model.line().ifPresent(story -> page.getChildren().add(new LineBeforeAfter(story, words)));
        if (!quote.finding().supports().isEmpty()) {
            page.getChildren()
                    .add(new Fold(
                            "handover-shown-by",
                            words.say(
                                    "handover.shown-by",
                                    quote.finding().supports().size()),
                            () -> new Columns(
                                    LEAST_SUPPORT,
                                    8,
                                    quote.finding().supports().stream()
                                            .map(HandoverView::support)
                                            .toList())));
        }
        page.getChildren().add(Texts.words(words.say("handover.suggest"), "heading"));
        page.getChildren().add(new ChoiceTable(model, words, ties));
        page.getChildren().add(new Agreeing(model, words, ties));
        page.getChildren().add(away());
    }

    /** The customer is somewhere else: the paper goes out and comes back as a file. */
    private Region away() {
        var key = Texts.button(words.say("away.open"), this::openAway);
        key.setId("handover-away");
        key.setMinWidth(USE_PREF_SIZE);
        var told = Texts.words(words.say("away.asked"), "slate");
        javafx.scene.layout.HBox.setHgrow(told, Priority.ALWAYS);
        told.setMaxWidth(Double.MAX_VALUE);
        told.setMinWidth(0);
        return Texts.across(16, told, key);
    }

    private void openAway() {
        var paper = new AwayModel(
                model.work().away(), model.quote().number(), model.language(), model.runner(), model::sealed);
        veil.lay(new AwaySheet(paper, words, veil), AwaySheet.WIDEST);
    }

    private Region top(Quote quote) {
        var back = Texts.button(words.say("handover.back"), this::askPin, "quiet");
        back.setId("handover-back");
        back.setMinWidth(USE_PREF_SIZE);
        var head = Texts.column(
                0,
                Texts.words(quote.seller().name(), "strong"),
                Texts.words(
                        words.say("handover.number", quote.number(), quote.revision(), words.day(quote.validUntil())),
                        "small",
                        "slate"));
        javafx.scene.layout.HBox.setHgrow(head, Priority.ALWAYS);
        head.setMinWidth(0);
        return Texts.across(16, head, back);
    }

    /** After the signature: thanks, and a copy at once. */
    private void done(SignedRevision revision) {
        var choice = revision.taken();
        var copies = new CopyModel(model.work().copies(), revision, model.runner(), words);
        page.getChildren()
                .setAll(
                        top(model.quote()),
                        Texts.words(words.say("handover.thanks"), "huge"),
                        Texts.words(
                                words.say(
                                        "handover.signed",
                                        choice.title(),
                                        words.money(choice.totals().total()),
                                        words.moment(revision.signature().at())),
                                "large"),
                        Texts.words(words.say("handover.seal", revision.seal().brief()), "figure", "slate"),
                        new CopyKeys(copies, words));
    }

    private void askPin() {
        veil.lay(
                new PinSheet(
                        words,
                        model.work().pin(),
                        () -> {
                            veil.lift();
                            ties.cut();
                            leave.accept(null);
                        },
                        veil::lift),
                PIN_WIDTH);
    }

    private static javafx.scene.control.Label support(String line) {
        var label = Texts.words(line, "slate");
        label.setAlignment(javafx.geometry.Pos.TOP_LEFT);
        return label;
    }

    static String price(Words words, Choice choice) {
        return words.money(choice.totals().total());
    }
}
