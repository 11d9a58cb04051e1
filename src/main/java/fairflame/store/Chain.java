package fairflame.store;

import java.util.List;

/** The seals of signed revisions and change orders, one after the other. */
public interface Chain {
    /** Chain value of the last seal of this database; {@link fairflame.agreement.Sealing#START} when none. */
    String last();

    /** All seals in the order in which they were stored; those of each origin follow each other. */
    List<Link> links();

    /**
     * One seal.
     *
     * @param position from 1
     * @param subject what was sealed, such as {@code Q-2026-0001 revision 1}
     * @param origin laptop on which it was sealed; empty for this database
     */
    record Link(long position, String subject, String previous, String chain, String origin) {}
}
