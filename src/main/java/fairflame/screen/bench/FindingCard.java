package fairflame.screen.bench;

import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.Knowledge;
import fairflame.diagnosis.NextCheck;
import fairflame.quote.Basis;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.ReasonLines;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
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
    private final BiConsumer<String, List<Basis>> why;

    FindingCard(BenchModel model, Words words, Ties ties, BiConsumer<String, List<Basis>> why) {
        super(12);
        this.model = model;
        this.words = words;
        this.why = why;
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
        var rest = finding.candidates().size() - causes.size();
        if (rest > 0) {
            var all = Texts.button(words.say("finding.all", finding.candidates().size()), () -> all(finding));
            all.setId("finding-all");
            getChildren().add(all);
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

    /** Every cause of the complaint with where it stands and why. */
    private void all(Finding finding) {
        why.accept(
                words.say("finding.title"),
                finding.candidates().stream()
                        .flatMap(candidate -> Stream.concat(
                                Stream.of(new Basis(standing(candidate), candidate.title(), candidate.cause())),
                                grounds().of(candidate).stream()))
                        .toList());
    }

    private CauseGrounds grounds() {
        return new CauseGrounds(model.judged().get().map(Judged::verdicts).orElse(List.of()), this::title);
    }

    private String standing(Candidate candidate) {
        return words.say("standing."
                + candidate.standing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
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
                candidate.title(),
                standing(candidate),
                standing,
                reasons,
                () -> why.accept(candidate.title(), grounds().of(candidate)));
    }

    private String title(String check) {
        Knowledge knowledge = model.work().knowledge();
        // A missing check may name its terms in brackets, such as leak-outlet[warm].
        var id = check.split("\\[", 2)[0];
        return knowledge.checks().stream()
                .filter(known -> known.id().equals(id))
                .findFirst()
                .map(known -> known.title() + check.substring(id.length()))
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
