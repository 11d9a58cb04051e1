package fairflame.screen.file;

import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Fold;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;

/** The customer's right to cancel, the waiver, and the day of the work. */
final class DaysCard extends Card {
    DaysCard(FileModel file, Words words) {
        super(words, words.say("file.days"));
        var model = new DaysModel(file);
        right(file, model);
        var job = file.job();
        job.waiver()
                .ifPresent(waiver -> add(
                        Texts.words(words.say("file.waived", words.day(waiver.on())), "moss"),
                        Texts.words("\u201C" + waiver.statement() + "\u201D", "slate")));
        if (model.rightRuns() && job.waiver().isEmpty()) {
            add(new Fold(
                    "waiver",
                    words.say("file.waiver"),
                    () -> Texts.column(
                            Texts.GAP,
                            Texts.words(words.say("file.waiver-why"), "small", "slate"),
                            slip(model.waiver(), "waiver-words"),
                            whole(model.waiver()),
                            keys(key("waive", model::waive, "act")))));
        }
        add(Texts.rule("rule"));
        var booked = Texts.words(
                job.booking()
                        .map(booking -> words.say("file.booked-for", words.day(booking.day()), booking.crew()))
                        .orElse(words.say("file.not-booked")),
                "semi");
        booked.setId("booked");
        add(booked);
        add(new Columns(
                LEAST * 1.3,
                12,
                List.of(slip(model.booking(), "book-day").prompt("2026-03-20"), slip(model.booking(), "book-crew"))));
        add(whole(model.booking()), keys(key("book", model::book, "act")));
    }

    private void right(FileModel file, DaysModel model) {
        var right = file.job().right();
        var label = Texts.words(
                right.map(each -> words.say(
                                model.rightRuns() ? "file.cancel-runs" : "file.cancel-over", words.day(each.lastDay())))
                        .orElse(words.say("file.cancel-none")),
                right.isPresent() && model.rightRuns() ? "amber" : "slate");
        label.setId("right-to-cancel");
        add(label);
    }
}
