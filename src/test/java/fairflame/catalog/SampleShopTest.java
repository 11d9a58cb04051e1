package fairflame.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.quote.LineKind;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class SampleShopTest {
    private static final List<String> PIPE_SIZES = List.of("1/2", "3/4", "1", "1-1/4", "1-1/2", "2");

    private final Shop shop = SampleFolder.shop();

    @Test
    void theWholeFolderIsReadWithoutAProblem() {
        assertThat(ShopFiles.problems(SampleFolder.files()).stream().map(Refusal::getMessage))
                .isEmpty();
    }

    @Test
    void itHoldsEnoughPartsTasksAndPlacesForTheTrade() {
        assertThat(shop.parts()).hasSizeGreaterThanOrEqualTo(120);
        assertThat(shop.suppliers()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(shop.tasks()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(shop.jurisdictions()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(shop.tasks().stream().map(Task::id))
                .contains("R00", "R02", "R03", "R06b", "R18", "R20u", "R33")
                .doesNotHaveDuplicates();
    }

    @Test
    void everyEntryNamesItsSource() {
        assertThat(shop.parts()).allMatch(part -> !part.source().isBlank());
        assertThat(shop.access()).allMatch(step -> !step.source().isBlank());
        assertThat(shop.tasks()).allMatch(task -> !task.source().isBlank());
        assertThat(shop.book().remedies()).allMatch(remedy -> !remedy.source().isBlank());
        assertThat(shop.book().joints()).allMatch(joint -> !joint.source().isBlank());
    }

    @Test
    void everyTaskHasTimePlainWordsSkillAndWarranty() {
        assertThat(shop.tasks())
                .allMatch(task -> !task.times().isEmpty())
                .allMatch(task -> !task.plain().isBlank() && !task.plain().equals(task.title()))
                .allMatch(task -> !task.skills().isEmpty())
                .allMatch(task -> shop.book().warranty(task.warranty()).isPresent());
    }

    @Test
    void whereverAGasJointIsMadeTheSealantIsOneForGasOrNone() {
        var forGas = Set.of("gas-thread-compound", "gas-thread-tape", TaskRules.DRY);
        for (var task : shop.tasks()) {
            task.rules().joints().forEach((kind, sealant) -> {
                if (kind.startsWith("gas-")) {
                    assertThat(forGas).as(task.id() + " " + kind).contains(sealant);
                } else {
                    assertThat(sealant).as(task.id() + " " + kind).doesNotStartWith("gas-");
                }
            });
        }
    }

    @Test
    void everyTaskThatOpensGasOrWaterNamesItsJoints() {
        assertThat(shop.tasks().stream()
                        .filter(task -> task.access().contains("AX-GAS"))
                        .filter(task -> !task.rules().joints().containsKey("gas-seat"))
                        .map(Task::id))
                .as("the union at the heater is a dry metal seat")
                .isEmpty();
        assertThat(shop.tasks().stream()
                        .filter(task -> task.access().contains("AX-DRAIN"))
                        .filter(task ->
                                task.rules().joints().keySet().stream().noneMatch(kind -> kind.startsWith("water-")))
                        .map(Task::id))
                .isEmpty();
    }

    @Test
    void everyTaskThatOpensAGasJointIsLeakTestedAndSaysSo() {
        assertThat(shop.tasks().stream()
                        .filter(task -> task.access().contains("AX-GAS"))
                        .filter(task ->
                                !task.tests().contains("A") || !task.notes().contains("N-TEST"))
                        .map(Task::id))
                .isEmpty();
    }

    @Test
    void newGasPipingIsPressureTestedUnderAPermitByAGasFitter() {
        for (var id : List.of("R18", "R19", "R45")) {
            var task = shop.task(id);
            assertThat(task.tests()).as(id).contains("A", "P", "C", "K", "G");
            assertThat(task.regulatedGas()).as(id).isTrue();
            assertThat(task.permitClass()).as(id).isEqualTo("gas-piping");
            assertThat(task.access()).as(id).contains("AX-GASTEST");
            assertThat(task.rules().requires()).as(id).contains("pipe-sized");
            assertThat(task.needs()).extracting(PartNeed::role).as(id).contains("gas-cock", "sediment-trap");
        }
        assertThat(shop.task("R19").notes()).contains("N-DIG");
    }

    @Test
    void steelPipeAndItsFittingsAreThereInEverySize() {
        for (var size : PIPE_SIZES) {
            Stream.of("pipe", "ell-90", "ell-45", "tee", "coupling", "union", "nipple", "cap", "reducer")
                    .forEach(stem -> assertThat(
                                    shop.part(stem + "-steel-schedule-40", size).size())
                            .isEqualTo(size));
            assertThat(shop.part("gas-cock", size).supplier()).isEqualTo("gantry");
        }
    }

    @Test
    void aSwitchCostsThirtyTwoAndFallsOnTheStepOfFiftyPercent() {
        var cost = shop.part("SW-01").cost();
        var step = shop.ladder().steps().stream()
                .filter(candidate -> !candidate.from().isGreaterThan(cost))
                .reduce((lower, higher) -> higher)
                .orElseThrow();

        assertThat(cost).isEqualTo(Money.of(CurrencyUnit.USD, new BigDecimal("32.00")));
        assertThat(step.markup()).isEqualTo(Percent.parse("50"));
        assertThat(shop.part("water-thread-tape", "").listPrice())
                .contains(Money.of(CurrencyUnit.USD, new BigDecimal("1.00")));
    }

    @Test
    void ratesAreThoseOfTheWorkedCases() {
        assertThat(shop.rates().hourly().get(Trade.TECHNICIAN)).hasToString("USD 145.00");
        assertThat(shop.rates().hourly().get(Trade.GAS_FITTER)).hasToString("USD 145.00");
        assertThat(shop.rates().minimumHours()).isEqualByComparingTo("1.0");
        assertThat(shop.rates().roundUpTo()).isEqualByComparingTo("0.05");
        assertThat(shop.rates().trip().get("standard")).hasToString("USD 89.00");
        assertThat(shop.rates().ownFactors()).containsEntry("tight-space", new BigDecimal("1.15"));
        assertThat(shop.rates().ownHours()).containsEntry("corroded-fasteners", new BigDecimal("0.25"));
    }

    @Test
    void ownHoursFollowTheCounts() {
        var line = shop.task("R18");

        assertThat(line.ownHours(Map.of(Per.FOOT, BigDecimal.valueOf(84), Per.FITTING, BigDecimal.valueOf(14))))
                .isEqualByComparingTo("12.18");
        assertThat(line.ownHours(Map.of())).isEqualByComparingTo("0");
        assertThat(shop.task("R06").ownHours(Map.of())).isEqualByComparingTo("0.15");
    }

    @Test
    void theKindsOfLineThatAPlaceCanTaxAreThoseOfTheQuote() {
        assertThat(TaxRule.KINDS)
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(LineKind.values()).map(LineKind::word).toList());
    }

    @Test
    void partsAreMakerNeutral() {
        // A maker, model or brand name would stand out as a capital inside a description.
        var allowed = Set.of("PTFE", "EHD", "AWG", "GFCI", "VA", "V", "A", "F", "Btu/h", "Class", "O-ring", "O-rings");
        var word = Pattern.compile("[\\s,()]+");
        assertThat(shop.parts())
                .allSatisfy(part -> assertThat(word.splitAsStream(part.description())
                                .skip(1)
                                .filter(text -> !text.isEmpty() && Character.isUpperCase(text.charAt(0))))
                        .as(part.number())
                        .allMatch(allowed::contains));
    }

    @Test
    void peopleAndPlacesOfTheShopAreInvented() {
        assertThat(shop.suppliers())
                .allMatch(supplier -> supplier.phone().matches("555-01\\d\\d"))
                .allMatch(supplier -> supplier.email().endsWith(".example"));
        assertThat(shop.name()).contains("Larkwell");
    }

    @Test
    void lookupsNameWhatTheyDidNotFind() {
        assertThatThrownBy(() -> shop.part("XX-99"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("XX-99");
        assertThatThrownBy(() -> shop.part("gas-cock", "9"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("gas-cock")
                .hasMessageContaining("1-1/4");
        assertThatThrownBy(() -> shop.part("flying-carpet", "")).hasMessageContaining("no part has this role");
        assertThatThrownBy(() -> shop.part("flame-sensor", "9")).hasMessageContaining("(none)");
        assertThatThrownBy(() -> shop.anySize("flying-carpet")).isInstanceOf(Refusal.Unknown.class);
        assertThatThrownBy(() -> shop.task("R99"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("R99");
        assertThatThrownBy(() -> shop.supplier("nobody")).isInstanceOf(Refusal.Unknown.class);
        assertThat(shop.part("GP-01").cutToLength()).isTrue();
        assertThat(shop.part("GV-01").cutToLength()).isFalse();
        assertThat(shop.anySize("high-limit-switch").number()).isEqualTo("SW-01");
        assertThat(shop.knowsPlace("larkwell")).isTrue();
        assertThat(shop.knowsPlace("nowhere")).isFalse();
    }

    @Test
    void aPreferredPartGoesBeforeTheOthersOfItsRoleAndSize() {
        var files = SampleFolder.files();
        files.computeIfPresent(
                "parts.csv",
                (name, text) -> text
                        + "GP-91,pipe-steel-schedule-40,1/2,Steel gas pipe of another supplier,no,ft,1.10,,tern,0,yes,demo\n"
                        + "GP-92,pipe-steel-schedule-40,1/2,Steel gas pipe of a third supplier,no,ft,1.00,,tern,0,,demo\n");

        assertThat(ShopFiles.parse(files).part("pipe-steel-schedule-40", "1/2").number())
                .isEqualTo("GP-91");
        assertThat(shop.part("pipe-steel-schedule-40", "1/2").number()).isEqualTo("GP-01");
    }

    @Test
    void aShopWithoutABookCanStillPrice() {
        var bare = new Shop(
                "v",
                shop.currency(),
                shop.parts(),
                shop.suppliers(),
                shop.access(),
                shop.tasks(),
                shop.rates(),
                shop.ladder(),
                shop.jurisdictions());

        assertThat(bare.book()).isEqualTo(RepairBook.EMPTY);
        assertThat(bare.book().remedy("LD01")).isEmpty();
        assertThat(bare.unknownPlace()).isEmpty();
    }
}
