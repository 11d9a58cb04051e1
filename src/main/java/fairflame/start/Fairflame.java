package fairflame.start;

import fairflame.command.CommandFace;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The program's entry. Without a display only the command line is loaded. */
public final class Fairflame {
    private Fairflame() {}

    public static void main(String[] arguments) {
        // Files and terminals read UTF-8 whatever the machine's own encoding is.
        var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        var code = arguments.length > 0 && arguments[0].equals(WindowFace.WORD)
                ? WindowFace.run(out, err, Arrays.copyOfRange(arguments, 1, arguments.length))
                : CommandFace.run(out, err, arguments);
        out.flush();
        err.flush();
        System.exit(code);
    }
}
