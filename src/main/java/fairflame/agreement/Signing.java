package fairflame.agreement;

import fairflame.Refusal;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Turns a quote into a signed and sealed revision. Refused: an expired or old revision, a second signature, consent
 * that was not given by an act of its own, a choice that was neither taken nor declined.
 *
 * <p>Intent, consent, association and retention as in the ESIGN Act (15 USC 7001) and UETA sections 7 to 9.
 */
public final class Signing {
    private static final Set<String> ROLES = Set.of("owner", "tenant", "agent");
    private static final int LONGEST_NAME = 120;
    private static final int LARGEST_COORDINATE = 10_000;

    private final ConsentText consent;

    public Signing(ConsentText consent) {
        this.consent = consent;
    }

    /** Signs one choice of a quote; all its other choices become declined. */
    public SignedRevision sign(Quote quote, String choiceId, SigningAct act, Standing standing) {
        var choice = quote.choice(choiceId);
        refuseUnlessOpen(quote, act, standing);
        refuseUnknownChoices(quote, choice, act);
        var declined = quote.choices().stream()
                .filter(other -> !other.id().equals(choiceId))
                .map(other -> declined(other, act))
                .toList();
        var signature = signature(act, List.of(consent.authorise(quote, choice), consent.electronic(quote)));
        return Sealing.seal(quote, choiceId, declined, signature, standing.previous());
    }

    /** The signature, once the act is whole and both texts were accepted. */
    static Signature signature(SigningAct act, List<String> texts) {
        for (var text : List.of(SigningAct.AUTHORISE, SigningAct.ELECTRONIC)) {
            if (!act.accepted().contains(text)) {
                throw Refusal.missing(
                        "consent to '" + text + "'", "an act of the customer's own, nothing ticked before");
            }
        }
        var name = act.name().strip();
        if (name.isEmpty()) {
            throw Refusal.missing("typed name of the signer", "the name as the person writes it");
        }
        if (name.length() > LONGEST_NAME || name.chars().anyMatch(Character::isISOControl)) {
            throw Refusal.malformed(
                    "typed name of the signer", name, "up to " + LONGEST_NAME + " printable characters");
        }
        if (!ROLES.contains(act.role())) {
            throw Refusal.unknown("role of the signer", act.role(), String.join(", ", new TreeSet<>(ROLES)));
        }
        refuseBadStrokes(act.strokes());
        return new Signature(
                name, act.role(), act.at(), String.join("\n", texts), act.strokes(), act.witness(), act.paper());
    }

    private static void refuseUnlessOpen(Quote quote, SigningAct act, Standing standing) {
        var subject = quote.number() + " revision " + quote.revision();
        if (quote.revision() != standing.latestRevision()) {
            throw Refusal.notAllowed(
                    "signing " + subject, "an old revision", "revision " + standing.latestRevision() + ", the latest");
        }
        if (standing.signed()) {
            throw Refusal.notAllowed("signing " + subject, "signed already", "a change order or a new revision");
        }
        var day = act.at().toLocalDate();
        if (day.isAfter(quote.validUntil())) {
            throw Refusal.notAllowed(
                    "signing " + subject, "expired on " + quote.validUntil(), "a new revision with today's prices");
        }
        if (day.isBefore(quote.made())) {
            throw Refusal.outOfRange("time of signing", act.at(), "from " + quote.made() + ", the day of the quote");
        }
        act.paper().map(OnPaper::dated).ifPresent(dated -> refuseOtherDay(quote, dated));
    }

    private static void refuseOtherDay(Quote quote, LocalDate dated) {
        if (dated.isBefore(quote.made()) || dated.isAfter(quote.validUntil())) {
            throw Refusal.outOfRange(
                    "date on the paper",
                    dated,
                    quote.made() + ", the day of the quote, to " + quote.validUntil() + ", its last day");
        }
    }

    private static void refuseUnknownChoices(Quote quote, Choice choice, SigningAct act) {
        for (var id : new TreeSet<>(act.declined().keySet())) {
            if (quote.choice(id).equals(choice)) {
                throw Refusal.notAllowed("choice " + id, "taken and declined", "one of the two");
            }
        }
    }

    private static Declined declined(Choice choice, SigningAct act) {
        var words = act.declined().getOrDefault(choice.id(), "");
        if (words.isBlank()) {
            throw Refusal.missing(
                    "the customer's word on choice '" + choice.id() + "'",
                    "a text that says it was offered and declined");
        }
        return new Declined(choice.id(), choice.title(), choice.totals().total(), words);
    }

    private static void refuseBadStrokes(List<List<Integer>> strokes) {
        for (var stroke : strokes) {
            var outside = stroke.stream().anyMatch(value -> value < 0 || value > LARGEST_COORDINATE);
            if (stroke.size() % 2 != 0 || stroke.isEmpty() || outside) {
                throw Refusal.malformed(
                        "stroke of a signature", stroke, "pairs of x,y from 0 to " + LARGEST_COORDINATE);
            }
        }
    }
}
