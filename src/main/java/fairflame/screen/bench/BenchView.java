package fairflame.screen.bench;

import fairflame.diagnosis.Finding;
import fairflame.quote.Basis;
import fairflame.screen.kit.BesideWindow;
import fairflame.screen.kit.Leaves;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Tone;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Look;
import fairflame.screen.look.Words;
import fairflame.screen.photo.PhotoCard;
import fairflame.screen.photo.PhotoModel;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One sheet for the visit: evidence left, what it means in the middle, paper right. */
public final class BenchView extends StackPane {
    private static final double LEAST_EMS = 58;
    private static final double WHY_WIDTH = 620;

    private final BenchModel model;
    private final Words words;
    private final Veil veil;
    private final Look look;
    private final Ties ties = new Ties();
    private final Ties cardTies = new Ties();
    private final VBox card = new VBox(12);
    private final StackPane strip = new StackPane();
    private final StackPane foot = new StackPane();
    private final Leaves leaves;
    private final Runnable printStop;

    /** What leads away from the bench. */
    public record Ways(Runnable handover, Runnable printStop) {}

    public BenchView(BenchModel model, Words words, Look look, Veil veil, Ways ways) {
        this.model = model;
        this.words = words;
        this.veil = veil;
        this.look = look;
        this.printStop = ways.printStop();
        setPadding(new Insets(12, 14, 12, 14));
        var scroll = Texts.scrolling(card);
        card.setPadding(new Insets(0, 10, 8, 2));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        var middle = new VBox(Texts.GAP, strip, scroll, foot);
        foot.setPadding(new Insets(0, 10, 0, 2));
        foot.setMinHeight(USE_PREF_SIZE);
        middle.setMinHeight(0);
        leaves = new Leaves(
                look,
                LEAST_EMS,
                List.of(
                        new Leaves.Leaf(words.say("leaf.evidence"), new StepList(model, words, ties), 0.26),
                        new Leaves.Leaf(words.say("leaf.meaning"), middle, 0.41),
                        new Leaves.Leaf(
                                words.say("leaf.paper"),
                                new PaperPane(model, words, ties, this::why, ways.handover()),
                                0.33)));
        ties.on(model.judged(), judged -> danger());
        ties.on(model.judged(), judged -> strip());
        ties.on(model.step(), step -> {
            model.history().pause();
            open(step);
            leaves.show(1);
        });
        leaves.show(0);
    }

    /** Cuts the view loose from its model. */
    public void close() {
        ties.cut();
        cardTies.cut();
    }

    private void danger() {
        var found = model.judged().get();
        if (found.isPresent() && found.get().finding() instanceof Finding.StopWork stop) {
            if (getChildren().isEmpty() || getChildren().get(0) == leaves || !sameDangers(stop)) {
                var pane = new StopWorkPane(model, words, stop, printStop);
                pane.setUserData(stop.dangers());
                getChildren().setAll(pane);
            }
        } else if (getChildren().isEmpty() || getChildren().get(0) != leaves) {
            getChildren().setAll(leaves);
        }
    }

    private boolean sameDangers(Finding.StopWork stop) {
        return stop.dangers().equals(getChildren().get(0).getUserData());
    }

    private void open(String step) {
        cardTies.cut();
        foot.getChildren().clear();
        var check = Steps.check(step);
        card.getChildren()
                .setAll(
                        check.isEmpty()
                                ? switch (step) {
                                    case Steps.COMPLAINT -> new ComplaintCard(model, words, cardTies);
                                    case Steps.PLATE -> new PlateCard(model, words);
                                    case Steps.GATES -> new GatesCard(model, words, veil, cardTies);
                                    case Steps.LEADS -> new LeadsCard(model, words, cardTies);
                                    case Steps.MORE -> new MoreCard(model, words);
                                    case Steps.PRICE -> new PriceCard(model, words);
                                    case Steps.PHOTOS -> new PhotoCard(photos(), words, cardTies);
                                    case Steps.TERMS -> new TermsCard(model, words);
                                    case Steps.DECIDE -> new DecideCard(model, words);
                                    case Steps.FINDING -> new FindingCard(model, words, cardTies, this::why);
                                    case Steps.SCOPE -> new ScopeCard(model, words, cardTies);
                                    default -> new WhoCard(model, words);
                                }
                                : reading(check));
    }

    /** The photographs may belong to a reading that was taken or to a danger question. */
    private PhotoModel photos() {
        var abouts = new ArrayList<PhotoModel.About>();
        for (var check : model.work().knowledge().checks()) {
            if (model.lastReading(check.id()).isPresent()) {
                abouts.add(new PhotoModel.About(check.id(), check.title()));
            }
        }
        for (var gate : model.work().knowledge().gates()) {
            if (model.draft().get("gate." + gate.id()).equals("yes")) {
                abouts.add(new PhotoModel.About(gate.id(), gate.title()));
            }
        }
        return new PhotoModel(model.work().photos(), model.draft().get("id"), abouts, new BesideWindow(veil, words));
    }

    private ReadingCard reading(String id) {
        var check = model.work().knowledge().check(id);
        var number = model.reading(check);
        foot.getChildren().setAll(new ReadingKeys(model, words, check, number, this::onward));
        return new ReadingCard(
                model, words, check, number, cardTies, new ReadingCard.Entering(look.em(), this::onward));
    }

    /** On to what the evidence asks for next, or to the finding when nothing is asked. */
    private void onward() {
        model.step().set(model.onward());
    }

    /** What the strip above the card says. */
    private record Said(Tone tone, String title) {}

    private void strip() {
        var judged = model.judged().get();
        var tone = judged.map(found ->
                        found.finding().<Tone>match(settled -> Tone.GOOD, unsettled -> Tone.EDGE, stop -> Tone.OUTSIDE))
                .orElse(Tone.OPEN);
        var title = judged.map(this::headline).orElse(words.say("finding.nothing"));
        var said = new Said(tone, title);
        if (!said.equals(strip.getUserData())) {
            strip.setUserData(said);
            strip(said);
        }
    }

    private void strip(Said said) {
        var title = said.title();
        var text = Texts.words(words.say("finding.state." + said.tone().key(), title), "semi");
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        var press = new Press(title, () -> model.step().set(Steps.FINDING), text).styled("row");
        press.setId("finding-strip");
        press.setMinHeight(USE_PREF_SIZE);
        press.getChildren().add(new fairflame.screen.kit.Mark(said.tone()));
        strip.getChildren().setAll(press);
        strip.setMinHeight(USE_PREF_SIZE);
        strip.setPadding(new Insets(0, 10, 0, 2));
    }

    private String headline(Judged judged) {
        return judged.finding()
                .match(
                        settled -> String.join(
                                " ",
                                settled.causes().stream()
                                        .map(cause -> cause.title())
                                        .toList()),
                        unsettled -> unsettled.next().isEmpty()
                                ? words.say("finding.open")
                                : words.say(
                                        "finding.do-next",
                                        unsettled.next().get(0).title()),
                        stop -> stop.dangers().get(0).title());
    }

    private void why(String title, List<Basis> grounds) {
        veil.lay(new WhySheet(title, grounds, words, veil::lift), WHY_WIDTH);
    }
}
