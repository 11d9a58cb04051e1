package fairflame.quote;

import fairflame.catalog.AccessStep;
import fairflame.catalog.DepositRule;
import fairflame.catalog.GasTestRule;
import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Part;
import fairflame.catalog.Per;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.PriceLadder;
import fairflame.catalog.Rates;
import fairflame.catalog.Shop;
import fairflame.catalog.StandardTime;
import fairflame.catalog.Task;
import fairflame.catalog.TaskRules;
import fairflame.catalog.TaxRule;
import fairflame.catalog.Trade;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A small shop by hand: rate 145.00, minimum 1.0 h, trip 89.00, tax 6 % + 1.25 %. Invented for the demo. */
public final class DemoShop {
    public static final CurrencyUnit USD = CurrencyUnit.USD;
    private static final String DEMO = "invented for the demo";

    private DemoShop() {}

    public static Money usd(String amount) {
        return Money.of(USD, new BigDecimal(amount));
    }

    public static BigDecimal dec(String digits) {
        return new BigDecimal(digits);
    }

    public static Percent pct(String digits) {
        return new Percent(new BigDecimal(digits));
    }

    public static final Part LIMIT = part("SW-100", "high-limit-switch", false, "each", "32.00");
    public static final Part OUTLET = part("SW-110", "outlet-temperature-switch", false, "each", "32.00");
    public static final Part TAPE = listed("TS-010", "thread-seal-tape", "wrap", "0.40", "1.00");
    public static final Part PIPE = part("PI-125", "pipe-steel-schedule-40", false, "ft", "4.10");
    public static final Part DOPE = part("SE-020", "gas-thread-compound", true, "tube", "7.35");

    private static Part part(String number, String role, boolean consumable, String unit, String cost) {
        return new Part(
                number,
                role,
                "",
                role.replace('-', ' '),
                consumable,
                unit,
                usd(cost),
                Optional.empty(),
                "S1",
                12,
                DEMO);
    }

    private static Part listed(String number, String role, String unit, String cost, String list) {
        return new Part(
                number, role, "", role.replace('-', ' '), true, unit, usd(cost), Optional.of(usd(list)), "S1", 0, DEMO);
    }

    public static final Task R00 = task("R00", List.of(once("0.15")), "RUN", "H", "none", Trade.TECHNICIAN);
    public static final Task R03 = task(
            "R03",
            List.of(new StandardTime(dec("0.30"), Per.PIECE)),
            "ELEC PANEL DRAIN RUN",
            "B D E H",
            "minor-part",
            Trade.TECHNICIAN);
    public static final Task R06 =
            task("R06", List.of(once("0.15")), "ELEC PANEL RUN", "F", "minor-part", Trade.TECHNICIAN);
    public static final Task R10 =
            task("R10", List.of(once("0.80")), "ELEC PANEL GAS RUN ANALYSE", "A C G", "gas-valve", Trade.GAS_FITTER);
    public static final Task R15 =
            task("R15", List.of(once("0.90")), "GAS TRAY RUN ANALYSE", "A C G", "none", Trade.TEST_TAP);
    public static final Task R16 = ruled(
            new TaskRules(Map.of(), Set.of("released"), Set.of(), Set.of(), Set.of("R15", "R25"), Set.of()),
            task("R16", List.of(once("0.25")), "ELEC PANEL RUN ANALYSE", "D G", "minor-part", Trade.TECHNICIAN));
    public static final Task R18 = task(
            "R18",
            List.of(new StandardTime(dec("0.12"), Per.FOOT), new StandardTime(dec("0.15"), Per.FITTING)),
            "GAS GASTEST RUN ANALYSE",
            "A C G K P",
            "gas-piping",
            Trade.GAS_FITTER);
    public static final Task R25 = ruled(
            new TaskRules(Map.of(), Set.of("cause-named"), Set.of(), Set.of(), Set.of(), Set.of()),
            task(
                    "R25",
                    List.of(once("1.50")),
                    "ELEC PANEL TOP GAS TRAY EXCH RUN ANALYSE",
                    "A C G",
                    "none",
                    Trade.GAS_FITTER));
    public static final Task R28 = task(
            "R28",
            List.of(once("5.00")),
            "ELEC GAS DRAIN RUN ANALYSE",
            "A B C",
            "heater",
            Trade.GAS_FITTER,
            Trade.ELECTRICIAN);

    private static StandardTime once(String hours) {
        return new StandardTime(dec(hours), Per.JOB);
    }

    private static Task task(
            String id, List<StandardTime> times, String access, String tests, String permitClass, Trade... trades) {
        return new Task(
                id,
                "task " + id,
                "what " + id + " does",
                times,
                words(access).stream().map(step -> "AX-" + step).collect(Collectors.toSet()),
                List.of(),
                words(tests),
                Set.of(trades),
                permitClass,
                Set.of(),
                Set.of(),
                List.of(),
                "parts-1-year",
                DEMO);
    }

    private static Task ruled(TaskRules rules, Task task) {
        return new Task(
                task.id(),
                task.title(),
                task.plain(),
                task.times(),
                task.access(),
                task.needs(),
                task.tests(),
                task.trades(),
                task.permitClass(),
                task.notes(),
                task.conflicts(),
                task.skills(),
                task.warranty(),
                rules,
                task.source());
    }

    private static Set<String> words(String text) {
        return Arrays.stream(text.split(" ")).collect(Collectors.toSet());
    }

    private static final List<AccessStep> ACCESS = List.of(
            step("AX-ELEC", "0.10"),
            step("AX-PANEL", "0.15"),
            step("AX-TOP", "0.30"),
            step("AX-GAS", "0.25"),
            step("AX-DRAIN", "0.25"),
            step("AX-TRAY", "0.60", "AX-GAS", "AX-PANEL", "AX-ELEC"),
            step("AX-EXCH", "1.20", "AX-TOP", "AX-DRAIN", "AX-TRAY"),
            step("AX-BOARD", "0.10"),
            step("AX-RUN", "0.25"),
            step("AX-ANALYSE", "0.25"),
            step("AX-GASTEST", "0.75"));

    private static AccessStep step(String id, String hours, String... needs) {
        return new AccessStep(id, "step " + id, dec(hours), Set.of(needs), DEMO);
    }

    public static final Rates RATES = rates(Map.of(Trade.TECHNICIAN, usd("145.00")));

    public static Rates rates(Map<Trade, Money> hourly) {
        return new Rates(
                hourly,
                dec("1.0"),
                Map.of("near", usd("89.00"), "far", usd("124.00")),
                usd("120.00"),
                30,
                dec("0.05"),
                Map.of("tight-space", dec("1.15"), "after-dark", dec("1.10")),
                Map.of("corroded-fasteners", dec("0.25")),
                DEMO);
    }

    public static Shop shop(Rates rates) {
        return new Shop(
                "demo catalog 2026-11-01",
                USD,
                List.of(LIMIT, OUTLET, TAPE, PIPE, DOPE),
                List.of(),
                ACCESS,
                List.of(R00, R03, R06, R10, R15, R16, R18, R25, R28),
                rates,
                new PriceLadder(
                        List.of(
                                new PriceLadder.Step(usd("0.00"), pct("100")),
                                new PriceLadder.Step(usd("20.00"), pct("50")),
                                new PriceLadder.Step(usd("200.00"), pct("30"))),
                        DEMO),
                List.of(CITY, STRICT));
    }

    public static final TaxRule PARTS_725 = tax(true, false, "6", "1.25");

    public static TaxRule tax(boolean combined, boolean perItem, String... rates) {
        var names = List.of("State", "County", "City");
        var layers = java.util.stream.IntStream.range(0, rates.length)
                .mapToObj(i -> new TaxRule.Layer(names.get(i), pct(rates[i])))
                .toList();
        return new TaxRule(layers, Set.of("part", "consumable"), combined, perItem, Rounding.NEAREST, DEMO);
    }

    public static final DepositRule TENTH =
            new DepositRule(pct("10"), Optional.of(pct("10")), Optional.of(usd("1000.00")), DEMO);

    /** Minor parts free of permit, valve to be asked, piping needs one; fee 120.00 untaxed. */
    public static final Jurisdiction CITY = new Jurisdiction(
            "demo-city",
            "Demo City",
            List.of("model fuel gas code, 2018"),
            Map.of(
                    "minor-part", PermitNeed.NO,
                    "gas-valve", PermitNeed.ASK,
                    "gas-piping", PermitNeed.YES,
                    "heater", PermitNeed.YES),
            usd("120.00"),
            false,
            Set.of(Trade.TECHNICIAN, Trade.GAS_FITTER),
            "licensed gas fitter",
            "GF-\\d{5}",
            new GasTestRule(dec("3"), 15, dec("5"), true, DEMO),
            PARTS_725,
            TENTH,
            30,
            3,
            true,
            Map.of(),
            Map.of(),
            Set.of(),
            DEMO);

    /** Labour taxed too, tax on each line, fee taxed, one third, only the gas fitter opens a test tap. */
    public static final Jurisdiction STRICT = new Jurisdiction(
            "upper-lake",
            "Upper Lake",
            List.of("another model gas code, 2021"),
            Map.of("gas-valve", PermitNeed.NO, "gas-piping", PermitNeed.YES),
            usd("85.00"),
            true,
            Set.of(Trade.GAS_FITTER),
            "master gas installer",
            "",
            new GasTestRule(dec("10"), 15, dec("4"), false, DEMO),
            new TaxRule(
                    List.of(new TaxRule.Layer("State", pct("8"))),
                    Set.of("part", "consumable", "labour", "trip", "diagnosis"),
                    false,
                    true,
                    Rounding.NEAREST,
                    DEMO),
            new DepositRule(pct("50"), Optional.of(pct("33.333333")), Optional.empty(), DEMO),
            14,
            5,
            false,
            Map.of(),
            Map.of(),
            Set.of(),
            DEMO);

    public static final Shop SHOP = shop(RATES);
}
