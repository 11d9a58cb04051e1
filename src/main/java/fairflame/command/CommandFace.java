package fairflame.command;

import fairflame.Refusal;
import fairflame.gas.Fuel;
import fairflame.gas.Material;
import fairflame.gas.Method;
import fairflame.money.Percent;
import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.HeatingValue;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import fairflame.quantity.Temperature;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The command line as a whole: converters, commands, and the one place where an error becomes an exit code. */
public final class CommandFace {
    /** A fault of the program itself (sysexits.h, EX_SOFTWARE); input can never cause it. */
    private static final int FAULT = 70;

    private static final int REFUSED = 1;
    static final int STOP_WORK = 3;

    private CommandFace() {}

    /**
     * Runs one command.
     *
     * @return 0 done, 1 input refused, 2 the command line itself is wrong, 3 stop-work
     */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return commandLine(out, err).execute(arguments);
    }

    static CommandLine commandLine(PrintWriter out, PrintWriter err) {
        return new CommandLine(new FairflameCommand())
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpAutoWidth(true)
                .registerConverter(Length.class, Length::parse)
                .registerConverter(Pressure.class, Pressure::parse)
                .registerConverter(GasFlow.class, GasFlow::parse)
                .registerConverter(HeatRate.class, HeatRate::parse)
                .registerConverter(HeatingValue.class, HeatingValue::parse)
                .registerConverter(Temperature.class, Temperature::parse)
                .registerConverter(Percent.class, Percent::parse)
                .registerConverter(Fuel.class, Fuel::parse)
                .registerConverter(Material.class, Material::parse)
                .registerConverter(Method.class, Method::parse)
                .setParameterExceptionHandler(CommandFace::wrongLine)
                .setExecutionExceptionHandler(CommandFace::failed);
    }

    private static int wrongLine(ParameterException problem, String[] arguments) {
        var line = problem.getCommandLine();
        if (problem.getCause() instanceof Refusal refusal) {
            var option = problem.getArgSpec() == null ? "argument" : name(problem.getArgSpec());
            return refused(line, refusal.at(option));
        }
        line.getErr().println(oneLine(String.valueOf(problem.getMessage())));
        line.getErr().println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
        return CommandLine.ExitCode.USAGE;
    }

    private static String name(CommandLine.Model.ArgSpec spec) {
        return spec instanceof CommandLine.Model.OptionSpec option
                ? "option " + option.longestName()
                : spec.paramLabel();
    }

    private static int failed(Exception problem, CommandLine line, CommandLine.ParseResult parsed) {
        if (problem instanceof Refusal refusal) {
            return refused(line, refusal);
        }
        line.getErr().println("This is a fault of the program, not of the input: " + problem);
        problem.printStackTrace(line.getErr());
        return FAULT;
    }

    private static int refused(CommandLine line, Refusal refusal) {
        line.getErr().println(refusal.getMessage());
        return refusal instanceof Refusal.StopWork ? STOP_WORK : REFUSED;
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }
}
