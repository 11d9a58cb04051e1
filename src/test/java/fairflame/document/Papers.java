package fairflame.document;

import fairflame.catalog.DepositRule;
import fairflame.catalog.GasTestRule;
import fairflame.catalog.TaxRule;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.quote.Basis;
import fairflame.quote.Gauge;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import fairflame.quote.Note;
import fairflame.quote.Party;
import fairflame.quote.PlaceRules;
import fairflame.quote.TaxAmount;
import fairflame.quote.Totals;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What the invented quotes of these tests share: people, words, lines, totals, rules of the place. */
final class Papers {
    static final Party SELLER = new Party(
            "Sandpiper Pool Heat",
            List.of("18 Quay Street", "Larkwell, Corran County 04417"),
            "555-0142",
            "desk@sandpiperpoolheat.example",
            "");

    static final String LICENCE =
            "Corran County appliance service licence AS-20731. Gas work by our licensed gas fitters only.";

    static final Party CUSTOMER = new Party(
            "Imogen Varga",
            List.of("7 Heron Lane", "Larkwell, Corran County 04417"),
            "555-0117",
            "imogen@example.com",
            "owner");

    private Papers() {}

    static PaperText text() {
        return text("en");
    }

    static PaperText text(String language) {
        return PaperText.parse(templates(), language);
    }

    /** The templates that travel with the program. */
    static Map<String, String> templates() {
        var files = new TreeMap<String, String>();
        var folder = Path.of("templates");
        try (var paths = Files.walk(folder)) {
            for (var path : paths.filter(Files::isRegularFile)
                    .filter(path -> !path.toString().endsWith(".xlsx"))
                    .toList()) {
                files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readString(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    /** The spreadsheet layouts that travel with the program. */
    static SheetTemplates sheets() {
        return SHEETS;
    }

    private static final SheetTemplates SHEETS = read();

    private static SheetTemplates read() {
        var files = new TreeMap<String, byte[]>();
        try {
            for (var name : List.of(SheetTemplates.QUOTE, SheetTemplates.INVOICE)) {
                files.put(name, Files.readAllBytes(Path.of("templates", name)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return SheetTemplates.parse(files);
    }

    static Money usd(String amount) {
        return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
    }

    static Line line(
            String id, LineKind kind, String words, String quantity, String unit, String price, boolean taxable) {
        var net = Rounding.NEAREST.times(usd(price), new BigDecimal(quantity));
        return new Line(
                id,
                kind,
                "",
                words,
                new BigDecimal(quantity),
                unit,
                usd(price),
                net,
                usd("0"),
                taxable,
                false,
                List.of(new Basis("catalog row", words + " at " + price, "invented for the demo")));
    }

    /** Totals with one combined rate on the taxable lines, rounded once. */
    static Totals totals(List<Line> lines, String name, String percent) {
        var net = sum(lines, line -> true);
        var base = sum(lines, Line::taxable);
        var rate = Percent.parse(percent);
        var tax = Rounding.NEAREST.times(base, rate.factor());
        return new Totals(net, usd("0"), List.of(new TaxAmount(name, rate, base, tax)), tax, net.plus(tax));
    }

    private static Money sum(List<Line> lines, java.util.function.Predicate<Line> which) {
        return lines.stream().filter(which).map(Line::afterDiscount).reduce(usd("0"), Money::plus);
    }

    static PlaceRules rules() {
        return new PlaceRules(
                "larkwell",
                new TaxRule(
                        List.of(
                                new TaxRule.Layer("State", Percent.parse("6")),
                                new TaxRule.Layer("County", Percent.parse("1.25"))),
                        Set.of("part", "consumable"),
                        true,
                        false,
                        Rounding.NEAREST,
                        "invented for the demo"),
                new DepositRule(Percent.parse("10"), Optional.of(Percent.parse("10")), Optional.empty(), "invented"),
                "licensed gas fitter",
                "GF-\\d{5}",
                GAS_TEST,
                3,
                true,
                Percent.parse("0"));
    }

    static final GasTestRule GAS_TEST = gasTest();

    static Gauge pressure(String resting, String firing, Gauge.Verdict verdict, String words) {
        return new Gauge(
                "Gas pressure at the heater",
                "in w.c.",
                Optional.of(new BigDecimal(resting)),
                new BigDecimal(firing),
                Optional.of(new BigDecimal("6.0")),
                Optional.of(new BigDecimal("10.5")),
                verdict,
                words);
    }

    static Gauge volts(String idle, String firing, Gauge.Verdict verdict, String words) {
        return new Gauge(
                "Voltage at the gas valve",
                "V",
                Optional.of(new BigDecimal(idle)),
                new BigDecimal(firing),
                Optional.of(new BigDecimal("20.4")),
                Optional.of(new BigDecimal("28.8")),
                verdict,
                words);
    }

    static final List<Note> ALWAYS = List.of(
            new Note(
                    "N-LOCAL",
                    "Local code, the permit office and the licensed professional decide. Where they ask for more than this paper, they are followed.",
                    false,
                    "always"),
            new Note(
                    "N-HIDDEN",
                    "Damage that shows only later is first shown to you and priced. Nothing goes on without your yes.",
                    false,
                    "always"));

    private static GasTestRule gasTest() {
        return new GasTestRule(new BigDecimal("3"), 15, new BigDecimal("5"), true, "invented for the demo");
    }
}
