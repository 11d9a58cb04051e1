package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What holds for every command there is, whatever it does. */
class EveryCommandTest {
    static Stream<Named<CommandLine>> commands() {
        var none = new PrintWriter(new StringWriter());
        return below(CommandFace.commandLine(none, none))
                .map(each -> Named.of(each.getCommandSpec().qualifiedName(), each));
    }

    private static Stream<CommandLine> below(CommandLine command) {
        return Stream.concat(
                Stream.of(command), command.getSubcommands().values().stream().flatMap(EveryCommandTest::below));
    }

    private static Shell.Said run(CommandLine command, String... more) {
        var words =
                new ArrayList<>(List.of(command.getCommandSpec().qualifiedName().split(" ")));
        words.remove(0);
        words.addAll(List.of(more));
        return Shell.run(words.toArray(String[]::new));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void tellsWhatItDoesAndWhatEachOptionAndParameterIs(CommandLine command) {
        var said = run(command, "--help").done();
        var spec = command.getCommandSpec();
        assertThat(said.out())
                .contains("Usage: " + spec.qualifiedName())
                .contains(spec.options().stream().map(OptionSpec::longestName).toList())
                .doesNotContain("null");
        assertThat(spec.usageMessage().description()).as("description").isNotEmpty();
        assertThat(spec.args())
                .allSatisfy(argument -> assertThat(String.join("", argument.description()))
                        .as("%s: %s", spec.qualifiedName(), argument.paramLabel())
                        .isNotBlank());
        assertThat(said.err()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void answersAWrongLineInTwoLinesAndPointsToItsHelp(CommandLine command) {
        var said = run(command, "--colour", "blue");
        assertThat(said.code()).isEqualTo(2);
        assertThat(said.err()).containsAnyOf("--colour", "Missing required", "Invalid value");
        assertThat(said.err().strip().lines())
                .hasSize(2)
                .last()
                .isEqualTo("Try: " + command.getCommandSpec().qualifiedName() + " --help");
        assertThat(said.out()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void asksForWhatIsRequiredOrShowsItsHelp(CommandLine command) {
        var spec = command.getCommandSpec();
        boolean required = spec.args().stream().anyMatch(each -> each.required());
        boolean group = !command.getSubcommands().isEmpty();
        if (required) {
            var said = run(command);
            assertThat(said.code()).as(said.err()).isEqualTo(2);
            assertThat(said.err()).startsWith("Missing required");
        } else if (group) {
            assertThat(run(command).done().out()).contains("Usage: " + spec.qualifiedName(), "Commands:");
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void speaksJsonWhereItSpeaksAtAll(CommandLine command) {
        if (command.getSubcommands().isEmpty()) {
            assertThat(command.getCommandSpec().findOption("--json"))
                    .as(command.getCommandSpec().qualifiedName())
                    .isNotNull();
        }
    }
}
