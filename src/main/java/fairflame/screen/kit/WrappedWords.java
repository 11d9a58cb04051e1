package fairflame.screen.kit;

import javafx.scene.control.Label;

/**
 * A label over several lines that remembers how high its words are at a width. The boxes around it ask many times in one
 * layout, and setting a paragraph is the dearest part of it.
 */
final class WrappedWords extends Label {
    private double width = Double.NaN;
    private double height;

    WrappedWords(String text) {
        super(text);
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
    }

    /** Asked for by whatever changes words, font or border: what is remembered is no longer true. */
    @Override
    public void requestLayout() {
        width = Double.NaN;
        super.requestLayout();
    }

    @Override
    protected double computePrefHeight(double asked) {
        if (asked != width) {
            height = super.computePrefHeight(asked);
            width = asked;
        }
        return height;
    }
}
