package fairflame.diagnosis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * A heater with one fault, as pipes, wires and water would behave: what each instrument would show if somebody used it.
 * Written from how such a heater works (common practice, no source), not from the rules that are put to the test.
 */
final class FaultyHeater {
    private static final double COIL = 48;
    private static final double INPUT = 400_000;

    private final Random random;
    private final String cause;
    private final Map<String, String> words = new TreeMap<>();
    private final Map<String, String> figures = new TreeMap<>();
    private final Map<String, String> plate = new LinkedHashMap<>();
    private final Map<String, Double> gas = new HashMap<>();

    // Gas, inches of water.
    private double supply;
    // Electricity.
    private double secondary;
    private double inside = 1.5;
    private double contacts = 0.3;
    private double sag;
    private double line;
    private double leakLimit = Double.POSITIVE_INFINITY;
    private double leakOutlet = Double.POSITIVE_INFINITY;
    // Flame and water.
    private double flame;
    private double cleaned;
    private double clean;
    private double excess;
    private double gallons;
    private double riseFactor = 1;
    private double share = 1;

    FaultyHeater(String cause, Random random) {
        this.cause = cause;
        this.random = random;
        plate.put("input", "400000btu/h");
        plate.put("minimum", "5inwc");
        plate.put("maximum", "14inwc");
        plate.put("manifold", "3.5inwc");
        plate.put("rise", "20");
        plate.put("flame", "1.5");
        healthy();
        break_();
        gasFigures();
        electricFigures();
        waterFigures();
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private boolean often() {
        return random.nextInt(4) > 0;
    }

    private void healthy() {
        supply = between(7.2, 10.5);
        for (var piece : List.of("meter", "pipe", "cock", "trap", "connector")) {
            gas.put(piece, piece.equals("pipe") ? between(0.2, 0.6) : between(0.02, 0.15));
        }
        secondary = between(25.8, 27.0);
        line = between(117, 123);
        flame = between(2.0, 5.0);
        cleaned = flame;
        clean = between(9, 14);
        excess = between(0, 4);
        gallons = between(50, 90);
        for (var pair : List.of(
                "scorch none",
                "rollout-fuse closed",
                "thermal-fuse closed",
                "wiring-look sound",
                "gfci holds",
                "burner-box dry",
                "joint-leak none",
                "worse-after-rain no",
                "worse-with-furnace no",
                "worse-in-wind no",
                "drops-at-pump-start no",
                "recent-gas-work no",
                "lights-after-tries no",
                "resets-as-it-cools no",
                "switch-bodies clean",
                "water-source none-found",
                "water-marks none",
                "cock-handle parallel",
                "wildlife none",
                "lock-up-trend settles",
                "line-regulator none",
                "dip-shape none",
                "common-to-chassis bonded",
                "wall-clearance as-plate",
                "air-openings clear",
                "vent-look clear",
                "soot none",
                "board-look dry",
                "board-moisture dry",
                "sensor-insulator intact",
                "call-for-heat present",
                "display on",
                "pump running",
                "breaker on",
                "transformer-tap matches",
                "gas-match match",
                "new-or-converted no",
                "connector rigid",
                "run-time enough",
                "heat-up as-computed",
                "bypass-valve right",
                "governor moves",
                "flame-look even",
                "air-in-water none",
                "water-pressure-switch closed",
                "air-switch steady",
                "air-hose sound",
                "blower at-speed",
                "draught-check on-plate",
                "flue-heat as-plate",
                "string-opens none",
                "valve-closes-with-volts no",
                "valve-coil in-range",
                "valve-click yes",
                "volts-trend steady",
                "wiggle steady",
                "low-volt-fuse closed",
                "sensor-resistance matches-table",
                "remote-contact closed",
                "flame-steadiness steady",
                "igniter-kind carbide",
                "igniter-glow glows",
                "inlet-screen clean",
                "pipe-section sound",
                "burner-look clean",
                "exchanger-look clean",
                "hard-water no",
                "rumble no",
                "leak-place none",
                "electrode-look sound",
                "bypass-pair drops-out")) {
            say(pair);
        }
        figure("ground-resistance", between(0.1, 0.6), "ohm");
        figure("igniter-ohms", between(45, 80), "ohm");
        figure("manifold", between(3.4, 3.6), "inwc");
        figure("manifold-idle", 0, "inwc");
        figure("line-rating", 120, "v");
        figure("transformer-va", 40, "va");
        figure("load-va", between(18, 28), "va");
        figure("module-in", between(24, 26), "v");
        figure("module-out", between(24, 26), "v");
        figure("valve-trial", between(24, 26), "v");
        figure("string-end", between(24, 26), "v");
        figure("contact-high-limit", between(0.05, 0.3), "ohm");
        figure("contact-outlet", between(0.05, 0.3), "ohm");
        figure("outdoor-temperature", between(60, 90), "f");
        figure("co-flue", between(10, 60), "ppm");
        figure("seconds-to-drop-out", between(4, 60), "s");
        figure("tries", random.nextInt(5) + 2.0, "times");
    }

    private void say(String pair) {
        var parts = pair.split(" ", 2);
        words.put(parts[0], parts[1]);
    }

    private void all(String... pairs) {
        for (var pair : pairs) {
            say(pair);
        }
    }

    private void figure(String check, double value, String unit) {
        figures.put(check, String.format(Locale.ROOT, "%.2f %s", value, unit));
    }

    private void minutes() {
        figure("seconds-to-drop-out", between(120, 1500), "s");
        all("bypass-pair stays-lit", "resets-as-it-cools yes");
    }

    private void dead() {
        figures.remove("seconds-to-drop-out");
        figures.remove("flame");
        words.remove("bypass-pair");
        words.remove("flame-look");
        flame = Double.NaN;
    }

    private void noFlame() {
        dead();
        figures.remove("tries");
    }

    private void starve(String piece, double low, double high) {
        gas.put(piece, between(low, high));
        share = between(0.6, 0.85);
        say("dip-shape falls-steadily");
        if (often()) {
            say("worse-with-furnace yes");
        }
    }

    @SuppressWarnings("checkstyle:MethodName")
    private void break_() {
        switch (cause) {
            case "LD01" -> {
                leakLimit = between(5, 90);
                leakOutlet = between(5, 90);
                contacts = between(2, 10);
                sag = between(6, 11);
                wet("both");
                figure("contact-high-limit", between(1, 8), "ohm");
                figure("contact-outlet", between(1, 8), "ohm");
            }
            case "LD02" -> {
                leakLimit = between(5, 90);
                contacts = between(2, 8);
                sag = between(6, 11);
                wet("high-limit");
                figure("contact-high-limit", between(1, 8), "ohm");
            }
            case "LD03" -> starve("pipe", 3.4, 5.5);
            case "LD03M" -> starve("meter", 3.4, 4.5);
            case "LD03R" -> {
                say("line-regulator present");
                starve("regulator", 3.4, 4.5);
            }
            case "LD04" -> {
                starve("cock", 3.4, 4.5);
                say(often() ? "cock-handle angled" : "cock-handle parallel");
            }
            case "LD03B" -> {
                starve("pipe", 3.6, 5);
                say(often() ? "pipe-section crushed" : "pipe-section blocked");
            }
            case "LD03C" -> {
                starve("connector", 3.4, 4.5);
                say("connector flexible");
            }
            case "LD03P" -> {
                plate.put("fuel", "propane");
                plate.put("minimum", "11inwc");
                plate.put("manifold", "10inwc");
                figure("manifold", between(9.8, 10.2), "inwc");
                supply = between(11.5, 12.5);
                starve("meter", 2.0, 4.0);
                say("tank-level low");
            }
            case "LD05" -> flame = between(0.3, 1.0);
            case "LD06" -> {
                flame = between(0.5, 1.2);
                cleaned = flame + between(0, 0.1);
                figure("ground-resistance", between(3, 50), "ohm");
            }
            case "LD07" -> {
                flame = between(0.4, 1.3);
                cleaned = flame;
                all("sensor-insulator cracked", "flame-steadiness unstable");
            }
            case "LD08" -> {
                inside = between(9, 14);
            }
            case "LD09" -> {
                line = between(95, 106);
                secondary *= line / 120;
                say("drops-at-pump-start yes");
            }
            case "LD10" -> {
                secondary = between(20.5, 21.8);
                say("transformer-tap wrong");
            }
            case "LD11" -> {
                figure("module-out", between(0, 1), "v");
                figure("valve-trial", between(0, 1), "v");
                say("fault-code flame");
            }
            case "LD12" -> {
                say("air-switch flutters");
                say(random.nextBoolean() ? "air-hose cracked" : "worse-in-wind yes");
                say("string-opens air");
            }
            case "LD13" -> {
                say("water-pressure-switch flutters");
                say("string-opens water-pressure");
                if (random.nextBoolean()) {
                    excess = between(9, 14);
                    gallons = between(32, 45);
                }
            }
            case "LD13A" ->
                all("water-pressure-switch flutters", "air-in-water bubbles", "string-opens water-pressure");
            case "LD14" -> {
                say("wiggle moves");
                say(random.nextBoolean() ? "wiring-look loose" : "wiring-look corroded");
                say("string-opens wire");
            }
            case "LD15" -> all("valve-closes-with-volts yes", "valve-coil out-of-range");
            case "LD16" ->
                all(
                        "flame-look one-burner-out",
                        random.nextBoolean() ? "burner-look web" : "burner-look blocked",
                        "wildlife web");
            case "LK01" -> all("joint-leak bubbles", "gas-detector alarm");
            case "LK02" -> figure("manifold-idle", between(0.4, 3), "inwc");
            case "LK03" -> {
                all("leak-place switch-thread", "water-source thread");
                leakLimit = random.nextBoolean() ? between(5, 90) : Double.POSITIVE_INFINITY;
            }
            case "LK04" -> all("leak-place header", "water-source gasket");
            case "LK05" -> {
                all("leak-place exchanger", "leak-when-warm continues", "loss-with-pump yes");
                if (random.nextBoolean()) {
                    say("exchanger-look pinhole");
                }
            }
            case "LK06" -> all("leak-place none", "leak-when-warm stops", "loss-with-pump no");
            case "LO02" -> {
                say("string-opens wire");
                say("wiggle moves");
            }
            case "LO03" ->
                all(
                        "three-tries all-in-band",
                        random.nextBoolean() ? "swap-test module-cures" : "swap-test board-cures");
            case "LO04" -> all(random.nextBoolean() ? "board-look green" : "board-look wet", "board-moisture found");
            case "AF01" -> {
                noFlame();
                supply = 0;
                say("cock-handle across");
            }
            case "AF02" -> {
                noFlame();
                all("recent-gas-work yes", "lights-after-tries yes");
            }
            case "AF03" -> {
                noFlame();
                say("igniter-glow dark");
                if (random.nextBoolean()) {
                    words.put("igniter-open", "open");
                    figures.put("igniter-ohms", "open");
                } else {
                    figure("igniter-ohms", between(120, 400), "ohm");
                }
            }
            case "AF04" -> {
                noFlame();
                figures.remove("igniter-ohms");
                words.remove("igniter-glow");
                all(
                        "igniter-kind spark",
                        random.nextBoolean() ? "spark to-side" : "spark none",
                        "electrode-look wide-gap");
            }
            case "AF05" -> {
                noFlame();
                figure("module-out", between(0, 1), "v");
                figure("valve-trial", between(0, 1), "v");
                say("valve-click no");
            }
            case "AF06" -> {
                noFlame();
                figure("manifold", 0, "inwc");
                say("valve-click no");
            }
            case "AF07" -> {
                figure("manifold", between(2.0, 2.9), "inwc");
                share = between(0.75, 0.9);
            }
            case "AF08" -> {
                noFlame();
                all("flame-look no-gas", "burner-look blocked");
            }
            case "AF09" -> {
                all("gas-match differs", "new-or-converted yes");
                say("flame-look lazy");
            }
            case "AF10" -> {
                if (random.nextBoolean()) {
                    starve("trap", 3.4, 4.5);
                } else {
                    starve("screen", 0.02, 0.1);
                    say("inlet-screen blocked");
                    figure("manifold", between(1.5, 2.8), "inwc");
                }
            }
            case "NI01" -> still("call-for-heat absent");
            case "NI02" -> {
                still("display dead");
                line = 0;
                secondary = 0;
                say("breaker tripped");
            }
            case "NI03" -> still("low-volt-fuse open");
            case "NI04" -> {
                still("water-pressure-switch open");
                if (random.nextBoolean()) {
                    excess = between(9, 14);
                }
            }
            case "NI04P" -> {
                still("water-pressure-switch open");
                say("pump stopped");
                gallons = 0;
            }
            case "NI05" -> {
                still("string-opens high-limit");
                figures.put("contact-high-limit", "open");
            }
            case "NI07" -> {
                still(random.nextBoolean() ? "air-switch stuck-open" : "air-switch stuck-closed");
            }
            case "NI08" -> still(random.nextBoolean() ? "blower hums" : "blower dead");
            case "NI09" -> {
                dead();
                figures.remove("tries");
                figure("module-out", between(0, 1), "v");
                figure("valve-trial", between(0, 1), "v");
            }
            case "NI10" -> still(random.nextBoolean() ? "sensor-resistance open" : "sensor-resistance short");
            case "NI11" -> still("remote-contact open");
            case "SR02" -> {
                all(
                        random.nextBoolean() ? "vent-look blocked" : "air-openings blocked",
                        "draught-check low",
                        "soot dry");
                figure("co-flue", between(120, 380), "ppm");
            }
            case "SR03" -> {
                all("exchanger-look sooted", "soot dry", "flue-heat hot");
                figure("co-flue", between(120, 380), "ppm");
            }
            case "SR04" -> {
                say("soot wet");
                riseFactor = 0.4;
                say("bypass-valve too-open");
            }
            case "SR06" -> {
                dead();
                say(random.nextBoolean() ? "rollout-fuse open" : "thermal-fuse open");
            }
            case "TM01" -> {
                minutes();
                excess = between(9, 15);
                riseFactor = between(2.2, 3);
                gallons = between(20, 30);
                figure("header-at-trip", between(132, 140), "f");
                say("fault-code limit");
            }
            case "TM02" -> {
                minutes();
                riseFactor = between(2.2, 3);
                say(random.nextBoolean() ? "bypass-valve stuck" : "governor stuck");
                figure("header-at-trip", between(132, 140), "f");
            }
            case "TM03" -> {
                minutes();
                all("exchanger-look scaled", "hard-water yes", "rumble yes", "flue-heat hot");
                riseFactor = between(2.0, 2.6);
                figure("header-at-trip", between(130, 138), "f");
            }
            case "TM04" -> {
                minutes();
                figure("header-at-trip", between(100, 120), "f");
                say(random.nextBoolean() ? "string-opens high-limit" : "string-opens outlet");
            }
            case "TM08" -> {
                minutes();
                words.put("bypass-pair", "drops-out");
                say("wall-clearance too-close");
                figure("intake-temperature", between(125, 160), "f");
            }
            case "TM09" -> {
                minutes();
                words.put("bypass-pair", "drops-out");
                say("volts-trend decays");
                inside = between(9, 14);
            }
            case "WH03" -> {
                dead();
                say("pool-cover uncovered");
            }
            case "WH04" -> {
                dead();
                riseFactor = 0.5;
                say(random.nextBoolean() ? "bypass-valve too-open" : "run-time short");
            }
            case "WH06" -> {
                dead();
                figure("display-temperature", 86, "f");
                figure("water-in", 80, "f");
            }
            default -> {
                // LO01 is the company of another fault; here it comes with none and must not settle by itself.
            }
        }
    }

    private void wet(String marks) {
        all("switch-bodies crust", "water-marks " + marks, "bypass-pair stays-lit", "first-to-fall volts");
        say(often() ? "worse-after-rain yes" : "worse-after-rain no");
    }

    private void still(String pair) {
        dead();
        figures.remove("tries");
        say(pair);
        // Somewhere before the end of the string the circuit is open: nothing arrives there or at the module.
        figure("module-in", between(0, 1), "v");
        figure("string-end", between(0, 1), "v");
        figure("module-out", between(0, 1), "v");
        figure("valve-trial", between(0, 1), "v");
    }

    private void gasFigures() {
        var meter = supply - gas.get("meter");
        var before = meter - gas.get("pipe") - gas.getOrDefault("regulator", 0.0);
        var after = before - gas.get("cock");
        var behindTrap = after - gas.get("trap");
        var firing = behindTrap - gas.get("connector");
        if (supply == 0) {
            figure("gas-static", 0, "inwc");
            return;
        }
        figure("gas-static", supply, "inwc");
        if (Double.isNaN(flame)) {
            figures.remove("manifold");
            if (cause.equals("AF06")) {
                figure("manifold", 0, "inwc");
            }
            return;
        }
        var dips = supply - firing > 2;
        if (dips && !words.containsKey("first-to-fall")) {
            say("first-to-fall gas");
        }
        figure("gas-firing", firing, "inwc");
        if (cause.equals("LD03R")) {
            figure("regulator-inlet-firing", between(48, 54), "inwc");
            figure("regulator-outlet-firing", supply - gas.get("regulator"), "inwc");
        } else {
            figure("gas-meter-firing", meter, "inwc");
        }
        figure("gas-before-cock", before, "inwc");
        figure("gas-after-cock", after, "inwc");
        figure("gas-before-trap", after, "inwc");
        figure("gas-after-trap", behindTrap, "inwc");
        figure("gas-before-connector", behindTrap, "inwc");
        figure("clocked-input", INPUT * share * between(0.98, 1.02), "btu/h");
    }

    private void electricFigures() {
        figure("line-volts", line, "v");
        figure("transformer-idle", secondary, "v");
        if (!Double.isNaN(flame)) {
            var current = secondary / (inside + contacts + COIL);
            figure("transformer-low", secondary - current * inside - 0.6 * sag, "v");
            figure("valve-low", current * COIL - sag, "v");
            if (flame < 1.4 && !words.containsKey("first-to-fall")) {
                say("first-to-fall flame");
            }
            figure("flame-signal", flame, "ua");
            if (cause.equals("LD05")) {
                cleaned = between(2.2, 4.5);
            }
            figure("flame-signal-cleaned", cleaned, "ua");
        }
        leak("leak-high-limit", leakLimit);
        leak("leak-outlet", leakOutlet);
        figures.put("leak-others", "open");
    }

    private void leak(String check, double kilohms) {
        if (Double.isInfinite(kilohms)) {
            figures.put(
                    check, random.nextBoolean() ? "open" : String.format(Locale.ROOT, "%.0f megohm", between(5, 40)));
        } else {
            figure(check, kilohms, "kilohm");
        }
    }

    private void waterFigures() {
        figure("filter-clean-pressure", clean, "psi");
        figure("filter-pressure", clean + excess, "psi");
        if (gallons > 0) {
            figure("water-flow", gallons, "gpm");
        }
        if (!figures.containsKey("water-in")) {
            figure("water-in", between(60, 84), "f");
        }
        if (!Double.isNaN(flame) || cause.startsWith("WH")) {
            // Btu/h = 500 x gpm x F (8.34 lb to the gallon x 60 min)
            figure("water-rise", Math.min(60, INPUT * share * 0.82 / (500 * Math.max(gallons, 45)) * riseFactor), "f");
        }
    }

    /** Plate lines for a {@link Visit}. */
    String[] plate() {
        return plate.entrySet().stream()
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .toArray(String[]::new);
    }

    /** Loss that the pipe really has, and what its drawing predicts: the same only where pipe size is the fault. */
    double[] pipe() {
        var real = gas.get("pipe");
        return new double[] {real, cause.equals("LD03B") ? between(0.2, 0.5) : real};
    }

    /** Whether this fault lets the gas pressure dip. */
    boolean dips() {
        return words.getOrDefault("dip-shape", "none").equals("falls-steadily");
    }

    /** What a technician of this thoroughness, 0 to 1, reads, each with an instrument error of about one percent. */
    List<String> readings(double thoroughness) {
        var lines = new ArrayList<String>();
        words.forEach((check, word) -> {
            if (!check.equals("igniter-open") && random.nextDouble() < thoroughness) {
                lines.add(check + " " + word + conditions(check));
            }
        });
        figures.forEach((check, text) -> {
            if (random.nextDouble() < thoroughness) {
                lines.add(check + " " + shown(text) + conditions(check));
            }
        });
        return lines;
    }

    private static String conditions(String check) {
        return switch (check) {
            case "leak-high-limit", "leak-outlet" -> " [ohmmeter, warm, leads-lifted]";
            case "gas-firing", "gas-meter-firing" -> " [u-tube, furnace-on]";
            case "gas-static" -> " [u-tube]";
            case "valve-low", "transformer-low" -> " [multimeter-minimum-hold]";
            case "flame-signal", "flame-signal-cleaned" -> " [microammeter, in-series, after-two-minutes]";
            default -> "";
        };
    }

    private String shown(String text) {
        if (text.equals("open")) {
            return text;
        }
        var parts = text.split(" ", 2);
        var exact = Double.parseDouble(parts[0]);
        var read = Math.max(0, exact * (1 + 0.01 * Math.max(-2.5, Math.min(2.5, random.nextGaussian()))));
        return String.format(Locale.ROOT, parts[1].equals("times") ? "%.0f %s" : "%.1f %s", read, parts[1]);
    }
}
