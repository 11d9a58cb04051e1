package fairflame.document.page;

/**
 * What is left of a page.
 *
 * @param fresh true when nothing stands above: what does not fit here fits nowhere whole
 */
public record Room(double height, boolean fresh) {
    // Sums of heights may differ in the last bit by the order of adding.
    boolean holds(double points) {
        return points <= height + 0.001;
    }

    Room less(double points, boolean stillFresh) {
        return new Room(height - points, fresh && stillFresh);
    }
}
