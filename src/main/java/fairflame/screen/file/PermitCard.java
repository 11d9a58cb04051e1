package fairflame.screen.file;

import fairflame.catalog.PermitNeed;
import fairflame.invoice.permit.PermitState;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.VBox;

/** Where the permit stands, what was done for it and the next step. */
final class PermitCard extends Card {
    private final PermitModel model;
    private final VBox fields = new VBox(Texts.GAP);

    PermitCard(PermitModel model, Words words) {
        super(words, words.say("file.permit"));
        this.model = model;
        var permit = model.entry().permit();
        var state = Texts.words(words.say("permit." + permit.state().word()), "strong");
        state.setId("permit-state");
        state.setMinWidth(0);
        add(Texts.across(10, new Mark(tone(permit.state())), state));
        add(Texts.words(
                words.say(
                        "file.permit-need." + model.entry().need().name().toLowerCase(java.util.Locale.ROOT),
                        permit.place()),
                "slate"));
        permit.steps()
                .forEach(step -> add(Texts.words(
                        words.say(
                                        "file.permit-step",
                                        words.day(step.on()),
                                        words.say("permit." + step.to().word()),
                                        step.by())
                                + extra(step),
                        "small")));
        next();
        missing();
    }

    private String extra(fairflame.invoice.permit.PermitStep step) {
        var parts = new ArrayList<String>();
        if (!step.number().isBlank()) {
            parts.add(step.number());
        }
        step.day()
                .ifPresent(day -> parts.add(words.say(
                        step.to() == PermitState.ISSUED ? "file.permit-until" : "file.permit-for", words.day(day))));
        if (!step.words().isBlank()) {
            parts.add(step.words());
        }
        return parts.isEmpty() ? "" : ". " + String.join(", ", parts);
    }

    private static Tone tone(PermitState state) {
        return switch (state) {
            case PASSED, NOT_NEEDED -> Tone.GOOD;
            case FAILED -> Tone.OUTSIDE;
            case NEEDED -> Tone.OPEN;
            default -> Tone.EDGE;
        };
    }

    private void next() {
        var next = model.nextSteps();
        if (next.isEmpty()) {
            return;
        }
        add(Texts.words(words.say("file.permit-next"), "semi"));
        var chips = new Chips();
        for (var state : next) {
            chips.one(
                    "permit-to-" + state.word(),
                    words.say("permit." + state.word()),
                    model.to().get().filter(chosen -> chosen == state).isPresent(),
                    () -> {
                        model.to().set(java.util.Optional.of(state));
                        fill();
                    });
        }
        add(chips, fields);
        fill();
        add(whole(model.step()), keys(key("permit-take", model::take, "act")));
    }

    private void fill() {
        fields.getChildren().clear();
        model.to().get().ifPresent(state -> {
            var slips = new ArrayList<Slip>();
            slips.add(slip(model.step(), "permit-on").prompt("2026-03-20"));
            slips.add(slip(model.step(), "permit-by"));
            if (state == PermitState.ISSUED) {
                slips.add(slip(model.step(), "permit-number"));
            }
            if (state == PermitState.ISSUED || state == PermitState.BOOKED) {
                var title = state == PermitState.ISSUED ? "file.permit-last-day" : "file.permit-inspection";
                slips.add(slip(model.step(), "permit-day", words.say(title)).prompt("2026-03-20"));
            }
            if (List.of(PermitState.PASSED, PermitState.FAILED, PermitState.NOT_NEEDED)
                    .contains(state)) {
                slips.add(slip(model.step(), "permit-words", words.say("file.permit-words." + state.word())));
            }
            fields.getChildren().add(new Columns(LEAST * 1.3, 12, slips));
        });
    }

    private void missing() {
        var missing = model.entry().missing();
        if (model.entry().need() == PermitNeed.NO && missing.isEmpty()) {
            return;
        }
        add(Texts.rule("rule"));
        if (missing.isEmpty()) {
            add(Texts.words(words.say("file.nothing-missing"), "moss"));
            return;
        }
        add(Texts.words(words.say("file.missing"), "semi"));
        missing.forEach(line -> add(Texts.words("\u2022 " + line, "slate")));
    }
}
