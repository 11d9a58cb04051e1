package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.Difference;
import fairflame.agreement.Sealing;
import fairflame.store.Records;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;

/** Proves that what was signed is what is stored, or names what differs. */
public final class Proof {
    private final Workplace workplace;

    public Proof(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * The outcome of a proof.
     *
     * @param subject what was looked at
     * @param seal the short seal printed on the paper
     * @param differences empty when everything is as it was signed
     */
    public record Result(String subject, String seal, List<Difference> differences) {
        public Result {
            differences = List.copyOf(differences);
        }

        public boolean holds() {
            return differences.isEmpty();
        }
    }

    /** Proves the latest signed revision of a quote, and the chain of all seals of the shop. */
    public Result of(String number) {
        return workplace.store().reading(records -> {
            var signed = records.agreements()
                    .latest(number)
                    .orElseThrow(
                            () -> Refusal.unknown("signed quote", number, "the number of a quote that was signed"));
            var bytes = records.agreements()
                    .bytes(number, signed.quote().revision())
                    .orElseThrow();
            var differences = new ArrayList<>(Sealing.verify(bytes));
            records.changeOrders()
                    .of(number, signed.quote().revision())
                    .forEach(order -> differences.addAll(Sealing.verify(order)));
            if (!isChained(records)) {
                differences.add(new Difference("", Difference.Kind.NOT_CHAINED));
            }
            return new Result(
                    number + " revision " + signed.quote().revision(),
                    signed.seal().brief(),
                    differences);
        });
    }

    /** Whether each seal follows the one before it, on each laptop by itself. */
    private static boolean isChained(Records records) {
        var last = new HashMap<String, String>();
        for (var link : records.chain().links()) {
            if (!link.previous().equals(last.getOrDefault(link.origin(), Sealing.START))) {
                return false;
            }
            last.put(link.origin(), link.chain());
        }
        return true;
    }
}
