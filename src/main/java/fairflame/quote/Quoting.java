package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.Shop;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Finding;
import fairflame.money.Amounts;
import fairflame.repair.RepairPlan;
import fairflame.repair.Scope;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * Makes a quote. A repair needs a settled finding by its type; an unsettled one gives a quote for the diagnosis only;
 * dangerous evidence gives no quote at all.
 */
public final class Quoting {
    private static final String DIAGNOSIS = "diagnosis";

    private final Shop shop;
    private final QuoteRequest request;

    public Quoting(Shop shop, QuoteRequest request) {
        this.shop = shop;
        this.request = request;
        refuseUnfit();
    }

    /**
     * A quote for the ways to mend a settled finding; for the diagnosis and the advice only when there is nothing for
     * this shop to mend.
     */
    public Quote repair(Finding.Settled finding, RepairPlan plan) {
        if (plan.scopes().isEmpty()) {
            return quote(
                    false,
                    FindingSheets.of(finding, request.gauges()),
                    List.of(diagnosis(String.join(" ", plan.reasons()))));
        }
        ScopeChecks.refuseUnfit(plan, finding.causes().size(), request);
        var choices = plan.scopes().stream()
                .map(scope -> choice(scope, finding.causes()))
                .toList();
        ScopeChecks.refuseUnused(choices, request.inputs());
        return quote(true, FindingSheets.of(finding, request.gauges()), PairWords.added(choices, plan, trip()));
    }

    /** A quote for the diagnosis only: its fee, the trip and the next check, never a repair. */
    public Quote diagnosisOnly(Finding.Unsettled finding) {
        return quote(
                false,
                FindingSheets.of(finding, request.gauges()),
                List.of(diagnosis("No repair is priced before the readings prove it. "
                        + finding.next().stream()
                                .limit(1)
                                .map(FindingSheets::words)
                                .collect(Collectors.joining()))));
    }

    /** Always refuses: on dangerous evidence there is no price. The customer gets a {@link StopWorkSheet}. */
    public Quote stopWork(Finding.StopWork finding) {
        var dangers = finding.dangers().stream()
                .map(danger -> danger.gate() + ", " + danger.title())
                .collect(Collectors.joining("; "));
        throw Refusal.stopWork("price", dangers, "a stop-work sheet; a licensed person's release reopens pricing");
    }

    private Choice choice(Scope scope, List<Candidate> causes) {
        var priced = new Pricing(shop, request.place(), request.inputs(), made()).repair(scope, causes);
        var facts = NoteFacts.of(
                scope,
                access(scope),
                priced.duties(),
                request.inputs().further().contains(scope.id()),
                request.place());
        return new Choice(
                scope.id(),
                scope.title(),
                scope.plain(),
                scope.suggested(),
                scope.leavesUnfixed(),
                work(scope),
                priced.duties(),
                priced.hours(),
                priced.lines(),
                priced.totals(),
                priced.deposit(),
                scope.tests(),
                request.paper().notes().of(facts, words(priced.duties())),
                List.of());
    }

    private Choice diagnosis(String advice) {
        var priced = new Pricing(shop, request.place(), request.inputs(), made()).diagnosis();
        var plain = "We charge for finding the cause. " + advice;
        return new Choice(
                DIAGNOSIS,
                "Diagnosis only",
                plain,
                true,
                "The heater is not mended.",
                List.of(),
                priced.duties(),
                BigDecimal.ZERO,
                priced.lines(),
                priced.totals(),
                priced.deposit(),
                List.of(),
                request.paper().notes().of(NoteFacts.diagnosis(request.place()), words(priced.duties())),
                List.of());
    }

    private Quote quote(boolean repair, FindingSheet sheet, List<Choice> choices) {
        var head = request.head();
        var people = request.people();
        var shared = shared(choices);
        return new Quote(
                head.number(),
                head.revision(),
                head.visit(),
                repair,
                made(),
                validUntil(),
                shop.currency(),
                people.seller(),
                people.sellerLicence(),
                people.customer(),
                people.site(),
                request.heater(),
                request.place().name(),
                Places.rules(request.place()),
                sheet,
                choices.stream().map(choice -> choice.without(shared)).toList(),
                shared,
                request.paper().terms(),
                Assumptions.of(request.place()),
                request.paper().madeFrom(),
                request.paper().wording().language().code(),
                List.of());
    }

    /** Notes that every choice prints stand once on the quote; the others stay with their choice. */
    private static List<Note> shared(List<Choice> choices) {
        var shared = new ArrayList<>(choices.get(0).notes());
        choices.forEach(choice -> shared.retainAll(choice.notes()));
        return shared;
    }

    private List<Work> work(Scope scope) {
        return scope.tasks().stream()
                .map(scoped -> new Work(
                        scoped.task().id(),
                        scoped.task().title(),
                        scoped.task().plain(),
                        scoped.cause(),
                        scoped.reason(),
                        Crew.of(scoped.task(), request.place())))
                .toList();
    }

    private Set<String> access(Scope scope) {
        return new AccessOnce(shop.access())
                .union(scope.tasks()).stream().map(shared -> shared.step().id()).collect(Collectors.toSet());
    }

    private Map<String, String> words(Duties duties) {
        var place = request.place();
        var fee = place.unknown().contains("permitFee")
                ? "not known yet, charged as paid"
                : Amounts.plain(place.permitFee()) + " " + place.permitFee().getCurrencyUnit();
        var words = new HashMap<String, String>();
        words.put("place", place.name());
        words.put(
                "fee", duties.permit() == PermitNeed.YES ? fee : fee + ", added only if the office asks for a permit");
        words.put("licence", place.gasLicence());
        words.put(
                "fitter",
                request.fitter()
                        .map(person -> person.name() + ", licence " + person.number())
                        .orElse("name and licence number are given to you before the work starts"));
        words.put("days", String.valueOf(place.cancelDays()));
        words.put("shop", request.people().seller().name());
        words.replaceAll((name, word) -> request.paper().wording().of(word));
        return words;
    }

    private Money trip() {
        return shop.rates().trip().getOrDefault(request.inputs().zone(), Money.zero(shop.currency()));
    }

    private LocalDate made() {
        return request.head().made();
    }

    private LocalDate validUntil() {
        var byPlace = made().plusDays(request.place().validityDays());
        return request.paper()
                .pricesUntil()
                .filter(last -> last.isBefore(byPlace))
                .orElse(byPlace);
    }

    private void refuseUnfit() {
        var head = request.head();
        if (head.number().isBlank()) {
            throw Refusal.missing("quote number", "such as Q-2026-0001");
        }
        if (head.revision() < 1) {
            throw Refusal.outOfRange("revision", head.revision(), "1 or more");
        }
        request.paper().pricesUntil().ifPresent(last -> {
            if (last.isBefore(head.made())) {
                throw Refusal.notAllowed(
                        "price list " + shop.version(), "expired on " + last, "a list that holds on " + head.made());
            }
        });
        request.fitter().ifPresent(person -> person.check(request.place(), head.made()));
    }
}
