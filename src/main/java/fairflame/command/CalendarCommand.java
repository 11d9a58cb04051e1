package fairflame.command;

import fairflame.visit.Permits;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists what is due and writes it as a calendar file. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        description = "List what is due (permits, inspections, licences, quotes, invoices); write due.ics (RFC 5545).")
final class CalendarCommand implements Callable<Integer> {
    @Mixin
    private WorkOptions work;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        try (var workplace = work.open()) {
            var permits = new Permits(workplace);
            var due = permits.due();
            var file = permits.calendar();
            printing.print(
                    () -> {
                        var root = Printing.object().put("file", file);
                        var array = root.putArray("due");
                        due.forEach(each -> array.addObject()
                                .put("day", each.day().toString())
                                .put(
                                        "kind",
                                        each.kind()
                                                .name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', '-'))
                                .put("title", each.title())
                                .put("details", each.details()));
                        return root;
                    },
                    out -> {
                        due.forEach(
                                each -> out.println(each.day() + "  " + each.title() + "  (" + each.details() + ")"));
                        out.println("Written: " + file);
                    });
            return 0;
        }
    }
}
