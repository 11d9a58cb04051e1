package fairflame.screen.file;

import fairflame.invoice.WarrantyTerm;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;

/** What is promised for each part and task, and until when. */
final class WarrantyCard extends Card {
    WarrantyCard(FileModel file, Words words) {
        super(words, words.say("file.warranty"));
        var job = file.job();
        if (job.completed().isEmpty()) {
            add(Texts.words(words.say("file.warranty-none"), "slate"));
            return;
        }
        add(Texts.words(
                words.say("file.warranty-from", words.day(job.completed().get())), "slate"));
        for (var term : job.warranty()) {
            add(Texts.column(
                    0,
                    Texts.words(term.about(), "semi"),
                    Texts.words(
                            term.until()
                                    .map(day -> words.say(
                                            day.isBefore(file.work().today())
                                                    ? "file.warranty-ended"
                                                    : "file.warranty-until",
                                            words.day(day)))
                                    .orElse(words.say("file.warranty-not")),
                            term.until()
                                            .filter(day ->
                                                    !day.isBefore(file.work().today()))
                                            .isPresent()
                                    ? "moss"
                                    : "slate")));
        }
        job.warranty().stream()
                .map(WarrantyTerm::title)
                .distinct()
                .forEach(title -> job.warranty().stream()
                        .filter(term -> term.title().equals(title))
                        .findFirst()
                        .ifPresent(term -> add(
                                Texts.words(term.title(), "small", "strong"),
                                Texts.words(term.words(), "small", "slate"))));
    }
}
