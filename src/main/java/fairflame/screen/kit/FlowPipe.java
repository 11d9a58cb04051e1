package fairflame.screen.kit;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/** The way of a visit as a pipe with joints, filled with water as far as the visit has come. */
public final class FlowPipe extends Region {
    private static final double PIPE = 8;
    private static final double JOINT = 20;
    private static final double TARGET = 48;
    private static final double BOLD = 1.06;

    private final Region pipe = new Region();
    private final Region full = new Region();
    private final List<Button> stops = new ArrayList<>();
    private final List<Region> joints = new ArrayList<>();
    private final List<String> names;
    private final int reached;
    private final int here;

    /**
     * One joint of the pipe.
     *
     * @param open whether it can be gone to now
     */
    public record Stop(String id, String words, boolean open, Runnable action) {}

    /**
     * A pipe with its stops.
     *
     * @param reached index of the last stop whose work is done, -1 for none
     * @param here index of the stop that is being worked on
     */
    public FlowPipe(List<Stop> shown, int reached, int here) {
        this.reached = reached;
        this.here = here;
        this.names = shown.stream().map(Stop::words).toList();
        pipe.getStyleClass().add("pipe");
        full.getStyleClass().add("pipe-full");
        getChildren().addAll(pipe, full);
        for (int i = 0; i < shown.size(); i++) {
            var stop = shown.get(i);
            var button = Texts.button(stop.words(), stop.action(), "pipe-stop", "small");
            button.setId("stop-" + stop.id());
            button.setWrapText(false);
            button.setAccessibleText(stop.words());
            button.setDisable(!stop.open());
            var joint = new Region();
            joint.getStyleClass().add("joint");
            joint.setMouseTransparent(true);
            var style = i == here ? "here" : i <= reached ? "reached" : "ahead";
            joint.getStyleClass().add(style);
            button.getStyleClass().add(style);
            stops.add(button);
            joints.add(joint);
        }
        getChildren().addAll(joints);
        getChildren().addAll(stops);
    }

    @Override
    protected double computePrefHeight(double width) {
        return TARGET + 14;
    }

    @Override
    protected double computeMinWidth(double height) {
        return stops.size() * (TARGET + Texts.GAP);
    }

    /** Where the names do not fit side by side only the stop that is worked on keeps its name. */
    private void name(double slot) {
        var fits = names.stream().allMatch(name -> measured(name) + Texts.GAP / 2 <= slot);
        var room = 2 * slot - TARGET - 2 * Texts.GAP;
        for (int i = 0; i < stops.size(); i++) {
            var text = fits || (i == here && measured(names.get(i)) <= room) ? names.get(i) : "";
            if (!stops.get(i).getText().equals(text)) {
                stops.get(i).setText(text);
            }
        }
    }

    private double measured(String name) {
        var text = new Text(name);
        text.setFont(stops.get(0).getFont());
        return text.getLayoutBounds().getWidth() * BOLD + 2;
    }

    @Override
    protected void layoutChildren() {
        var slot = getWidth() / stops.size();
        name(slot);
        var y = 14.0;
        pipe.resizeRelocate(slot / 2, y - PIPE / 2, getWidth() - slot, PIPE);
        var filled = reached < 0 ? 0 : slot * reached + slot / 2;
        full.resizeRelocate(slot / 2, y - PIPE / 2, Math.min(getWidth() - slot, filled), PIPE);
        for (int i = 0; i < stops.size(); i++) {
            var middle = slot * i + slot / 2;
            joints.get(i).resizeRelocate(middle - JOINT / 2, y - JOINT / 2, JOINT, JOINT);
            var width = i == here
                    ? Math.max(TARGET, stops.get(i).prefWidth(-1))
                    : Math.min(slot - Texts.GAP, Math.max(TARGET, stops.get(i).prefWidth(-1)));
            stops.get(i).resizeRelocate(middle - width / 2, getHeight() - TARGET, width, TARGET);
        }
    }
}
