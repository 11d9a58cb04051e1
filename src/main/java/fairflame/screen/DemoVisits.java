package fairflame.screen;

import fairflame.screen.bench.Draft;
import fairflame.screen.bench.DraftOfVisit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/** The invented visits that lie ready in the demo shop. */
final class DemoVisits {
    private static final int LAST = 4;

    private DemoVisits() {}

    static List<Draft> all() {
        return IntStream.rangeClosed(1, LAST).mapToObj(DemoVisits::draft).toList();
    }

    static Draft draft(int number) {
        var file = "/fairflame/demo/visit-" + number + ".json";
        try (var stream = Objects.requireNonNull(DemoVisits.class.getResourceAsStream(file), file)) {
            return DraftOfVisit.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
