package fairflame.catalog;

import fairflame.Refusal;
import fairflame.money.Percent;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Reads the places in {@code jurisdictions/}, one file each. A field with the text {@code unknown} takes the cautious
 * side and is remembered as assumed.
 */
final class PlaceFile {
    static final String FOLDER = "jurisdictions/";
    private static final String UNKNOWN = "unknown";

    private final CurrencyUnit currency;
    private final Optional<UnknownPlace> elsewhere;

    private PlaceFile(CurrencyUnit currency, Optional<UnknownPlace> elsewhere) {
        this.currency = currency;
        this.elsewhere = elsewhere;
    }

    static List<Jurisdiction> read(
            Map<String, String> files, CurrencyUnit currency, Optional<UnknownPlace> elsewhere, Problems problems) {
        var reader = new PlaceFile(currency, elsewhere);
        var names = new TreeMap<>(files)
                .keySet().stream()
                        .filter(name -> name.startsWith(FOLDER) && name.endsWith(".yaml"))
                        .toList();
        if (names.isEmpty()) {
            problems.add(Refusal.missing("file in " + FOLDER, "at least one place, such as jurisdictions/town.yaml"));
        }
        var places = problems.each(names, name -> reader.place(YamlEntry.parse(FileText.in(files, name))));
        problems.duplicateIds(
                "place", FOLDER, places.stream().map(Jurisdiction::id).toList());
        return places;
    }

    private Jurisdiction place(YamlEntry file) {
        file.only(
                "id",
                "name",
                "currency",
                "codes",
                "permits",
                "permitFee",
                "testTap",
                "gasLicence",
                "gasLicencePattern",
                "gasTest",
                "tax",
                "deposit",
                "validityDays",
                "cancel",
                "facts",
                "notes",
                "sources",
                "source");
        Currencies.check(file, currency);
        if (file.find("tax").filter(tax -> !isUnknown(tax)).isEmpty()) {
            throw Refusal.missing(
                            "tax rule",
                            "layers with rates, or layers: none; leave the place out if its tax is not known")
                    .at(file.where() + ", tax");
        }
        var tax = TaxField.read(file.field("tax"));
        var unknown = new LinkedHashSet<String>();
        var cancel = known(file, "cancel", unknown);
        return new Jurisdiction(
                file.read("id", Fields::id),
                file.text("name"),
                known(file, "codes", unknown)
                        .map(codes -> file.texts("codes"))
                        .orElse(List.of("codes not known for this place")),
                known(file, "permits", unknown).map(PlaceFile::permits).orElse(CautiousPlace.PERMITS),
                permitFee(file, unknown),
                tax.taxableKinds().contains("permit-fee"),
                known(file, "testTap", unknown).map(taps -> testTap(file)).orElse(CautiousPlace.TEST_TAP),
                known(file, "gasLicence", unknown)
                        .map(field -> field.as(text -> text))
                        .orElse(CautiousPlace.GAS_LICENCE),
                file.find("gasLicencePattern")
                        .map(field -> field.as(PlaceFile::pattern))
                        .orElse(""),
                known(file, "gasTest", unknown).map(PlaceFile::gasTest).orElse(CautiousPlace.GAS_TEST),
                tax,
                known(file, "deposit", unknown).map(this::deposit).orElse(CautiousPlace.DEPOSIT),
                known(file, "validityDays", unknown)
                        .map(field -> field.as(text -> Fields.whole(text, 1, 365)))
                        .orElse(CautiousPlace.VALIDITY_DAYS),
                cancel.map(field -> field.read("days", text -> Fields.whole(text, 0, 60)))
                        .orElse(CautiousPlace.CANCEL_DAYS),
                cancel.map(field -> field.read("always", Fields::flag)).orElse(true),
                texts(file, "facts"),
                texts(file, "notes"),
                withUnknownFacts(file, unknown),
                texts(file, "sources"),
                file.text("source"));
    }

    private static boolean isUnknown(YamlEntry field) {
        return field.node().isTextual() && field.node().asText().strip().equals(UNKNOWN);
    }

    /** The field unless it is unknown or absent, which is then noted. */
    private static Optional<YamlEntry> known(YamlEntry file, String name, Set<String> unknown) {
        var field = file.find(name).filter(found -> !isUnknown(found));
        if (field.isEmpty()) {
            unknown.add(name);
        }
        return field;
    }

    private Money permitFee(YamlEntry file, Set<String> unknown) {
        return known(file, "permitFee", unknown)
                .map(field -> field.as(text -> Fields.money(text, currency)))
                .or(() -> elsewhere.map(UnknownPlace::permitFee))
                .orElseThrow(() -> Refusal.missing("permit fee", "an amount here or in " + UnknownPlaceFile.NAME)
                        .at(file.where() + ", permitFee"));
    }

    private static Map<String, PermitNeed> permits(YamlEntry field) {
        var permits = new HashMap<String, PermitNeed>();
        field.only(CautiousPlace.PERMIT_CLASSES.toArray(String[]::new))
                .fields()
                .forEach((permitClass, need) -> permits.put(permitClass, need.as(PlaceFile::permitNeed)));
        return permits;
    }

    private static PermitNeed permitNeed(String text) {
        return switch (text) {
            case "no", "false" -> PermitNeed.NO;
            case "yes", "true" -> PermitNeed.YES;
            case "ask", UNKNOWN -> PermitNeed.ASK;
            default -> throw Refusal.unknown("permit need", text, "no, yes, ask, unknown");
        };
    }

    private static Set<Trade> testTap(YamlEntry file) {
        return file.items("testTap").stream().map(item -> item.as(Trade::parse)).collect(Collectors.toSet());
    }

    private static String pattern(String text) {
        try {
            return Pattern.compile(text).pattern();
        } catch (PatternSyntaxException e) {
            throw Refusal.malformed("pattern", text, "a regular expression: " + e.getDescription());
        }
    }

    private static GasTestRule gasTest(YamlEntry field) {
        field.only("psi", "minutes", "gaugeFactor", "witness", "source");
        return new GasTestRule(
                field.read("psi", text -> Fields.decimal(text, "0.5", "100")),
                field.read("minutes", text -> Fields.whole(text, 1, 1440)),
                field.read("gaugeFactor", text -> Fields.decimal(text, "1", "20")),
                field.read("witness", Fields::flag),
                field.text("source"));
    }

    private DepositRule deposit(YamlEntry field) {
        field.only("asked", "capPercent", "capAmount", "source");
        return new DepositRule(
                field.read("asked", PlaceFile::share),
                field.find("capPercent").map(cap -> cap.as(PlaceFile::share)),
                field.find("capAmount").map(cap -> cap.as(text -> Fields.money(text, currency))),
                field.text("source"));
    }

    private static Percent share(String text) {
        return new Percent(Fields.decimal(text, "0", "100"));
    }

    private static Map<String, String> texts(YamlEntry file, String name) {
        var texts = new LinkedHashMap<String, String>();
        file.find(name)
                .ifPresent(field -> field.fields().forEach((key, value) -> texts.put(key, value.as(text -> text))));
        return texts;
    }

    private static Set<String> withUnknownFacts(YamlEntry file, Set<String> unknown) {
        texts(file, "facts").forEach((fact, text) -> {
            if (text.equals(UNKNOWN)) {
                unknown.add(fact);
            }
        });
        return unknown;
    }
}
