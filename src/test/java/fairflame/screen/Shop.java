package fairflame.screen;

import fairflame.screen.bench.Draft;
import fairflame.screen.bench.DraftOfVisit;
import fairflame.visit.Library;
import fairflame.visit.Sources;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Objects;

/** The sample shop at work in a folder of its own, on a fixed day. */
final class Shop {
    static final Clock DAY = Clock.fixed(Instant.parse("2026-06-03T17:05:00Z"), ZoneId.of("America/Los_Angeles"));
    private static final Library LIBRARY = Library.load(Sources.samples());

    private Shop() {}

    static Workplace in(Path folder) {
        return in(folder, DAY);
    }

    static Workplace in(Path folder, Clock clock) {
        return Workplace.open(folder, LIBRARY, clock, "Ines Calloway");
    }

    /** The same shop some days on. */
    static Workplace later(Path folder, int days) {
        var then = Clock.fixed(DAY.instant().plus(Duration.ofDays(days)), DAY.getZone());
        return Workplace.open(folder, LIBRARY, then, "Ines Calloway");
    }

    /** One of the demo visits as a draft. */
    static Draft demo(int number) {
        try (var stream =
                Objects.requireNonNull(Shop.class.getResourceAsStream("/fairflame/demo/visit-" + number + ".json"))) {
            return DraftOfVisit.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
