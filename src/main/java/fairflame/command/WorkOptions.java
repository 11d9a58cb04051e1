package fairflame.command;

import fairflame.visit.Library;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The folder a shop works in, for every command that stores something. */
final class WorkOptions {
    @Mixin
    private ShopOptions shop;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "folder of the shop: its database and its papers")
    private Path out;

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "time to work at instead of now, such as 2026-06-03T10:30:00-05:00")
    private @Nullable OffsetDateTime at;

    @Option(
            names = "--by",
            paramLabel = "NAME",
            description = "who works: stands in the journal",
            defaultValue = "command line")
    private String by;

    ShopOptions shop() {
        return shop;
    }

    Workplace open(Library library) {
        return Workplace.open(out, library, clock(), by);
    }

    Workplace open() {
        return open(shop.library());
    }

    private Clock clock() {
        return at == null ? Clock.system(ZoneId.systemDefault()) : Clock.fixed(at.toInstant(), at.getOffset());
    }
}
