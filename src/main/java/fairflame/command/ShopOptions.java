package fairflame.command;

import fairflame.visit.Library;
import fairflame.visit.Sources;
import fairflame.visit.VisitRecord;
import fairflame.visit.Visits;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a shop's files are, for every command that judges or prices. */
final class ShopOptions {
    @Option(names = "--catalog", paramLabel = "DIR", description = "folder of parts, tasks, rates and places")
    private @Nullable Path catalog;

    @Option(names = "--knowledge", paramLabel = "DIR", description = "folder of checks, causes and rules")
    private @Nullable Path knowledge;

    @Option(names = "--templates", paramLabel = "DIR", description = "folder of printed words")
    private @Nullable Path templates;

    Library library() {
        return Library.load(new Sources(
                Optional.ofNullable(catalog), Optional.ofNullable(knowledge), Optional.ofNullable(templates)));
    }

    /** The visit in a file; a refusal names the file. */
    VisitRecord visit(Path file, Library library) {
        return Visits.read(file, library);
    }
}
