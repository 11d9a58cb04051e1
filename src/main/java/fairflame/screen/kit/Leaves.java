package fairflame.screen.kit;

import fairflame.screen.look.Look;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Columns side by side where there is room; on a small pane or with large type one leaf at a time under a bar. */
public final class Leaves extends VBox {
    private static final double GAP = 12;

    private final List<Leaf> leaves;
    private final Look look;
    private final double leastEms;
    private final HBox bar = new HBox(Texts.GAP);
    private final HBox row = new HBox(GAP);
    private final List<ToggleButton> keys = new ArrayList<>();
    private boolean wide;
    private int open;

    /**
     * One column.
     *
     * @param share part of the width that it takes when all stand side by side
     */
    public record Leaf(String title, Region content, double share) {}

    /**
     * Leaves for these columns.
     *
     * @param leastEms width in ems from which all stand side by side
     */
    public Leaves(Look look, double leastEms, List<Leaf> leaves) {
        super(GAP);
        this.look = look;
        this.leastEms = leastEms;
        this.leaves = List.copyOf(leaves);
        VBox.setVgrow(row, Priority.ALWAYS);
        row.setMinHeight(0);
        var group = new ToggleGroup();
        for (int i = 0; i < leaves.size(); i++) {
            var place = i;
            var key = new ToggleButton(leaves.get(i).title());
            key.setId("leaf-" + place);
            key.setToggleGroup(group);
            key.setMaxWidth(Double.MAX_VALUE);
            key.setMinHeight(USE_PREF_SIZE);
            HBox.setHgrow(key, Priority.ALWAYS);
            key.setOnAction(event -> show(place));
            keys.add(key);
        }
        bar.getChildren().addAll(keys);
        bar.setMinHeight(USE_PREF_SIZE);
        getChildren().add(row);
        widthProperty().addListener((property, before, now) -> arrange());
        look.textPercent().addListener((property, before, now) -> arrange());
        lay(true);
    }

    /** Brings a leaf to the front where only one is shown. */
    public void show(int leaf) {
        open = leaf;
        keys.get(leaf).setSelected(true);
        if (!wide) {
            lay(false);
        }
    }

    private void arrange() {
        var fits = getWidth() >= leastEms * look.em();
        if (fits != wide && getWidth() > 0) {
            lay(fits);
        }
        if (fits) {
            var room = getWidth() - GAP * (leaves.size() - 1);
            leaves.forEach(leaf -> width(leaf.content(), Math.floor(room * leaf.share())));
        }
    }

    private static void width(Region region, double width) {
        region.setMinWidth(width);
        region.setPrefWidth(width);
        region.setMaxWidth(width);
    }

    private void lay(boolean side) {
        wide = side;
        row.getChildren().clear();
        getChildren().remove(bar);
        if (side) {
            leaves.forEach(leaf -> row.getChildren().add(leaf.content()));
        } else {
            keys.get(open).setSelected(true);
            getChildren().add(0, bar);
            var content = leaves.get(open).content();
            content.setMinWidth(0);
            content.setPrefWidth(Region.USE_COMPUTED_SIZE);
            content.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(content, Priority.ALWAYS);
            row.getChildren().add(content);
        }
    }
}
