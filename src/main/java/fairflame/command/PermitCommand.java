package fairflame.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.invoice.PressureTest;
import fairflame.invoice.permit.GasWork;
import fairflame.invoice.permit.PermitState;
import fairflame.invoice.permit.PermitStep;
import fairflame.visit.Permits;
import fairflame.visit.Workplace;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The register of permits, inspections and gas work. */
@Command(
        name = "permits",
        mixinStandardHelpOptions = true,
        description = "Keep the register of permits, inspections and gas work of signed quotes.",
        subcommands = {
            PermitCommand.Listed.class,
            PermitCommand.Step.class,
            PermitCommand.Gas.class,
            PermitCommand.Waive.class,
            PermitCommand.Book.class
        })
final class PermitCommand extends CommandGroup {
    @Command(
            name = "list",
            mixinStandardHelpOptions = true,
            description = "List the register, and what is missing of each work.")
    static final class Listed extends RegisterCommand {
        @Override
        List<Permits.Entry> entries(Workplace workplace) {
            return new Permits(workplace).all();
        }
    }

    @Command(
            name = "step",
            mixinStandardHelpOptions = true,
            description = "Report the next step: applied, issued, booked, passed, failed, not-needed.")
    static final class Step extends RegisterCommand {
        @Parameters(index = "0", paramLabel = "QUOTE", description = "number of the signed quote")
        private String quote;

        @Parameters(
                index = "1",
                paramLabel = "STATE",
                description = "applied, issued, booked, passed, failed, not-needed")
        private String state;

        @Option(names = "--number", description = "number of the permit, when issued", defaultValue = "")
        private String number;

        @Option(names = "--day", description = "day of the inspection when booked; last day of the permit when issued")
        private @Nullable LocalDate day;

        @Option(names = "--on", description = "day of the step; today when left out")
        private @Nullable LocalDate on;

        @Option(names = "--words", description = "inspector, reason of a failure, who said so", defaultValue = "")
        private String words;

        @Override
        List<Permits.Entry> entries(Workplace workplace) {
            var step = new PermitStep(
                    dayOf(on, workplace),
                    PermitState.parse(state),
                    workplace.who(),
                    number,
                    Optional.ofNullable(day),
                    words);
            return List.of(new Permits(workplace).step(quote, step));
        }
    }

    @Command(
            name = "gas",
            mixinStandardHelpOptions = true,
            description = "Record who did the gas work under which licence, and the pressure test.")
    static final class Gas extends RegisterCommand {
        @Parameters(paramLabel = "QUOTE", description = "number of the signed quote")
        private String quote;

        @Option(names = "--fitter", required = true, description = "name of the licensed gas fitter")
        private String fitter;

        @Option(names = "--licence", required = true, description = "number of the licence")
        private String licence;

        @Option(names = "--licence-ends", paramLabel = "DAY", required = true, description = "last day of the licence")
        private LocalDate ends;

        @Option(names = "--on", paramLabel = "DAY", description = "day of the work; today when left out")
        private @Nullable LocalDate on;

        @Option(names = "--psi", description = "test pressure, pounds per square inch; with the four options below")
        private @Nullable BigDecimal psi;

        @Option(names = "--minutes", description = "how long it was held", defaultValue = "0")
        private int minutes;

        @Option(names = "--gauge-top", description = "top of the gauge's scale, psi", defaultValue = "0")
        private BigDecimal gaugeTop;

        @Option(names = "--medium", description = "air, nitrogen, carbon dioxide, inert gas", defaultValue = "air")
        private String medium;

        @Option(names = "--witness", description = "inspector who was there", defaultValue = "")
        private String witness;

        @Option(names = "--did-not-hold", description = "the pressure fell")
        private boolean fell;

        @Override
        List<Permits.Entry> entries(Workplace workplace) {
            var permits = new Permits(workplace);
            var revision = permits.of(quote).permit().revision();
            var test = Optional.ofNullable(psi)
                    .map(held -> new PressureTest(held, minutes, gaugeTop, medium, witness, !fell));
            return List.of(permits.gasWork(
                    quote, new GasWork(quote, revision, dayOf(on, workplace), fitter, licence, ends, test)));
        }
    }

    @Command(
            name = "waive",
            mixinStandardHelpOptions = true,
            description = "Keep the customer's own dated waiver of the right to cancel in an emergency.")
    static final class Waive extends RegisterCommand {
        @Parameters(paramLabel = "QUOTE", description = "number of the signed quote")
        private String quote;

        @Option(names = "--statement", required = true, description = "the customer's own words")
        private String statement;

        @Override
        List<Permits.Entry> entries(Workplace workplace) {
            var permits = new Permits(workplace);
            permits.waive(quote, workplace.today(), statement);
            return List.of(permits.of(quote));
        }
    }

    @Command(
            name = "book",
            mixinStandardHelpOptions = true,
            description = "Book the day of the work; refused while the customer may still cancel, unless waived.")
    static final class Book extends ShopCommand {
        @Parameters(index = "0", paramLabel = "QUOTE", description = "number of the signed quote")
        private String quote;

        @Parameters(index = "1", paramLabel = "DAY", description = "such as 2026-03-20")
        private LocalDate day;

        @Option(names = "--crew", required = true, description = "who does the work")
        private String crew;

        @Override
        void run(Workplace workplace) {
            var booking = new Permits(workplace).book(quote, day, crew);
            print(
                    () -> Printing.object()
                            .put("quote", booking.quote())
                            .put("day", booking.day().toString())
                            .put("crew", booking.crew()),
                    out -> out.println(booking.quote() + " is booked for " + booking.day() + ", " + booking.crew()));
        }
    }

    private static LocalDate dayOf(@Nullable LocalDate stated, Workplace workplace) {
        return stated == null ? workplace.today() : stated;
    }

    /** A command that shows entries of the register, as they are or as it left them. */
    private abstract static class RegisterCommand extends ShopCommand {
        abstract List<Permits.Entry> entries(Workplace workplace);

        @Override
        final void run(Workplace workplace) {
            var entries = entries(workplace);
            print(
                    () -> {
                        var root = Printing.object();
                        var array = root.putArray("permits");
                        entries.forEach(entry -> array.add(data(entry)));
                        return root;
                    },
                    out -> entries.forEach(entry -> line(out, entry)));
        }
    }

    private static void line(PrintWriter out, Permits.Entry entry) {
        var permit = entry.permit();
        out.printf("%-14s %-11s %-14s %s%n", permit.quote(), permit.state().word(), permit.number(), permit.place());
        entry.gasWork()
                .ifPresent(done ->
                        out.println("    gas work " + done.on() + ": " + done.fitter() + ", " + done.licence()));
        entry.missing().forEach(missing -> out.println("    missing: " + missing));
    }

    private static ObjectNode data(Permits.Entry entry) {
        var permit = entry.permit();
        var root = Printing.object()
                .put("quote", permit.quote())
                .put("revision", permit.revision())
                .put("place", permit.place())
                .put("need", entry.need().name().toLowerCase(java.util.Locale.ROOT))
                .put("state", permit.state().word())
                .put("number", permit.number())
                .put("expires", permit.expires().map(Object::toString).orElse(null))
                .put("inspection", permit.inspection().map(Object::toString).orElse(null))
                .put("fitter", entry.gasWork().map(GasWork::fitter).orElse(null))
                .put("licence", entry.gasWork().map(GasWork::licence).orElse(null));
        root.set("missing", Printing.texts(entry.missing()));
        return root;
    }
}
