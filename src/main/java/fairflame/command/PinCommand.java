package fairflame.command;

import fairflame.visit.Pins;
import fairflame.visit.Workplace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets the digits of a person who forgot theirs. */
@Command(
        name = "pin",
        mixinStandardHelpOptions = true,
        description = "Set the digits by which a person leaves the customer's page, when they were forgotten. Whoever"
                + " may write to the shop's folder may do this; it stands in the journal.")
final class PinCommand extends ShopCommand {
    @Parameters(paramLabel = "NAME", description = "the name that the window is opened with (--by)")
    private String person;

    @Option(
            names = "--digits",
            required = true,
            interactive = true,
            arity = "0..1",
            description = "4 to 12 digits; asked for without showing them when none are given here")
    private String digits;

    @Override
    void run(Workplace workplace) {
        new Pins(workplace, false).replace(person, digits);
        print(
                () -> Printing.object().put("person", person).put("set", true),
                out -> out.println("The digits of " + person + " are set."));
    }
}
