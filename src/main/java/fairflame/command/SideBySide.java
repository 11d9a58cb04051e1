package fairflame.command;

import fairflame.visit.Differences;
import fairflame.visit.Handoff;
import java.io.PrintWriter;

/** Prints the fields in which two sides differ, ours at the left. */
final class SideBySide {
    private static final int WIDTH = 44;

    private SideBySide() {}

    static void print(PrintWriter out, Handoff.Conflict conflict) {
        out.println(conflict.number() + ". " + conflict.kind() + " " + conflict.key() + " from " + conflict.origin()
                + ": " + conflict.reason()
                + (conflict.settled().isEmpty() ? "" : " (settled: " + conflict.settled() + ")"));
        for (var difference : Differences.between(conflict.ours(), conflict.theirs())) {
            out.println("   " + difference.field());
            out.printf(
                    "      here  %s%n      there %s%n",
                    cut(difference.ours().orElse("(not here)")),
                    cut(difference.theirs().orElse("(not there)")));
        }
    }

    private static String cut(String text) {
        var line = text.replaceAll("\\s+", " ");
        return line.length() <= WIDTH * 2 ? line : line.substring(0, WIDTH * 2) + "...";
    }
}
