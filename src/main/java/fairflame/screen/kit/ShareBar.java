package fairflame.screen.kit;

import javafx.scene.layout.Region;

/** A bar filled from the left by a share of its length; the figure beside it tells what it stands for. */
public final class ShareBar extends Region {
    private static final double HEIGHT = 16;
    private static final double EDGE = 2;

    private final Region fill = new Region();
    private final double share;

    /**
     * A bar.
     *
     * @param share 0 to 1
     * @param style of the filling, such as {@code won}; each has its own pattern besides its colour
     */
    public ShareBar(double share, String style) {
        this.share = Math.max(0, Math.min(1, share));
        getStyleClass().add("bar-track");
        fill.getStyleClass().add("bar-" + style);
        fill.setVisible(this.share > 0);
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        setMaxHeight(HEIGHT);
        getChildren().add(fill);
    }

    @Override
    protected void layoutChildren() {
        var room = getWidth() - 2 * EDGE;
        fill.resizeRelocate(EDGE, EDGE, Math.max(share > 0 ? EDGE : 0, share * room), HEIGHT - 2 * EDGE);
    }
}
