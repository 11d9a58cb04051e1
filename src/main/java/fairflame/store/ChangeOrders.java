package fairflame.store;

import fairflame.agreement.ChangeOrder;
import java.util.List;
import java.util.Optional;

/** Signed change orders. Each is stored once and never changes. */
public interface ChangeOrders {
    /** Stores a change order at the end of the chain; refusals are those of {@link Agreements#add}. */
    void add(ChangeOrder order);

    Optional<ChangeOrder> find(String number);

    /** Those of a signed revision, in the order of the chain. */
    List<ChangeOrder> of(String quote, int revision);

    /** All, in the order of the chain. */
    List<ChangeOrder> all();
}
