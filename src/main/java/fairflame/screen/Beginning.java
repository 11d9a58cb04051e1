package fairflame.screen;

import fairflame.visit.OwnShop;

/** How a shop of one's own is begun in the folder that lies open. */
@FunctionalInterface
public interface Beginning {
    /** Writes the shop's files; runs beside the window and may be refused. */
    void begin(OwnShop.Details details);

    /** Called on the window's thread when the files are there: the shop is opened. */
    default void begun() {}
}
