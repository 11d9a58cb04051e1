package fairflame.command;

import fairflame.visit.Permits;
import fairflame.visit.Workplace;
import java.util.Locale;
import picocli.CommandLine.Command;

/** Lists what is due and writes it as a calendar file. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        description = "List what is due (permits, inspections, licences, quotes, invoices); write due.ics (RFC 5545).")
final class CalendarCommand extends ShopCommand {
    @Override
    void run(Workplace workplace) {
        var permits = new Permits(workplace);
        var due = permits.due();
        var file = permits.calendar();
        print(
                () -> {
                    var root = Printing.object().put("file", file);
                    var array = root.putArray("due");
                    due.forEach(each -> array.addObject()
                            .put("day", each.day().toString())
                            .put(
                                    "kind",
                                    each.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                            .put("title", each.title())
                            .put("details", each.details()));
                    return root;
                },
                out -> {
                    due.forEach(each -> out.println(each.day() + "  " + each.title() + "  (" + each.details() + ")"));
                    out.println("Written: " + file);
                });
    }
}
