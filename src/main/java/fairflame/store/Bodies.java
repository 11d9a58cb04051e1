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
        Body<Completion> completion) {}
