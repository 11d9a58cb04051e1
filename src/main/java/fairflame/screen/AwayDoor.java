package fairflame.screen;

import fairflame.screen.away.AwayWork;
import fairflame.visit.AwayPaper;
import fairflame.visit.PaperReturn;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.util.Optional;

/** The part of the door for a customer who is away. */
final class AwayDoor implements AwayWork {
    private final Workplace workplace;

    AwayDoor(Workplace workplace) {
        this.workplace = workplace;
    }

    @Override
    public Sent write(String quote, String language, Progress progress) {
        var written = new AwayPaper(workplace, "", progress).write(quote);
        return new Sent(written.paper(), written.mail());
    }

    @Override
    public Answer read(String quote, Path file, Progress progress) {
        return new PaperReturn(workplace, progress)
                .read(quote, file)
                .match(
                        ordered -> new Answer(
                                Optional.of(ordered.result().signed()),
                                ordered.result().signed().signature().name()),
                        none -> new Answer(Optional.empty(), none.name()));
    }
}
