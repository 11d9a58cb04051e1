package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.Shop;
import fairflame.money.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Trip, diagnosis, permit fee, subcontractors and disposal. */
final class FeeLines {
    private final Shop shop;
    private final Jurisdiction place;
    private final PricingInputs inputs;

    FeeLines(Shop shop, Jurisdiction place, PricingInputs inputs) {
        this.shop = shop;
        this.place = place;
        this.inputs = inputs;
    }

    List<Draft> repair(String choice, Duties duties) {
        var drafts = new ArrayList<Draft>();
        if (inputs.paidDiagnosis().filter(PaidDiagnosis::sameTrip).isEmpty()) {
            drafts.add(trip());
        }
        if (duties.permit() == PermitNeed.YES) {
            drafts.add(permit());
        }
        inputs.extras().stream()
                .filter(extra -> extra.choice().isEmpty() || extra.choice().equals(choice))
                .forEach(extra -> drafts.add(extra(extra)));
        return drafts;
    }

    List<Draft> diagnosis() {
        var fee = Amounts.same(shop.currency(), shop.rates().diagnosticFee());
        var basis = new Basis(
                "rule", "charge for a diagnosis without repair", shop.rates().source());
        return List.of(
                Draft.of(LineKind.DIAGNOSIS, "", "Diagnosis", Draft.Count.once("visit", fee), List.of(basis)), trip());
    }

    private Draft trip() {
        var charge = shop.rates().trip().get(inputs.zone());
        if (charge == null) {
            throw Refusal.unknown(
                    "trip zone",
                    inputs.zone(),
                    String.join(", ", new TreeSet<>(shop.rates().trip().keySet())));
        }
        var basis = new Basis(
                "rule",
                "trip charge of zone " + inputs.zone() + ", once a visit",
                shop.rates().source());
        return Draft.of(
                LineKind.TRIP,
                "",
                "Trip",
                Draft.Count.once("visit", Amounts.same(shop.currency(), charge)),
                List.of(basis));
    }

    private Draft permit() {
        var known = !place.unknown().contains("permitFee");
        var words = known
                ? "this class of work needs a permit in " + place.name() + "; the fee is passed through as paid"
                : "the permit fee of this place is not known; it is passed through as paid";
        return Draft.of(
                        LineKind.PERMIT_FEE,
                        "",
                        "Permit fee, passed through",
                        Draft.Count.once("each", Amounts.same(shop.currency(), place.permitFee())),
                        List.of(new Basis("permit", words, place.source())))
                .fixed();
    }

    private Draft extra(ExtraLine extra) {
        Amounts.same(shop.currency(), extra.unitPrice());
        if (extra.quantity().signum() <= 0 || extra.unitPrice().isNegative()) {
            throw Refusal.outOfRange(
                    "line '" + extra.description() + "'",
                    extra.quantity().toPlainString() + " x " + extra.unitPrice(),
                    "a quantity above zero and a price of zero or more");
        }
        var draft = Draft.of(
                extra.kind(),
                "",
                extra.description(),
                new Draft.Count(extra.quantity(), extra.unit(), extra.unitPrice()),
                List.of(new Basis("reason", extra.why(), extra.source())));
        return extra.passThrough() ? draft.fixed() : draft;
    }
}
