package fairflame.store;

import java.util.List;

/** The seals of signed revisions and change orders, one after the other. */
public interface Chain {
    /** What stands for the seal before the first one: 64 zeros. */
    String START = "0".repeat(64);

    /** Chain value of the last seal; {@link #START} when nothing is sealed. */
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
