package fairflame.quote;

import static fairflame.quote.DemoScopes.job;
import static fairflame.quote.DemoScopes.pieces;
import static fairflame.quote.DemoShop.dec;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Per;
import fairflame.catalog.Shop;
import fairflame.catalog.StandardTime;
import fairflame.catalog.Task;
import fairflame.catalog.Trade;
import fairflame.repair.ScopedTask;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Standard times are invented for the demo; the sums were worked by hand from them. */
class LabourTest {
    private static LabourBill bill(List<ScopedTask> tasks, String... conditions) {
        return bill(DemoShop.SHOP, DemoShop.CITY, tasks, conditions);
    }

    private static LabourBill bill(Shop shop, Jurisdiction place, List<ScopedTask> tasks, String... conditions) {
        return new Labour(shop, place).bill(tasks, Set.of(conditions));
    }

    @Test
    void oneSwitchTakesItsOwnTimeAndTheAccess() {
        // 0.30 + (0.10 + 0.15 + 0.25 + 0.25) = 1.05
        assertThat(bill(List.of(pieces(DemoShop.R03, "1"))).hours()).isEqualByComparingTo("1.05");
    }

    @Test
    void thePairSharesTheAccess() {
        // 0.30 x 2 + 0.75 = 1.35, not 2.10
        assertThat(bill(List.of(pieces(DemoShop.R03, "2"))).hours()).isEqualByComparingTo("1.35");
    }

    @Test
    void thePairAndTheSensorShareTheAccess() {
        // 0.60 + 0.15 + 0.75 = 1.50
        assertThat(bill(List.of(pieces(DemoShop.R03, "2"), job(DemoShop.R06))).hours())
                .isEqualByComparingTo("1.50");
    }

    @Test
    void aLineOfPipeIsCountedByFeetAndFittingsAndRoundedUpOnce() {
        // 84 x 0.12 + 14 x 0.15 = 12.18; + 0.25 + 0.75 + 0.25 + 0.25 = 13.68; up to 13.70
        var bill = bill(DemoScopes.LARGER_LINE.tasks());
        assertThat(bill.hours()).isEqualByComparingTo("13.70");
        assertThat(words(bill)).contains("13.68 h in all, rounded up once to 13.70 h");
        assertThat(words(bill)).contains("R18, task R18: 0.12 h x 84 feet + 0.15 h x 14 fittings = 12.18 h");
    }

    @Test
    void impliedStepsArePulledInOnce() {
        // R15: own 0.90; GAS .25 TRAY .60 (pulls PANEL .15 ELEC .10) RUN .25 ANALYSE .25 = 1.60; 2.50
        assertThat(bill(List.of(job(DemoShop.R15))).hours()).isEqualByComparingTo("2.50");
        // R25: own 1.50; all but BOARD and GASTEST: .10+.15+.30+.25+.25+.60+1.20+.25+.25 = 3.35; 4.85
        assertThat(bill(List.of(job(DemoShop.R25))).hours()).isEqualByComparingTo("4.85");
        assertThat(bill(List.of(job(DemoShop.R25), job(DemoShop.R15))).hours()).isEqualByComparingTo("5.75");
    }

    @Test
    void conditionsActOnOwnTimeOnly() {
        // 0.60 x 1.15 = 0.69; + 0.75 = 1.44; up to 1.45. On everything it would be 1.5525, up to 1.60.
        assertThat(bill(List.of(pieces(DemoShop.R03, "2")), "tight-space").hours())
                .isEqualByComparingTo("1.45");
        // 0.60 x 1.15 x 1.10 = 0.759; + 0.75 = 1.509; up to 1.55
        assertThat(bill(List.of(pieces(DemoShop.R03, "2")), "tight-space", "after-dark")
                        .hours())
                .isEqualByComparingTo("1.55");
        // 0.25 once, however many tasks: 0.60 + 0.15 + 0.75 + 0.25 = 1.75
        assertThat(bill(List.of(pieces(DemoShop.R03, "2"), job(DemoShop.R06)), "corroded-fasteners")
                        .hours())
                .isEqualByComparingTo("1.75");
    }

    @Test
    void everyStandardTimeIsNamed() {
        var words =
                words(bill(List.of(pieces(DemoShop.R03, "2"), job(DemoShop.R06)), "tight-space", "corroded-fasteners"));
        assertThat(words)
                .contains("R03, task R03: 0.30 h x 2 pieces = 0.60 h; x 1.15 for tight-space = 0.69 h")
                .contains("R06, task R06: 0.15 h = 0.15 h; x 1.15 for tight-space = 0.1725 h")
                .contains("AX-PANEL, step AX-PANEL: 0.15 h, once for R03, R06")
                .contains("AX-DRAIN, step AX-DRAIN: 0.25 h, once for R03")
                .contains("corroded-fasteners: 0.25 h, once");
        assertThat(words).filteredOn(line -> line.startsWith("AX-")).hasSize(4);
    }

    @Test
    void tradesWithTheirOwnRatesStandApart() {
        var shop = DemoShop.shop(DemoShop.rates(Map.of(
                Trade.TECHNICIAN, usd("145.00"), Trade.GAS_FITTER, usd("165.00"), Trade.ELECTRICIAN, usd("155.00"))));
        var bill = bill(shop, DemoShop.CITY, List.of(job(DemoShop.R06), job(DemoShop.R10)));
        // Fitter: 0.80 own + GAS .25 + ANALYSE .25 = 1.30. Technician: 0.15 + ELEC .10 + PANEL .15 + RUN .25 = 0.65.
        assertThat(bill.shares()).extracting(LabourBill.Share::rate).containsExactly(usd("145.00"), usd("165.00"));
        assertThat(bill.shares().get(0).hours()).isEqualByComparingTo("0.65");
        assertThat(bill.shares().get(1).hours()).isEqualByComparingTo("1.30");
        assertThat(bill.shares().get(1).trades()).containsExactly(Trade.GAS_FITTER);
        // Both people are needed for the heater: the dearer rate.
        assertThat(bill(shop, DemoShop.CITY, List.of(job(DemoShop.R28))).shares())
                .extracting(LabourBill.Share::rate)
                .containsExactly(usd("165.00"));
    }

    @Test
    void thePlaceDecidesWhoOpensATestTap() {
        var shop =
                DemoShop.shop(DemoShop.rates(Map.of(Trade.TECHNICIAN, usd("145.00"), Trade.GAS_FITTER, usd("165.00"))));
        assertThat(bill(shop, DemoShop.CITY, List.of(job(DemoShop.R15)))
                        .shares()
                        .get(0)
                        .rate())
                .isEqualTo(usd("145.00"));
        assertThat(bill(shop, DemoShop.STRICT, List.of(job(DemoShop.R15)))
                        .shares()
                        .get(0)
                        .rate())
                .isEqualTo(usd("165.00"));
    }

    @Test
    void theOrderOfTasksNeverMatters() {
        var seed = 20261101L;
        var random = new Random(seed);
        var all = List.of(
                pieces(DemoShop.R03, "2"), job(DemoShop.R06), job(DemoShop.R10), job(DemoShop.R15), job(DemoShop.R25));
        var shop =
                DemoShop.shop(DemoShop.rates(Map.of(Trade.TECHNICIAN, usd("145.00"), Trade.GAS_FITTER, usd("165.00"))));
        for (int i = 0; i < 200; i++) {
            var tasks = new ArrayList<>(all.subList(0, 1 + random.nextInt(all.size())));
            var straight = bill(shop, DemoShop.CITY, tasks, "tight-space");
            Collections.shuffle(tasks, random);
            var shuffled = bill(shop, DemoShop.CITY, tasks, "tight-space");
            assertThat(shuffled.hours()).as("seed %d case %d", seed, i).isEqualByComparingTo(straight.hours());
            for (int s = 0; s < straight.shares().size(); s++) {
                assertThat(shuffled.shares().get(s).hours())
                        .as("seed %d case %d share %d", seed, i, s)
                        .isEqualByComparingTo(straight.shares().get(s).hours());
            }
            assertThat(shuffled.shares().stream().map(LabourBill.Share::hours).reduce(BigDecimal.ZERO, BigDecimal::add))
                    .as("seed %d case %d", seed, i)
                    .isEqualByComparingTo(shuffled.hours());
        }
    }

    @Test
    void noTaskMeansNoHours() {
        assertThat(bill(List.of()).hours()).isZero();
        assertThat(bill(List.of()).shares()).isEmpty();
    }

    @Test
    void whatIsMissingIsRefusedByName() {
        var untimed = new Task(
                "R99",
                "t",
                "p",
                List.of(),
                Set.of(),
                List.of(),
                Set.of(),
                Set.of(Trade.TECHNICIAN),
                "none",
                Set.of(),
                Set.of(),
                List.of(),
                "",
                "invented for the demo");
        refused("standard time of task R99", job(untimed));
        refused("count of pieces for task R03", job(DemoShop.R03));
        refused("count of pieces for task R03", pieces(DemoShop.R03, "-1"));
        var lost = new Task(
                "R98",
                "t",
                "p",
                List.of(new StandardTime(dec("0.1"), Per.JOB)),
                Set.of("AX-NONE"),
                List.of(),
                Set.of(),
                Set.of(Trade.TECHNICIAN),
                "none",
                Set.of(),
                Set.of(),
                List.of(),
                "",
                "invented for the demo");
        refused("access step 'AX-NONE'", job(lost));
        var nobody = new Task(
                "R97",
                "t",
                "p",
                List.of(new StandardTime(dec("0.1"), Per.JOB)),
                Set.of(),
                List.of(),
                Set.of(),
                Set.of(),
                "none",
                Set.of(),
                Set.of(),
                List.of(),
                "",
                "invented for the demo");
        refused("trade of task R97", job(nobody));
        assertThatThrownBy(() -> bill(List.of(job(DemoShop.R06)), "full-moon"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessage(
                        "time condition 'full-moon' is refused; allowed: after-dark, corroded-fasteners, tight-space");
        var unpaid = DemoShop.shop(DemoShop.rates(Map.of(Trade.GAS_FITTER, usd("165.00"))));
        assertThatThrownBy(() -> bill(unpaid, DemoShop.CITY, List.of(job(DemoShop.R06))))
                .hasMessageContaining("hourly rate of the service technician");
    }

    private static void refused(String words, ScopedTask task) {
        assertThatThrownBy(() -> bill(List.of(task)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(words);
    }

    private static List<String> words(LabourBill bill) {
        return bill.shares().stream()
                .flatMap(share -> share.basis().stream())
                .map(Basis::words)
                .toList();
    }
}
