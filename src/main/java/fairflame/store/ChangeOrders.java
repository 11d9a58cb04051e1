package fairflame.store;

import fairflame.agreement.ChangeOrder;
import java.util.List;
import java.util.Optional;

/** Signed change orders. Each is stored once and never changes. */
public interface ChangeOrders {
    /** Stores a change order at the end of the chain; refusals are those of {@link Agreements#add}. */
    void add(ChangeOrder order);

    /** Stores what was signed on another laptop, at the end of that laptop's own chain. */
    void receive(String origin, ChangeOrder order);

    Optional<ChangeOrder> find(String number);

    /** Those of a signed revision, in the order of the chain. */
    List<ChangeOrder> of(String quote, int revision);

    /** All, in the order in which they were stored. */
    List<ChangeOrder> all();

    /** Those of one origin, in the order of its chain; the empty origin is this database. */
    List<ChangeOrder> from(String origin);
}
