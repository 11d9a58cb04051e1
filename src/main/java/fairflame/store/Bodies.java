package fairflame.store;

import fairflame.agreement.ChangeOrder;
import fairflame.agreement.SignedRevision;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.quote.Quote;

/** The byte form of everything that is stored whole. */
public record Bodies(
        Body<Quote> quote,
        Body<SignedRevision> agreement,
        Body<ChangeOrder> changeOrder,
        Body<Invoice> invoice,
        Body<Completion> completion) {
    /** The form in which things are signed: the same thing always gives the same bytes. */
    public static Bodies canonical() {
        return new Bodies(
                Body.canonical(Quote.class),
                Body.canonical(SignedRevision.class),
                Body.canonical(ChangeOrder.class),
                Body.canonical(Invoice.class),
                Body.canonical(Completion.class));
    }
}
