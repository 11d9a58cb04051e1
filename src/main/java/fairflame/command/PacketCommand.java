package fairflame.command;

import fairflame.visit.Handoff;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Hands what a truck laptop took down to the office. */
@Command(
        name = "packet",
        mixinStandardHelpOptions = true,
        description = "Hand visits, photos and sealed quotes from a laptop to the office, see docs/formats/packet.md.",
        subcommands = {
            PacketCommand.Name.class,
            PacketCommand.Attach.class,
            PacketCommand.Export.class,
            PacketCommand.Take.class,
            PacketCommand.Conflicts.class,
            PacketCommand.Settle.class
        })
final class PacketCommand extends CommandGroup {
    @Command(
            name = "name",
            mixinStandardHelpOptions = true,
            description = "Name this laptop and its series of quote numbers; both differ from laptop to laptop.")
    static final class Name extends ShopCommand {
        @Parameters(index = "0", paramLabel = "LAPTOP", description = "such as truck-2")
        private String laptop;

        @Parameters(index = "1", paramLabel = "SERIES", description = "such as QB")
        private String series;

        @Override
        void run(Workplace workplace) {
            new Handoff(workplace).name(laptop, series);
            print(
                    () -> Printing.object().put("laptop", laptop).put("series", series),
                    out -> out.println("This is " + laptop + ", quotes are numbered " + series + "-..."));
        }
    }

    @Command(name = "attach", mixinStandardHelpOptions = true, description = "Keep a photograph with a visit.")
    static final class Attach extends ShopCommand {
        @Parameters(index = "0", paramLabel = "VISIT", description = "id of the visit")
        private String visit;

        @Parameters(index = "1", paramLabel = "FILE", description = "photograph or another file, up to 24 MiB")
        private Path file;

        @Override
        void run(Workplace workplace) {
            new Handoff(workplace).attach(visit, file);
            print(
                    () -> Printing.object().put("visit", visit).put("file", file.toString()),
                    out -> out.println(file + " is kept with " + visit));
        }
    }

    @Command(name = "export", mixinStandardHelpOptions = true, description = "Write the packet of this laptop.")
    static final class Export extends ShopCommand {
        @Override
        void run(Workplace workplace) {
            var file = new Handoff(workplace).export();
            print(() -> Printing.object().put("file", file), out -> out.println("Written: " + file));
        }
    }

    @Command(
            name = "take",
            mixinStandardHelpOptions = true,
            description = "Take a packet in; again and again without harm. A damaged or altered one is refused.")
    static final class Take extends ShopCommand {
        @Parameters(paramLabel = "FILE", description = "packet")
        private Path file;

        @Override
        void run(Workplace workplace) {
            var taken = new Handoff(workplace).take(file);
            print(
                    () -> Printing.object()
                            .put("origin", taken.origin())
                            .put("made", taken.made())
                            .put("added", taken.added())
                            .put("renewed", taken.renewed())
                            .put("same", taken.same())
                            .put("conflicts", taken.conflicts()),
                    out -> out.println("From " + taken.origin() + ", made " + taken.made() + ": " + taken.added()
                            + " added, " + taken.renewed() + " renewed, " + taken.same() + " here already, "
                            + taken.conflicts() + " in conflict"));
        }
    }

    @Command(
            name = "conflicts",
            mixinStandardHelpOptions = true,
            description = "Show what came in and disagrees with what is here, side by side.")
    static final class Conflicts extends ShopCommand {
        @Override
        void run(Workplace workplace) {
            var conflicts = new Handoff(workplace).conflicts();
            print(
                    () -> {
                        var root = Printing.object();
                        var array = root.putArray("conflicts");
                        conflicts.forEach(each -> array.addObject()
                                .put("number", each.number())
                                .put("origin", each.origin())
                                .put("kind", each.kind())
                                .put("key", each.key())
                                .put("reason", each.reason())
                                .put("settled", each.settled())
                                .put("ours", each.ours())
                                .put("theirs", each.theirs()));
                        return root;
                    },
                    out -> {
                        conflicts.forEach(each -> SideBySide.print(out, each));
                        if (conflicts.isEmpty()) {
                            out.println("Nothing disagrees.");
                        }
                    });
        }
    }

    @Command(
            name = "settle",
            mixinStandardHelpOptions = true,
            description = "Say what was done about a conflict. Nothing is overwritten by it.")
    static final class Settle extends ShopCommand {
        @Parameters(paramLabel = "NUMBER", description = "number of the conflict")
        private int number;

        @Option(names = "--words", required = true, description = "what was done")
        private String words;

        @Override
        void run(Workplace workplace) {
            new Handoff(workplace).settle(number, words);
            print(
                    () -> Printing.object().put("number", number).put("settled", words),
                    out -> out.println("Conflict " + number + " is settled: " + words));
        }
    }
}
