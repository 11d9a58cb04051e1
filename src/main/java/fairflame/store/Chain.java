package fairflame.store;

import java.util.List;

/** The seals of signed revisions and change orders, one after the other. */
public interface Chain {
    /** Chain value of the last seal; {@link fairflame.agreement.Sealing#START} when nothing is sealed. */
    String last();

    List<Link> links();

    /**
     * One seal.
     *
     * @param position from 1
     * @param subject what was sealed, such as {@code Q-2026-0001 revision 1}
     */
    record Link(long position, String subject, String previous, String chain) {}
}
