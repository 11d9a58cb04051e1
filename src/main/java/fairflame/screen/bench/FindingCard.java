package fairflame.screen.bench;

import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.Knowledge;
import fairflame.diagnosis.NextCheck;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.ReasonLines;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Insets;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The finding with lines from the readings to the causes, and what to do next. */
final class FindingCard extends VBox {
    private static final int MOST_CAUSES = 5;
    private static final int MOST_MISSING = 2;
    private static final int MOST_REASONS = 6;

    private final BenchModel model;
    private final Words words;

    FindingCard(BenchModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        ties.on(model.judged(), judged -> fill());
    }

    private void fill() {
        var judged = model.judged().get();
        if (judged.isEmpty()) {
            getChildren().setAll(Texts.words(words.say("finding.nothing"), "large", "strong"));
            return;
        }
        var finding = judged.get().finding();
        getChildren().setAll(Texts.words(words.say("finding.title"), "large", "strong"));
        finding.conflicts().forEach(conflict -> getChildren().add(conflict(conflict)));
        var causes = causes(finding);
        if (!causes.isEmpty()) {
            getChildren().addAll(new ReasonLines(causes), Texts.words(words.say("finding.legend"), "small", "slate"));
        }
        if (!judged.get().next().isEmpty()) {
            getChildren().add(Texts.words(words.say("finding.next"), "strong"));
            judged.get().next().stream().limit(3).forEach(next -> getChildren().add(next(next)));
        }
    }

    private VBox conflict(String text) {
        var box = Texts.column(2, Texts.words(words.say("finding.conflict"), "strong", "amber"), Texts.words(text));
        box.getStyleClass().add("band-edge");
        box.setPadding(new Insets(10, 12, 10, 12));
        return box;
    }

    private List<ReasonLines.Cause> causes(Finding finding) {
        return finding.candidates().stream()
                .filter(candidate -> candidate.standing() == Candidate.Standing.RULED_OUT
                        ? !candidate.against().isEmpty()
                        : !candidate.supports().isEmpty())
                .limit(MOST_CAUSES)
                .map(this::cause)
                .toList();
    }

    private ReasonLines.Cause cause(Candidate candidate) {
        var standing = candidate.standing().name().toLowerCase(Locale.ROOT).replace('_', '-');
        var reasons = new ArrayList<ReasonLines.Reason>();
        if (candidate.standing() != Candidate.Standing.RULED_OUT) {
            candidate.supports().stream()
                    .limit(MOST_REASONS)
                    .forEach(evidence ->
                            reasons.add(new ReasonLines.Reason(evidence.words(), ReasonLines.Bearing.SUPPORTS)));
        }
        candidate.against().stream()
                .limit(MOST_REASONS)
                .forEach(
                        evidence -> reasons.add(new ReasonLines.Reason(evidence.words(), ReasonLines.Bearing.AGAINST)));
        if (candidate.standing() != Candidate.Standing.RULED_OUT) {
            candidate.missing().stream()
                    .limit(MOST_MISSING)
                    .forEach(check -> reasons.add(new ReasonLines.Reason(title(check), ReasonLines.Bearing.UNTESTED)));
        }
        return new ReasonLines.Cause(
                candidate.title(), /* standing= */ words.say("standing." + standing), standing, reasons);
    }

    private String title(String check) {
        Knowledge knowledge = model.work().knowledge();
        return knowledge.checks().stream()
                .filter(known -> known.id().equals(check))
                .findFirst()
                .map(known -> known.title())
                .orElse(check);
    }

    private Press next(NextCheck next) {
        var text = Texts.column(
                2,
                Texts.words(next.title(), "semi"),
                Texts.words(next.reason(), "small"),
                Texts.words(
                        words.say("reading.effort", next.minutes(), words.say("hazard." + next.hazard())),
                        "small",
                        "slate"));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        var known = model.work().knowledge().checks().stream()
                .anyMatch(check -> check.id().equals(next.check()));
        var press = new Press(
                next.title(), () -> model.step().set(known ? Steps.ofCheck(next.check()) : Steps.GATES), text);
        press.setId("next-" + next.check());
        return press.styled("row");
    }
}
