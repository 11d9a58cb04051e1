package fairflame.invoice;

import fairflame.agreement.DemoAgreements;
import fairflame.agreement.SignedRevision;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Random;

/** Signed work billed in parts, credited and billed again, as chance will have it. */
public final class SplitPapers {
    private SplitPapers() {}

    /** The papers of one of the demo's agreements. */
    public static List<Invoice> of(Random random) {
        var signed = List.of(DemoInvoices.PIPE, DemoInvoices.THREE_PARTS, DemoAgreements.BOTH);
        return of(signed.get(random.nextInt(signed.size())), random);
    }

    /** Bills random quantities of random lines, credits some of the bills again, and ends with the rest. */
    static List<Invoice> of(SignedRevision agreement, Random random) {
        var papers = new ArrayList<Invoice>();
        var left = new HashMap<String, BigDecimal>();
        agreement.taken().lines().forEach(line -> left.put(line.id(), line.quantity()));
        for (int bill = random.nextInt(4); bill > 0; bill--) {
            var done = new HashMap<String, BigDecimal>();
            left.forEach((id, quantity) -> {
                var share =
                        quantity.multiply(new BigDecimal("0.01").multiply(new BigDecimal("" + random.nextInt(100))));
                if (share.signum() > 0 && random.nextBoolean()) {
                    done.put(id, share);
                }
            });
            if (!done.isEmpty()) {
                var paper = DemoInvoices.invoicing(agreement)
                        .part(DemoInvoices.issue(papers.size() + 1), DemoInvoices.completion(), papers, done);
                papers.add(paper);
                if (random.nextInt(3) == 0) {
                    papers.add(Crediting.full(
                            DemoInvoices.issue("C", papers.size() + 1), paper, List.of(), "not done after all"));
                } else {
                    done.forEach((id, quantity) -> left.merge(id, quantity.negate(), BigDecimal::add));
                }
            }
        }
        papers.add(DemoInvoices.invoicing(agreement)
                .rest(DemoInvoices.issue(papers.size() + 1), DemoInvoices.completion(), papers));
        return papers;
    }
}
