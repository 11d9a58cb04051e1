package fairflame.screen.kit;

import java.util.Map;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.SVGPath;

/** Small line drawings on a field of 48 by 48, drawn for this program. */
public final class Pictures {
    private static final double SIDE = 48;
    private static final String HEATER = "M8 14 H40 V40 H8 Z M14 20 H34 M14 24 H34";
    private static final String FLAME = "M24 8 C30 16 34 20 34 28 C34 35 29.5 40 24 40 C18.5 40 14 35 14 28 "
            + "C14 23 17 21 18 16 C21 18 23 21 23 24 C25 20 25 14 24 8 Z";
    private static final Map<String, String> PATHS = Map.ofEntries(
            // Complaints
            Map.entry(
                    "drops-out",
                    "M16 10 C20 15 23 18 23 24 C23 29 20 32 16 32 C12 32 9 29 9 24 C9 21 11 19 12 16 "
                            + "C14 18 15 20 15 21 C16 18 16 14 16 10 Z M28 21 H40 M35 16 L40 21 L35 26 M9 40 H15 M20 40 H26 "
                            + "M31 40 H37"),
            Map.entry("no-ignition-try", HEATER + " M18 34 H30 M24 4 V10"),
            Map.entry("no-flame", "M8 40 H40 M14 34 L18 26 L14 26 L20 14 M30 34 L30 30 M30 24 L30 20 M36 34 V28"),
            Map.entry("trips-after-minutes", "M24 8 A16 16 0 1 1 23.9 8 Z M24 14 V24 L31 28 M36 6 L42 12"),
            Map.entry(
                    "weak-heat",
                    "M20 8 A4 4 0 0 1 28 8 V28 A8 8 0 1 1 20 28 Z M24 22 V32 M33 12 H38 M33 18 H36 M33 24 H38"),
            Map.entry("fault-light", "M14 22 H34 V40 H14 Z M18 22 V15 A6 6 0 0 1 30 15 V22 M24 29 V33"),
            Map.entry(
                    "soot-or-rollout",
                    "M24 40 V28 M14 28 H34 V40 H14 Z M18 20 C14 18 15 12 20 13 C21 8 29 8 30 13 C35 12 36 19 31 20 Z"),
            Map.entry(
                    "leak", "M24 8 C30 17 34 22 34 29 A10 10 0 0 1 14 29 C14 22 18 17 24 8 Z M19 30 A5 5 0 0 0 24 35"),
            Map.entry("smell", FLAME),
            Map.entry("other", "M17 18 A7 7 0 1 1 24 26 V31 M24 37 V38"),
            // Places
            Map.entry("bench", "M6 20 H42 M10 20 V40 M38 20 V40 M14 12 H22 V20 M28 8 V20 M32 12 V20"),
            Map.entry("line", "M6 34 H18 V16 H32 V34 H42 M6 29 V39 M42 29 V39 M14 16 H22"),
            Map.entry("ledger", "M10 8 H34 L38 12 V40 H10 Z M16 18 H32 M16 25 H32 M16 32 H26"),
            Map.entry(
                    "stock",
                    "M6 12 H42 M6 26 H42 M6 40 H42 M10 12 V6 M10 18 H18 V26 M24 18 H30 V26 M12 32 H22 V40 M28 34 H36 V40"),
            // Tools
            Map.entry(
                    "sun",
                    "M24 16 A8 8 0 1 1 23.9 16 Z M24 4 V9 M24 39 V44 M4 24 H9 M39 24 H44 M10 10 L13 13 M35 35 L38 38 M10 38 L13 35 M35 13 L38 10"),
            Map.entry("undo", "M18 12 L9 20 L18 28 M9 20 H30 A9 9 0 0 1 30 38 H20"),
            Map.entry("redo", "M30 12 L39 20 L30 28 M39 20 H18 A9 9 0 0 0 18 38 H28"),
            Map.entry("lead", "M8 34 C14 10 34 10 40 34 M8 34 L4 42 M8 34 L12 42 M40 34 L36 42 M40 34 L44 42"),
            Map.entry("back", "M30 10 L16 24 L30 38"),
            Map.entry("flame", FLAME),
            Map.entry("photo", "M6 16 H15 L18 11 H30 L33 16 H42 V38 H6 Z M24 20 A7 7 0 1 1 23.9 20 Z"));

    private Pictures() {}

    /** The drawing of a name at a size in pixels; an unknown name gives a question mark. */
    public static Node of(String name, double size) {
        var path = new SVGPath();
        path.setContent(PATHS.getOrDefault(name, PATHS.get("other")));
        path.getStyleClass().add("picture");
        path.setScaleX(size / SIDE);
        path.setScaleY(size / SIDE);
        var box = new StackPane(new javafx.scene.Group(path));
        box.setMinSize(size, size);
        box.setPrefSize(size, size);
        box.setMaxSize(size, size);
        box.setMouseTransparent(true);
        return box;
    }
}
