package fairflame.visit;

import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Shop;
import fairflame.catalog.TaxRule;
import fairflame.diagnosis.RatingPlate;
import fairflame.document.PaperText;
import fairflame.money.Rounding;
import fairflame.quantity.HeatRate;
import fairflame.quote.LineKind;
import fairflame.quote.Quote;
import fairflame.quote.QuoteRequest;
import fairflame.quote.Quoting;
import fairflame.repair.RepairInputs;
import fairflame.repair.ScopeBuilder;
import fairflame.wording.Language;
import fairflame.wording.Told;
import fairflame.wording.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * From an examination to a quote: the place's rules, the scope, the price and the words. A quote is made in the language of
 * its customer, from an examination in that language; facts and cents are the same in every language. Pure.
 */
public final class QuoteMaking {
    private final Library library;
    private final PaperText paper;
    private final Map<Language, QuoteMaking> others = new ConcurrentHashMap<>();

    public QuoteMaking(Library library) {
        this.library = library;
        this.paper = library.paper();
    }

    /**
     * The quote of an examination: a repair for a settled finding, the diagnosis only for one that is not settled.
     *
     * @throws fairflame.Refusal of the stop-work kind on dangerous evidence
     */
    public Quote quote(Examination examined, String number, int revision, LocalDate made) {
        var language = examined.visit().language();
        return language == library.wording().language()
                ? told(examined, number, revision, made)
                : in(language).quote(examined.in(library.in(language)), number, revision, made);
    }

    private QuoteMaking in(Language language) {
        return others.computeIfAbsent(language, wanted -> new QuoteMaking(library.in(wanted)));
    }

    private Quote told(Examination examined, String number, int revision, LocalDate made) {
        return Told.in(library.wording(), quoted(examined, number, revision, made));
    }

    private Quote quoted(Examination examined, String number, int revision, LocalDate made) {
        var visit = examined.visit();
        var place = place(visit);
        return examined.finding()
                .match(
                        settled -> {
                            var quoting = quoting(examined, place, number, revision, made, true);
                            return quoting.repair(
                                            settled,
                                            ScopeBuilder.plan(
                                                    settled, examined.file(), library.shop(), inputs(examined, place)))
                                    .telling(new DecisionWords(examined)::of);
                        },
                        unsettled -> quoting(examined, place, number, revision, made, false)
                                .diagnosisOnly(unsettled),
                        danger -> quoting(examined, place, number, revision, made, false)
                                .stopWork(danger));
    }

    /** The rules of the visit's place; where the shop does not know it, the most cautious ones. */
    public Jurisdiction place(VisitRecord visit) {
        var shop = library.shop();
        return Told.in(library.wording(), known(visit, shop));
    }

    private static Jurisdiction known(VisitRecord visit, Shop shop) {
        return visit.terms()
                .taxRate()
                .filter(rate -> !shop.knowsPlace(visit.jurisdiction()))
                .map(rate -> shop.jurisdiction(
                        visit.jurisdiction(),
                        new TaxRule(
                                List.of(new TaxRule.Layer("Sales tax as stated on the visit", rate)),
                                Arrays.stream(LineKind.values())
                                        .map(LineKind::word)
                                        .collect(Collectors.toSet()),
                                true,
                                false,
                                Rounding.NEAREST,
                                "rate stated by " + visit.technician() + ", not checked for this place")))
                .orElseGet(() -> shop.jurisdiction(visit.jurisdiction()));
    }

    /** The people of a visit as the paper names them. */
    public QuoteRequest.People people(VisitRecord visit) {
        var company = paper.company();
        return new QuoteRequest.People(
                company.seller(), company.licence(), visit.customerOnPaper(), visit.siteOnPaper());
    }

    /** The heater in words, from its plate. */
    public static String heater(RatingPlate plate, Wording wording) {
        return plate(plate).stream().map(wording::of).collect(Collectors.joining(", "));
    }

    private static List<String> plate(RatingPlate plate) {
        var words = new ArrayList<String>();
        words.add(plate.description());
        words.add(plate.fuel().word() + (plate.fuel() == fairflame.gas.Fuel.NATURAL ? " gas" : ""));
        plate.input()
                .map(HeatRate::btuPerHour)
                .ifPresent(input -> words.add(String.format(Locale.US, "input %,.0f Btu/h", input)));
        plate.inletMinimum()
                .ifPresent(low -> plate.inletMaximum()
                        .ifPresent(high -> words.add(String.format(
                                Locale.US,
                                "gas inlet %s to %s in w.c.",
                                plain(low.inchesWater()),
                                plain(high.inchesWater())))));
        plate.ageYears().ifPresent(years -> words.add(years + (years == 1 ? " year old" : " years old")));
        return words;
    }

    private static String plain(double value) {
        return new java.math.BigDecimal(value, new java.math.MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }

    private Quoting quoting(
            Examination examined, Jurisdiction place, String number, int revision, LocalDate made, boolean repair) {
        var visit = examined.visit();
        var versions = new ArrayList<>(library.versions());
        versions.add("place: " + place.name());
        return new Quoting(
                library.shop(),
                new QuoteRequest(
                        new QuoteRequest.Head(number, revision, visit.id(), made),
                        people(visit),
                        heater(visit.file().plate(), library.wording()),
                        place,
                        visit.terms().inputs(),
                        new QuoteRequest.Paper(
                                library.notes(),
                                repair ? paper.terms() : paper.diagnosisTerms(),
                                versions,
                                visit.terms().pricesUntil(),
                                library.wording()),
                        visit.repair().fitter(),
                        Gauges.of(examined.verdicts()),
                        visit.file().releases()));
    }

    private RepairInputs inputs(Examination examined, Jurisdiction place) {
        var terms = examined.visit().repair();
        return new RepairInputs(
                place,
                PipeWork.jobs(examined, library, place),
                terms.sizes(),
                terms.facts(),
                terms.partYears(),
                List.of());
    }
}
