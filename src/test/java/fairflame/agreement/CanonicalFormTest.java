package fairflame.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.Per;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Value;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import fairflame.quote.DemoQuotes;
import fairflame.quote.DemoShop;
import fairflame.quote.Quote;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalFormTest {
    /** One of each kind of field. */
    public record Everything(
            String text,
            int whole,
            long large,
            boolean flag,
            BigDecimal decimal,
            double measured,
            Money amount,
            CurrencyUnit currency,
            LocalDate day,
            OffsetDateTime time,
            Per constant,
            Optional<Integer> maybe,
            List<String> list,
            Set<String> set,
            Map<String, String> map,
            Map<Per, BigDecimal> counts) {}

    private static final Everything FULL = new Everything(
            "a",
            -3,
            9_007_199_254_740_991L,
            true,
            new BigDecimal("1.050"),
            0.1,
            DemoShop.usd("1250.5"),
            CurrencyUnit.EUR,
            LocalDate.of(2026, 2, 3),
            OffsetDateTime.parse("2026-11-20T09:30:00-05:00"),
            Per.FOOT,
            Optional.of(7),
            List.of("b", "a"),
            Set.of("y", "x"),
            Map.of("k", "v"),
            Map.of(Per.JOB, BigDecimal.ONE));

    private static String text(Record thing) {
        return new String(CanonicalForm.write(thing), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void everyKindOfFieldHasOneForm() {
        assertThat(text(FULL))
                .isEqualTo(
                        "{\"amount\":\"USD 1250.50\",\"constant\":\"FOOT\",\"counts\":{\"JOB\":\"1\"},\"currency\":\"EUR\","
                                + "\"day\":\"2026-02-03\",\"decimal\":\"1.050\",\"flag\":true,\"large\":9007199254740991,"
                                + "\"list\":[\"b\",\"a\"],\"map\":{\"k\":\"v\"},\"maybe\":7,\"measured\":\"0.1\",\"set\":[\"x\",\"y\"],"
                                + "\"text\":\"a\",\"time\":\"2026-11-20T09:30:00-05:00\",\"whole\":-3}");
        assertThat(CanonicalForm.read(Everything.class, CanonicalForm.write(FULL)))
                .isEqualTo(FULL);
    }

    /** RFC 8785, section 3.2.3: sorting by UTF-16 units; 3.2.2.2: escapes. */
    @Test
    void namesAreSortedAndTextEscapedAsTheStandardSays() {
        var map = new LinkedHashMap<String, String>();
        List.of("\u20ac", "\r", "\ufb33", "1", "\ud83d\ude00", "\u0080", "\u00f6")
                .forEach(key -> map.put(key, ""));
        assertThat(text(with(map)))
                .contains(
                        "\"map\":{\"\\r\":\"\",\"1\":\"\",\"\u0080\":\"\",\"\u00f6\":\"\",\"\u20ac\":\"\",\"\ud83d\ude00\":\"\","
                                + "\"\ufb33\":\"\"}");
        assertThat(text(with(Map.of("k", "\u20ac$\u000f\nA'B\"\\\\\"/\u007f"))))
                .contains("\"k\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\u007f\"");
        assertThat(text(with(Map.of("k", "\b\t\f\r")))).contains("\"k\":\"\\b\\t\\f\\r\"");
    }

    private static Everything with(Map<String, String> map) {
        return new Everything(
                "",
                0,
                0,
                false,
                BigDecimal.ZERO,
                0,
                DemoShop.usd("0"),
                DemoShop.USD,
                LocalDate.EPOCH,
                FULL.time(),
                Per.JOB,
                Optional.empty(),
                List.of(),
                Set.of(),
                map,
                Map.of());
    }

    @Test
    void theOrderOfSetsAndMapsLeavesNoTrace() {
        var seed = 8785L;
        var random = new Random(seed);
        var names = new ArrayList<>(List.of("a", "B", "\u00f6", "z9", "_", "\u20ac"));
        var first = text(with(named(names)));
        for (int i = 0; i < 100; i++) {
            Collections.shuffle(names, random);
            assertThat(text(with(named(names)))).as("seed %d case %d", seed, i).isEqualTo(first);
            var set = new Everything(
                    "",
                    0,
                    0,
                    false,
                    BigDecimal.ZERO,
                    0,
                    DemoShop.usd("0"),
                    DemoShop.USD,
                    LocalDate.EPOCH,
                    FULL.time(),
                    Per.JOB,
                    Optional.empty(),
                    List.of(),
                    new LinkedHashSet<>(names),
                    Map.of(),
                    Map.of());
            assertThat(text(set))
                    .as("seed %d case %d", seed, i)
                    .contains("\"set\":[\"B\",\"_\",\"a\",\"z9\",\"\u00f6\",\"\u20ac\"]");
        }
    }

    private static Map<String, String> named(List<String> names) {
        var map = new LinkedHashMap<String, String>();
        names.forEach(name -> map.put(name, "v"));
        return map;
    }

    @Test
    void aQuoteComesBackAsItWas() {
        var bytes = CanonicalForm.write(DemoQuotes.SWITCHES);
        var back = CanonicalForm.read(Quote.class, bytes);
        assertThat(back).isEqualTo(DemoQuotes.SWITCHES);
        assertThat(CanonicalForm.write(back)).isEqualTo(bytes);
    }

    @Test
    void aQuoteInEnglishHasTheBytesItHadBeforeQuotesNamedTheirLanguage() {
        assertThat(new String(CanonicalForm.write(DemoQuotes.SWITCHES), StandardCharsets.UTF_8))
                .doesNotContain("\"language\"");
    }

    @Test
    void anotherLanguageIsWrittenAndReadAndAnEnglishOneIsNeverWritten() {
        var english = new String(CanonicalForm.write(DemoQuotes.SWITCHES), StandardCharsets.UTF_8);
        var spanish = english.replace("\"made\":", "\"language\":\"es\",\"made\":");
        var back = CanonicalForm.read(Quote.class, spanish.getBytes(StandardCharsets.UTF_8));
        assertThat(back.language()).isEqualTo("es");
        assertThat(new String(CanonicalForm.write(back), StandardCharsets.UTF_8))
                .isEqualTo(spanish);
        var said = spanish.replace("\"language\":\"es\"", "\"language\":\"en\"");
        assertThatThrownBy(() -> CanonicalForm.read(Quote.class, said.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("canonical");
        var unknown = spanish.replace("\"language\":\"es\"", "\"language\":\"xx\"");
        assertThatThrownBy(() -> CanonicalForm.read(Quote.class, unknown.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("en, es");
    }

    @Test
    void aLanguageAddedToASealedQuoteIsNamed() {
        var sealed = new String(CanonicalForm.write(DemoAgreements.BOTH), StandardCharsets.UTF_8);
        var altered = sealed.replace("\"made\":", "\"language\":\"es\",\"made\":");
        assertThat(altered).isNotEqualTo(sealed);
        assertThat(Sealing.verify(altered.getBytes(StandardCharsets.UTF_8)))
                .anySatisfy(difference -> assertThat(difference.toString()).contains("/quote/language"));
    }

    @Test
    void aCaseOfASealedTypeSaysWhichItIs() {
        var typed = new Reading(
                "gas-static",
                new Value.Measured(new Measure(new BigDecimal("10.10"), Unit.INCH_WATER)),
                "u-tube",
                Set.of("idle"),
                true,
                "");
        assertThat(text(typed)).contains("\"value\":{\"is\":\"Measured\",\"measure\":{");
        assertThat(CanonicalForm.read(Reading.class, CanonicalForm.write(typed)))
                .isEqualTo(typed);
        var open = new Reading("leak", new Value.OpenLine(), "", Set.of(), true, "");
        assertThat(CanonicalForm.read(Reading.class, CanonicalForm.write(open))).isEqualTo(open);
        assertThatThrownBy(
                        () -> CanonicalForm.read(Reading.class, bytes(text(open).replace("OpenLine", "Guess"))))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("value: case of Value 'Guess'");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "7",
                "null",
                "{\"amount\":\"USD 1250.50\"}",
                "{\"a\":1,\"a\":1}",
                "{} {}",
                "{\"a\":1.5}",
                "not json"
            })
    void otherTextIsRefused(String text) {
        assertThatThrownBy(() -> CanonicalForm.read(Everything.class, bytes(text)))
                .isInstanceOf(Refusal.class);
    }

    private static void refused(String from, String to, String words) {
        var text = text(FULL);
        assertThat(text).contains(from);
        assertThatThrownBy(() -> CanonicalForm.read(Everything.class, bytes(text.replace(from, to))))
                .as(to)
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(words);
    }

    @Test
    void everyWrongValueIsRefusedByItsField() {
        refused("\"flag\":true,", "", "field flag");
        refused("\"flag\":true,", "\"flag\":true,\"flags\":true,", "field 'flags'");
        refused("\"flag\":true", "\"flag\":1", "flag: value '1'");
        refused("\"whole\":-3", "\"whole\":3000000000", "whole: value");
        refused("\"whole\":-3", "\"whole\":\"-3\"", "whole: value");
        refused("\"large\":9007199254740991", "\"large\":99999999999999999999", "large: value");
        refused("\"text\":\"a\"", "\"text\":null", "text: value");
        refused("USD 1250.50", "USD 1250.505", "amount: value");
        refused("\"FOOT\"", "\"MILE\"", "constant: Per 'MILE'");
        refused("{\"JOB\":\"1\"}", "{\"DAY\":\"1\"}", "counts: Per 'DAY'");
        refused("{\"JOB\":\"1\"}", "[]", "counts: value");
        refused("[\"b\",\"a\"]", "[\"b\",7]", "list, [1]: value '7'");
        refused("[\"b\",\"a\"]", "{}", "list: value");
        refused("2026-02-03", "2026-02-30", "day: value");
        refused("2026-11-20T09:30:00-05:00", "2026-11-20T09:30:00", "time: value");
        refused("\"EUR\"", "\"EURO\"", "currency: value");
        refused("\"0.1\"", "\"x\"", "measured: value");
    }

    @Test
    void onlyTheOneFormIsRead() {
        refused("\"1.050\"", "\"+1.050\"", "the canonical form");
        refused("\"amount\":", " \"amount\":", "the canonical form");
        refused("[\"x\",\"y\"]", "[\"y\",\"x\"]", "the canonical form");
        refused("\"text\":\"a\"", "\"text\":\"\\u0061\"", "the canonical form");
        refused("2026-11-20T09:30:00-05:00", "2026-11-20T09:30-05:00", "the canonical form");
    }

    @Test
    void bytesThatAreNoUtf8AndHalfCharactersAreRefused() {
        var bytes = CanonicalForm.write(FULL);
        bytes[bytes.length - 3] = (byte) 0xff;
        assertThatThrownBy(() -> CanonicalForm.read(Everything.class, bytes)).isInstanceOf(Refusal.Malformed.class);
        assertThatThrownBy(() -> CanonicalForm.write(with(Map.of("k", "\ud83d"))))
                .isInstanceOf(Refusal.Malformed.class)
                .hasMessageContaining("half a character");
    }

    @Test
    void deepNestingIsRefused() {
        var deep = "[".repeat(100_000);
        assertThatThrownBy(() -> CanonicalForm.read(Everything.class, bytes(deep)))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void aRecordThatRefusesItsValuesIsRefusedWithThePlace() {
        var text = text(DemoQuotes.SWITCHES);
        assertThatThrownBy(() -> CanonicalForm.read(
                        Quote.class, bytes(text.replace("\"total\":\"USD 389.86\"", "\"total\":\"USD 389.87\""))))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageStartingWith("choices, [0], totals: total 'USD 389.87'");
    }
}
