package fairflame.visit;

import fairflame.catalog.edit.CsvText;
import fairflame.catalog.edit.Leaf;
import fairflame.catalog.edit.ShopText;
import fairflame.catalog.edit.Spot;
import fairflame.catalog.edit.YamlText;
import fairflame.visit.ShelfRow.RowField;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Divides the files of a shop into the rows of a table. */
final class ShelfReader {
    static final String PLACES = "jurisdictions/";
    private static final Map<Shelf, String> FILES = Map.of(
            Shelf.TASKS, "tasks.yaml",
            Shelf.ACCESS, "access.csv",
            Shelf.RATES, "rates.yaml",
            Shelf.LADDER, "ladder.yaml",
            Shelf.SUPPLIERS, "suppliers.csv",
            Shelf.PROMISES, "warranty.yaml",
            Shelf.TESTS, "tests.csv",
            Shelf.ACCOUNTS, "accounts.csv",
            Shelf.COMPANY, "company.yaml");
    /** Short labels by the hundred: they come after the texts that a shop writes itself. */
    private static final String LABELS = "layout.yaml";

    private static final String ELSEWHERE = "unknown-place.yaml";
    private static final Map<Shelf, Spot> LISTS = Map.of(
            Shelf.TASKS, Spot.of("tasks"), Shelf.LADDER, Spot.of("steps"), Shelf.PROMISES, Spot.of("warranties"));
    private static final Spot LAYERS = Spot.of("tax", "layers");
    private static final List<Spot> OPTIONAL_OF_A_PLACE =
            List.of(Spot.of("gasLicencePattern"), Spot.of("deposit", "capPercent"), Spot.of("deposit", "capAmount"));
    /** Tables of which rows may be added and taken out. */
    private static final Set<Shelf> GROWING =
            Set.of(Shelf.ACCESS, Shelf.SUPPLIERS, Shelf.TESTS, Shelf.ACCOUNTS, Shelf.LADDER);

    private final Shelf shelf;

    ShelfReader(Shelf shelf) {
        this.shelf = shelf;
    }

    /** Files of the table among those of the folder. */
    List<String> files(Set<String> names) {
        return names.stream()
                .filter(this::belongs)
                .sorted(Comparator.comparing((String name) -> name.endsWith(LABELS))
                        .thenComparing(name -> shelf == Shelf.TEXTS && name.contains("/"))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private boolean belongs(String name) {
        return switch (shelf) {
            case PLACES -> (name.startsWith(PLACES) && name.endsWith(".yaml")) || name.equals(ELSEWHERE);
            case TEXTS -> name.endsWith(".yaml") && !name.equals(FILES.get(Shelf.COMPANY));
            default -> name.equals(FILES.get(shelf));
        };
    }

    List<ShelfRow> rows(String file, String text) {
        var read = ShopText.of(file, text);
        if (read instanceof CsvText table) {
            var leaves = table.leaves();
            return table.keys().stream()
                    .map(key -> row(file, Spot.of(key), leaves, GROWING.contains(shelf)))
                    .toList();
        }
        var yaml = (YamlText) read;
        return switch (shelf) {
            case TASKS, LADDER, PROMISES -> items(file, yaml, LISTS.getOrDefault(shelf, Spot.of()));
            case RATES -> groups(file, yaml);
            case PLACES -> places(file, yaml);
            case TEXTS -> texts(file, yaml);
            default -> List.of(row(file, Spot.of(), yaml.leaves(), false));
        };
    }

    private ShelfRow row(String file, Spot spot, List<Leaf> leaves, boolean removable) {
        var fields = leaves.stream()
                .filter(leaf -> leaf.spot().within(spot))
                .map(leaf -> field(spot, leaf))
                .toList();
        return new ShelfRow(shelf, file, spot, fields, removable, false);
    }

    private RowField field(Spot row, Leaf leaf) {
        var depth = leaf.spot().steps().size() - row.steps().size();
        var table = leaf.spot().steps().size() == 2
                && leaf.spot().steps().get(0).equals(leaf.value())
                && row.steps().size() == 1;
        var key = depth == 1 && (leaf.spot().last().equals("id") || table);
        return new RowField(leaf.spot(), leaf.value(), leaf.lines(), key, false, false);
    }

    private List<ShelfRow> items(String file, YamlText yaml, Spot list) {
        var leaves = yaml.leaves();
        return yaml.steps(list).stream()
                .map(step -> row(file, list.in(step), leaves, GROWING.contains(shelf) || list.equals(LAYERS)))
                .toList();
    }

    /** A row for each group of rates; its values may be left out and others told. */
    private List<ShelfRow> groups(String file, YamlText yaml) {
        var rows = new ArrayList<ShelfRow>();
        var single = new ArrayList<Leaf>();
        for (var name : yaml.steps(Spot.of())) {
            var group = Spot.of(name);
            var inside = yaml.leaves().stream()
                    .filter(leaf -> leaf.spot().within(group))
                    .toList();
            if (yaml.steps(group).isEmpty()) {
                single.addAll(inside);
            } else {
                rows.add(new ShelfRow(
                        shelf,
                        file,
                        group,
                        inside.stream()
                                .map(leaf -> new RowField(leaf.spot(), leaf.value(), false, false, true, false))
                                .toList(),
                        false,
                        false));
            }
        }
        rows.add(0, row(file, Spot.of(), single, false));
        return rows;
    }

    private List<ShelfRow> places(String file, YamlText yaml) {
        var layers = items(file, yaml, LAYERS);
        var rest = yaml.leaves().stream()
                .filter(leaf -> !leaf.spot().within(LAYERS) || layers.isEmpty())
                .toList();
        var whole = row(file, Spot.of(), rest, file.startsWith(PLACES));
        var fields = new ArrayList<>(whole.fields());
        OPTIONAL_OF_A_PLACE.forEach(spot -> offer(fields, yaml, spot));
        var rows = new ArrayList<ShelfRow>();
        rows.add(new ShelfRow(shelf, file, Spot.of(), fields, whole.removable(), false));
        rows.addAll(layers);
        return rows;
    }

    /** An optional field is offered where it is not there and may be taken out where it is. */
    private static void offer(List<RowField> fields, YamlText yaml, Spot spot) {
        for (int i = 0; i < fields.size(); i++) {
            if (fields.get(i).spot().equals(spot)) {
                fields.set(i, new RowField(spot, fields.get(i).value(), false, false, true, false));
                return;
            }
        }
        if (!yaml.steps(spot.outer()).isEmpty()) {
            fields.add(new RowField(spot, "", false, false, true, true));
        }
    }

    /** A row for each entry of a list and for each single text. */
    private List<ShelfRow> texts(String file, YamlText yaml) {
        var byEntry = new LinkedHashMap<Spot, List<Leaf>>();
        yaml.leaves()
                .forEach(leaf -> byEntry.computeIfAbsent(yaml.entryOf(leaf.spot()), key -> new ArrayList<>())
                        .add(leaf));
        return byEntry.entrySet().stream()
                .map(entry -> row(file, entry.getKey(), entry.getValue(), false))
                .toList();
    }

    /** Place of the list or table that a new row of this table comes into; the tax layers of a place for its rows. */
    Spot growth(Spot near) {
        return near.within(LAYERS) ? LAYERS : LISTS.getOrDefault(shelf, Spot.of());
    }

    boolean grows() {
        return GROWING.contains(shelf);
    }
}
