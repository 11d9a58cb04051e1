package fairflame.command;

import fairflame.visit.JobHours;
import fairflame.visit.Workplace;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Hours worked against standard times. */
@Command(
        name = "hours",
        mixinStandardHelpOptions = true,
        description = "Compare hours worked with standard times; a suggestion needs enough jobs and a person.",
        subcommands = {HoursCommand.Compare.class, HoursCommand.Add.class, HoursCommand.Decide.class})
final class HoursCommand extends CommandGroup {
    @Command(
            name = "compare",
            mixinStandardHelpOptions = true,
            description = "Median and spread of the hours worked, by task and condition, beside the standard.")
    static final class Compare extends ShopCommand {
        @Override
        void run(Workplace workplace) {
            var comparisons = new JobHours(workplace).comparisons();
            print(() -> LedgerText.hours(comparisons), out -> LedgerText.hours(out, comparisons));
        }
    }

    @Command(
            name = "add",
            mixinStandardHelpOptions = true,
            description = "Record the own time that a task of a signed quote took.")
    static final class Add extends ShopCommand {
        @Parameters(index = "0", paramLabel = "QUOTE", description = "number of the signed quote")
        private String quote;

        @Parameters(index = "1", paramLabel = "TASK", description = "id of the task, such as R03")
        private String task;

        @Parameters(index = "2", paramLabel = "HOURS", description = "such as 0.65")
        private BigDecimal hours;

        @Option(
                names = "--standard",
                paramLabel = "HOURS",
                description = "standard for the same counts; else one piece")
        private @Nullable BigDecimal standard;

        @Option(names = "--condition", description = "key of a time condition, such as tight-space", defaultValue = "")
        private String condition;

        @Override
        void run(Workplace workplace) {
            var job = new JobHours(workplace).record(quote, task, condition, Optional.ofNullable(standard), hours);
            print(
                    () -> Printing.object()
                            .put("quote", quote)
                            .put("task", task)
                            .put("actual", job.actual().toPlainString())
                            .put("standard", job.standard().toPlainString()),
                    out -> out.println(task + ": " + job.actual() + " h, standard " + job.standard() + " h"));
        }
    }

    @Command(
            name = "decide",
            mixinStandardHelpOptions = true,
            description = "Change the standard times of a task from now on; quotes made before keep theirs.")
    static final class Decide extends ShopCommand {
        @Parameters(index = "0", paramLabel = "TASK", description = "id of the task")
        private String task;

        @Parameters(index = "1", paramLabel = "FACTOR", description = "on the times in the shop's folder, 0.25 to 4")
        private BigDecimal factor;

        @Option(names = "--reason", required = true, description = "why, in words")
        private String reason;

        @Override
        void run(Workplace workplace) {
            var decision = new JobHours(workplace).decide(task, factor, reason);
            print(
                    () -> Printing.object()
                            .put("task", task)
                            .put("factor", decision.factor().toPlainString())
                            .put("by", decision.who()),
                    out -> out.println(task + ": times x " + decision.factor() + " from now on, by " + decision.who()));
        }
    }
}
