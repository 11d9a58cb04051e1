package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.ConsentText;
import fairflame.agreement.SignedRevision;
import fairflame.agreement.Signing;
import fairflame.agreement.SigningAct;
import fairflame.agreement.Standing;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import fairflame.store.Records;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Takes the customer's signature on a quote and seals it. */
public final class Agreeing {
    private final Workplace workplace;
    private final Progress progress;

    public Agreeing(Workplace workplace) {
        this(workplace, Progress.UNWATCHED);
    }

    /** As it is watched: ended before all papers are made, nothing is signed. */
    public Agreeing(Workplace workplace, Progress progress) {
        this.workplace = workplace;
        this.progress = progress;
    }

    /** A sealed revision and the files written. */
    public record Result(SignedRevision signed, List<String> files) {}

    /** The latest revision of a quote. */
    public Quote quote(String number) {
        return workplace
                .store()
                .reading(records -> records.quotes().latest(number))
                .orElseThrow(() -> Refusal.unknown("quote", number, "the number of a quote in this folder"));
    }

    /** The sentences that the customer has to say of each choice not taken, by id of the choice. */
    public Map<String, String> declines(Quote quote, String taken) {
        var sentences = new LinkedHashMap<String, String>();
        for (Choice choice : quote.choices()) {
            if (!choice.id().equals(taken)) {
                sentences.put(choice.id(), words(quote).decline(quote, choice));
            }
        }
        return sentences;
    }

    /** The words of consent in the language that the quote is written in, and in no other. */
    private ConsentText words(Quote quote) {
        return workplace.library().in(quote).consent();
    }

    /** What the customer agrees to by signing for a choice: to be shown before the act. */
    public List<String> consent(Quote quote, String choice) {
        var words = words(quote);
        return List.of(words.authorise(quote, quote.choice(choice)), words.electronic(quote));
    }

    /** Signs, seals and stores in one step and writes the signed copy. */
    public Result sign(String number, String choice, SigningAct act) {
        return sign(number, choice, act, records -> {});
    }

    /** The same, with something more to store in that step or not at all. */
    Result sign(String number, String choice, SigningAct act, Consumer<Records> more) {
        var filed = new Filing(workplace, progress)
                .keep(
                        records -> {
                            var sealed = sealed(records, number, choice, act);
                            more.accept(records);
                            VisitStates.move(records, sealed.quote().visit(), State.SIGNED);
                            return sealed;
                        },
                        new Papers(workplace, progress)::signed);
        return new Result(filed.content(), filed.files());
    }

    private SignedRevision sealed(Records records, String number, String choice, SigningAct act) {
        var quote = records.quotes()
                .latest(number)
                .orElseThrow(() -> Refusal.unknown("quote", number, "the number of a quote in this folder"));
        var standing = new Standing(
                quote.revision(),
                records.agreements().find(number, quote.revision()).isPresent(),
                records.chain().last());
        var sealed = new Signing(words(quote)).sign(quote, choice, act, standing);
        records.agreements().add(sealed);
        return sealed;
    }
}
