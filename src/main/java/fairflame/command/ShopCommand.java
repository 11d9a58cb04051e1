package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.visit.Workplace;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;

/** A command that does one thing in a shop's folder: the folder is opened before and closed behind it. */
abstract class ShopCommand implements Callable<Integer> {
    @Mixin
    private WorkOptions work;

    @Mixin
    private Printing printing;

    @Override
    public final Integer call() {
        try (var workplace = work.open()) {
            run(workplace);
            return 0;
        }
    }

    abstract void run(Workplace workplace);

    /** Prints one of the two forms, data or text. */
    final void print(Supplier<JsonNode> data, Consumer<PrintWriter> text) {
        printing.print(data, text);
    }
}
