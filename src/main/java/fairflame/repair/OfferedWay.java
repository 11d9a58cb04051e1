package fairflame.repair;

import fairflame.catalog.Way;
import java.util.Optional;

/**
 * A way of the book that holds in this case.
 *
 * @param cause id of the cause that it mends
 * @param line the sized gas line that it builds
 */
record OfferedWay(String cause, Way way, Optional<PipeJob> line) {
    String id() {
        return line.map(PipeJob::id).orElse(way.id());
    }

    String title() {
        return line.map(PipeJob::title).filter(title -> !title.isBlank()).orElse(way.title());
    }

    String plain() {
        return line.map(job -> way.plain() + " " + job.sizing().words()).orElse(way.plain());
    }

    String leaves() {
        return (way.leaves() + " " + line.map(PipeJob::leaves).orElse("")).strip();
    }
}
