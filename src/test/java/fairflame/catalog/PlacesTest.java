package fairflame.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class PlacesTest {
    private final Shop shop = SampleFolder.shop();

    @Test
    void theFirstPlaceIsAsTheDemoProfileSays() {
        var place = shop.jurisdiction("larkwell");

        assertThat(place.permit("minor-part")).isEqualTo(PermitNeed.NO);
        assertThat(place.permit("gas-valve")).isEqualTo(PermitNeed.ASK);
        assertThat(place.permit("gas-piping")).isEqualTo(PermitNeed.YES);
        assertThat(place.permit("none")).isEqualTo(PermitNeed.NO);
        assertThat(place.permitFee()).isEqualTo(usd("120.00"));
        assertThat(place.permitFeeTaxed()).isFalse();
        assertThat(place.testTap()).containsExactly(Trade.TECHNICIAN);
        assertThat("GF-20417").matches(place.gasLicencePattern());
        assertThat(place.gasTest().psi()).isEqualByComparingTo("3");
        assertThat(place.gasTest().minutes()).isEqualTo(15);
        assertThat(place.gasTest().gaugeFactor()).isEqualByComparingTo("5");
        assertThat(place.gasTest().witness()).isTrue();
        assertThat(place.tax().layers())
                .extracting(TaxRule.Layer::rate)
                .containsExactly(Percent.parse("6"), Percent.parse("1.25"));
        assertThat(place.tax().taxableKinds()).containsExactlyInAnyOrder("part", "consumable");
        assertThat(place.tax().combined()).isTrue();
        assertThat(place.tax().perItem()).isFalse();
        assertThat(place.deposit().capAmount()).contains(usd("1000.00"));
        assertThat(place.validityDays()).isEqualTo(30);
        assertThat(place.cancelDays()).isEqualTo(3);
        assertThat(place.cancelAlways()).isTrue();
        assertThat(place.unknown()).isEmpty();
        assertThat(place.assumed()).isFalse();
    }

    @Test
    void theThreePlacesDifferInEveryFieldThatMatters() {
        var places = shop.jurisdictions();

        assertThat(places).hasSize(3);
        assertThat(places).extracting(Jurisdiction::permits).doesNotHaveDuplicates();
        assertThat(places).extracting(Jurisdiction::permitFee).doesNotHaveDuplicates();
        assertThat(places).extracting(Jurisdiction::gasLicence).doesNotHaveDuplicates();
        assertThat(places).extracting(Jurisdiction::gasLicencePattern).doesNotHaveDuplicates();
        assertThat(places).extracting(place -> place.gasTest().psi()).doesNotHaveDuplicates();
        assertThat(places).extracting(place -> place.tax().layers()).doesNotHaveDuplicates();
        assertThat(places).extracting(place -> place.tax().taxableKinds()).doesNotHaveDuplicates();
        assertThat(places).extracting(Jurisdiction::deposit).doesNotHaveDuplicates();
        assertThat(places).extracting(Jurisdiction::validityDays).doesNotHaveDuplicates();
        assertThat(places)
                .extracting(place -> place.tax().combined() + " " + place.tax().perItem() + " "
                        + place.tax().rounding())
                .containsExactlyInAnyOrder("true false NEAREST", "false true NEAREST", "false false DOWN");
        assertThat(places.stream().filter(Jurisdiction::permitFeeTaxed)).hasSize(1);
        assertThat(places.stream().filter(place -> place.testTap().contains(Trade.TECHNICIAN)))
                .hasSize(1);
    }

    @Test
    void aFieldThatIsUnknownTakesTheCautiousSideAndIsRemembered() {
        var place = shop.jurisdiction("osier-bay");

        assertThat(place.unknown()).contains("testTap", "cancel", "sedimentTrap", "buriedCover");
        assertThat(place.testTap()).containsExactly(Trade.GAS_FITTER);
        assertThat(place.cancelDays()).isEqualTo(5);
        assertThat(place.cancelAlways()).isTrue();
        assertThat(place.permit("vent")).isEqualTo(PermitNeed.ASK);
        assertThat(place.sourceOf("gasTest")).isEqualTo("S-PTX");
        assertThat(place.sourceOf("tax")).isEqualTo("invented for the demo");
    }

    @Test
    void aFieldThatIsLeftOutCountsAsUnknown() {
        var files = SampleFolder.files();
        files.put("jurisdictions/bare.yaml", """
                id: bare
                name: Bare Point
                tax:
                  layers: none
                  taxable: []
                  layersCombined: yes
                  roundedPer: document
                  rounding: nearest
                  source: invented for the demo
                source: invented for the demo
                """);
        var place = ShopFiles.parse(files).jurisdiction("bare");

        assertThat(place.unknown()).containsAll(CautiousPlace.FIELDS).contains("permitFee");
        assertThat(place.assumed()).isTrue();
        assertThat(place.permitFee()).isEqualTo(usd("150.00"));
        assertThat(place.tax().layers()).isEmpty();
        assertThat(place.deposit().capPercent()).contains(Percent.ZERO);
    }

    @Test
    void anUnknownPlaceGetsTheMostCautiousProfile() {
        var place = shop.jurisdiction("nowhere-in-particular");

        assertThat(place.assumed()).isTrue();
        assertThat(place.name()).contains("nowhere-in-particular", "not in the shop's list");
        assertThat(place.permit("gas-valve")).isEqualTo(PermitNeed.YES);
        assertThat(place.permit("minor-part")).isEqualTo(PermitNeed.ASK);
        assertThat(place.testTap()).containsExactly(Trade.GAS_FITTER);
        assertThat(place.gasTest().witness()).isTrue();
        assertThat(place.gasTest().psi()).isGreaterThanOrEqualTo(new BigDecimal("10"));
        assertThat(place.gasTest().minutes()).isGreaterThanOrEqualTo(30);
        assertThat(place.deposit().asked()).isEqualTo(Percent.ZERO);
        assertThat(place.cancelDays()).isEqualTo(5);
        assertThat(place.cancelAlways()).isTrue();
    }

    @Test
    void anUnknownPlaceIsNeverTaxFree() {
        var tax = shop.jurisdiction("nowhere").tax();

        assertThat(tax.layers()).isNotEmpty();
        assertThat(tax.taxableKinds()).containsExactlyInAnyOrderElementsOf(TaxRule.KINDS);
        assertThat(shop.jurisdictions())
                .as("the assumed rate is above every known one")
                .allMatch(known -> rate(known.tax()).compareTo(rate(tax)) < 0);
    }

    @Test
    void withoutAStatedTaxAnUnknownPlaceIsRefusedWithWhatToDo() {
        var files = SampleFolder.files();
        files.remove("unknown-place.yaml");
        var strict = ShopFiles.parse(files);

        assertThatThrownBy(() -> strict.jurisdiction("nowhere"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("'nowhere'")
                .hasMessageContaining("larkwell")
                .hasMessageContaining("unknown-place.yaml");
        assertThat(strict.jurisdiction("larkwell").name()).startsWith("Larkwell");
    }

    @Test
    void aRateStatedOnTheVisitFallsOnEveryKindOfLine() {
        var stated = TaxRule.onEverything("stated on the visit", Percent.parse("8.25"), "the person quoting");
        var files = SampleFolder.files();
        files.remove("unknown-place.yaml");
        var strict = ShopFiles.parse(files).jurisdiction("nowhere", stated);

        assertThat(strict.tax()).isEqualTo(stated);
        assertThat(strict.permitFeeTaxed()).isTrue();
        assertThat(strict.assumed()).isTrue();
        assertThat(shop.jurisdiction("nowhere", stated).permitFee()).isEqualTo(usd("150.00"));
        assertThat(shop.jurisdiction("larkwell", stated).gasLicence()).isEqualTo("Corran County gas fitter");
        assertThat(shop.jurisdiction("larkwell", stated).tax()).isEqualTo(stated);
        assertThat(stated.rounding()).isEqualTo(Rounding.NEAREST);
    }

    @Test
    void aPlaceWithoutAPermitFeeTakesTheAllowanceOrIsRefused() {
        var files = SampleFolder.files();
        files.computeIfPresent(
                "jurisdictions/larkwell.yaml", (name, text) -> text.replace("permitFee: 120.00", "permitFee: unknown"));
        var place = ShopFiles.parse(files).jurisdiction("larkwell");
        assertThat(place.permitFee()).isEqualTo(usd("150.00"));
        assertThat(place.unknown()).contains("permitFee");

        files.remove("unknown-place.yaml");
        assertThatThrownBy(() -> ShopFiles.parse(files))
                .hasMessageContaining("larkwell.yaml, permitFee")
                .hasMessageContaining("unknown-place.yaml");
    }

    @Test
    void theTestTapDecidesWhoDoesAStarredTask() {
        var burners = shop.task("R15");

        assertThat(burners.in(shop.jurisdiction("larkwell")).trades()).containsExactly(Trade.TECHNICIAN);
        assertThat(burners.in(shop.jurisdiction("larkwell")).regulatedGas()).isFalse();
        assertThat(burners.in(shop.jurisdiction("brinefield")).trades()).containsExactly(Trade.GAS_FITTER);
        assertThat(burners.in(shop.jurisdiction("nowhere")).regulatedGas()).isTrue();
        assertThat(shop.task("R03").in(shop.jurisdiction("nowhere")).trades()).isEqualTo(Set.of(Trade.TECHNICIAN));
    }

    private static BigDecimal rate(TaxRule rule) {
        return rule.layers().stream().map(layer -> layer.rate().value()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Money usd(String amount) {
        return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
    }
}
