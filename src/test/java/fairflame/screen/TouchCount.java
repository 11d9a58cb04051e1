package fairflame.screen;

import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Judged;
import fairflame.screen.look.Theme;
import java.io.PrintStream;
import java.nio.file.Files;
import java.util.Map;

/**
 * Counts what a technician presses and types in a new visit, from nothing to the first verdict on a reading, to the first
 * priced paper and to the priced repair of demo visit 1. Counts, not seconds: how long a person takes is not measured
 * here. Run with the display-free settings of the tests; figures in docs/measurements.md.
 */
public final class TouchCount {
    private static final Map<String, String> CONDITIONS =
            Map.of("flame-signal", "in-series", "leak-high-limit", "leads-lifted", "leak-outlet", "leads-lifted");

    private TouchCount() {}

    public static void main(String[] arguments) throws Exception {
        var out = System.out;
        try (var workplace = Shop.in(Files.createTempDirectory("touches"));
                var hand = new Hand(new WorkplaceScreens(workplace, true), 1280, 800, Theme.BRIGHT, "en")) {
            hand.press("new-visit").press("step-complaint").press("complaint-drops-out");
            hand.press("step-plate").type("heater.description", "gas pool heater");
            read(hand, "gas-static", "10");
            tell(out, hand, "first verdict", bench(hand).verdict(1).isPresent());
            hand.press("step-who").type("customer.name", "M. Oduya").type("customer.address", "18 Heron Walk");
            tell(out, hand, "first priced paper (diagnosis)", priced(hand, false));
            hand.press("step-plate")
                    .type("heater.input", "400000")
                    .type("heater.inletMinimum", "4")
                    .type("heater.inletMaximum", "14")
                    .type("heater.flameMinimum", "1.5");
            hand.press("step-gates");
            for (int gate = 1; gate <= 9; gate++) {
                hand.press("gate-G" + gate + "-no");
            }
            read(hand, "gas-firing", "9.0");
            read(hand, "transformer-idle", "26.3");
            read(hand, "transformer-low", "21");
            read(hand, "line-volts", "121");
            read(hand, "valve-low", "15.7");
            hand.press("step-more").press("more-first-to-fall").press("word-volts");
            read(hand, "flame-signal", "2.6");
            read(hand, "leak-high-limit", "22000");
            read(hand, "leak-outlet", "31000");
            tell(out, hand, "priced repair", priced(hand, true));
        }
        Runtime.getRuntime().halt(0);
    }

    private static void read(Hand hand, String check, String value) {
        hand.press("step-more").press("more-" + check);
        for (var digit : value.split("")) {
            hand.press("key-" + (digit.equals(".") ? "point" : digit));
        }
        if (CONDITIONS.containsKey(check)) {
            hand.press("condition-" + CONDITIONS.get(check));
        }
    }

    private static BenchModel bench(Hand hand) {
        return hand.model().bench().get().orElseThrow();
    }

    private static boolean priced(Hand hand, boolean repair) {
        return bench(hand)
                .judged()
                .get()
                .flatMap(Judged::quote)
                .filter(quote -> quote.repair() == repair)
                .isPresent();
    }

    private static void tell(PrintStream out, Hand hand, String what, boolean reached) {
        out.println(what + (reached ? ": " : " NOT REACHED: ") + hand.touches() + " touches, " + hand.letters()
                + " letters");
    }
}
