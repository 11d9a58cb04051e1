package fairflame.visit;

/** Is told how far long work has come, and can end it. */
@FunctionalInterface
public interface Progress {
    /** Nobody looks on. */
    Progress UNWATCHED = (done, all) -> {};

    /**
     * Called now and then by the work; -1 of -1 where nobody can say how far it is.
     *
     * @throws java.util.concurrent.CancellationException when the work shall end; then nothing of it is kept
     */
    void at(long done, long all);

    /** Told now and then what is being done, in words that a person reads. */
    default void say(String words) {}

    /** Called by work that cannot say how far it is. */
    default void look() {
        at(-1, -1);
    }
}
