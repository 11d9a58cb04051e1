package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.SignedRevision;
import fairflame.store.Records;
import fairflame.store.Registers;
import java.util.List;
import java.util.stream.Collectors;

/** Finds what was signed. */
final class Signed {
    private Signed() {}

    /** The latest signed revision of a quote with its change orders. */
    static Agreed of(Records records, String quote) {
        var signed = records.agreements()
                .latest(quote)
                .orElseThrow(() -> Refusal.unknown("signed quote", quote, "the number of a quote that was signed"));
        return agreed(records, signed);
    }

    /** The latest signed revision of every quote. */
    static List<Agreed> all(Records records) {
        return records.agreements().all().stream()
                .collect(Collectors.toMap(
                        signed -> signed.quote().number(),
                        signed -> signed,
                        (one, other) -> one.quote().revision() > other.quote().revision() ? one : other,
                        java.util.TreeMap::new))
                .values()
                .stream()
                .map(signed -> agreed(records, signed))
                .toList();
    }

    private static Agreed agreed(Records records, SignedRevision signed) {
        var quote = signed.quote();
        return new Agreed(signed, records.changeOrders().of(quote.number(), quote.revision()));
    }

    static String key(SignedRevision signed) {
        return Registers.key(signed.quote().number(), signed.quote().revision());
    }
}
