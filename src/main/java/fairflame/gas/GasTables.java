package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Everything printed that pipe is sized by: capacity tables of one edition, inside diameters, equivalent lengths of
 * fittings, specific-gravity multipliers. Immutable; made from text.
 */
public final class GasTables {
    private static final List<String> SHIPPED = List.of(
            "tables.csv",
            "steel-natural-low.csv",
            "steel-natural-elevated.csv",
            "csst-natural.csv",
            "bores.csv",
            "fittings.csv",
            "fitting-lengths.csv",
            "gravity.csv");

    private final List<CapacityTable> tables;
    private final Map<Pipe, Bore> bores;
    private final FittingBook fittings;
    private final NavigableMap<Double, Double> gravity;
    private final Map<Material, List<Pipe>> sizes = new EnumMap<>(Material.class);

    private record Bore(double inches, boolean offered) {}

    private GasTables(
            List<CapacityTable> tables,
            Map<Pipe, Bore> bores,
            FittingBook fittings,
            NavigableMap<Double, Double> gravity) {
        this.tables = List.copyOf(tables);
        this.bores = bores;
        this.fittings = fittings;
        this.gravity = gravity;
        for (var material : Material.values()) {
            sizes.put(material, sorted(material));
        }
    }

    /**
     * The tables that come with the program. The one place in this package that reads anything: its own class-path
     * resources, which are part of the program and never change.
     */
    public static GasTables shipped() {
        var texts = new LinkedHashMap<String, String>();
        SHIPPED.forEach(name -> texts.put(name, resource(name)));
        return of(texts);
    }

    private static String resource(String name) {
        try (var stream = GasTables.class.getResourceAsStream("/fairflame/gas/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("resource missing: " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("resource unreadable: " + name, e);
        }
    }

    /**
     * Tables from texts by file name: {@code tables.csv}, {@code bores.csv}, {@code fittings.csv},
     * {@code fitting-lengths.csv}, {@code gravity.csv}; every other name holds capacity rows.
     */
    public static GasTables of(Map<String, String> texts) {
        var bare = new GasTables(
                TableReader.rules("tables.csv", text(texts, "tables.csv")),
                bores(text(texts, "bores.csv")),
                FittingBook.read(text(texts, "fittings.csv"), text(texts, "fitting-lengths.csv")),
                gravity(text(texts, "gravity.csv")));
        var tables = bare;
        for (var name : texts.keySet()) {
            if (!List.of("tables.csv", "bores.csv", "fittings.csv", "fitting-lengths.csv", "gravity.csv")
                    .contains(name)) {
                tables = tables.withRows(name, text(texts, name));
            }
        }
        return tables;
    }

    private static String text(Map<String, String> texts, String name) {
        return Optional.ofNullable(texts.get(name))
                .orElseThrow(() -> Refusal.missing("file " + name, "a CSV file of that name"));
    }

    private static Map<Pipe, Bore> bores(String csv) {
        var bores = new LinkedHashMap<Pipe, Bore>();
        for (var row : CsvRows.read("bores.csv", csv, "material", "size", "inside_diameter_in", "offered", "source")) {
            row.text("source");
            bores.put(
                    new Pipe(Material.parse(row.text("material")), row.text("size")),
                    new Bore(row.positive("inside_diameter_in"), row.yes("offered")));
        }
        return Map.copyOf(bores);
    }

    private static NavigableMap<Double, Double> gravity(String csv) {
        var gravity = new TreeMap<Double, Double>();
        for (var row : CsvRows.read("gravity.csv", csv, "specific_gravity", "multiplier", "source")) {
            row.text("source");
            gravity.put(row.positive("specific_gravity"), row.positive("multiplier"));
        }
        return gravity;
    }

    /**
     * These tables and the shop's own. A table for the same gas, inlet, drop and material replaces the one at hand as a
     * whole. Refused: rows of another edition than that of the tables at hand, because old and present numbers must not
     * mix; a maker's own table for CSST names its edition {@code maker ...} and stands by itself.
     *
     * @param name of the text, for messages
     */
    public GasTables withShop(String name, String csv) {
        return withRows(name, csv);
    }

    private GasTables withRows(String name, String csv) {
        var merged = new ArrayList<>(tables);
        for (var added : TableReader.tables(name, csv)) {
            checkEdition(name, added);
            var index = indexOf(merged, added.conditions());
            if (index < 0) {
                merged.add(added);
            } else {
                merged.set(index, replacing(merged.get(index), added));
            }
        }
        return new GasTables(merged, bores, fittings, gravity);
    }

    private static int indexOf(List<CapacityTable> tables, Conditions conditions) {
        for (int i = 0; i < tables.size(); i++) {
            if (tables.get(i).conditions().equals(conditions)) {
                return i;
            }
        }
        return -1;
    }

    private static CapacityTable replacing(CapacityTable old, CapacityTable added) {
        return old.id().equals(added.id()) && old.reading().use() == CapacityTable.Use.ROWS
                ? old.withRows(added.rows())
                : added.warned(old.reading().use() == CapacityTable.Use.EQUATION ? old.warning() : "");
    }

    private void checkEdition(String name, CapacityTable added) {
        var maker = added.conditions().material() == Material.CSST
                && added.edition().startsWith("maker");
        if (!maker && !added.edition().equals(edition())) {
            throw Refusal.notAllowed(
                            "edition of " + added.id(),
                            added.edition(),
                            edition() + ", as the tables at hand (old and present tables do not mix)"
                                    + "; for CSST also 'maker ...'")
                    .at(name);
        }
    }

    /** The edition that all tables but those of a CSST maker belong to. */
    public String edition() {
        return tables.get(0).edition();
    }

    /** Refuses a pipe of which neither an inside diameter nor a table column is known. */
    public Pipe known(Pipe pipe) {
        var sizes = sizes(pipe.material());
        if (!sizes.contains(pipe)) {
            throw Refusal.unknown(
                    "size of " + pipe.material().word(),
                    pipe.size(),
                    String.join(", ", sizes.stream().map(Pipe::size).toList()));
        }
        return pipe;
    }

    /** All known sizes of a material, the narrowest first. */
    public List<Pipe> sizes(Material material) {
        return sizes.getOrDefault(material, List.of());
    }

    private List<Pipe> sorted(Material material) {
        var columns = tables.stream()
                .filter(table -> table.conditions().material() == material)
                .flatMap(table -> table.rows().keySet().stream())
                .map(size -> new Pipe(material, size));
        var own = bores.keySet().stream().filter(pipe -> pipe.material() == material);
        return (material == Material.CSST ? columns : own)
                .distinct()
                .sorted(Comparator.comparingDouble(this::width))
                .toList();
    }

    /** The sizes that sizing may choose, the narrowest first. */
    public List<Pipe> offered(Material material) {
        return sizes(material).stream()
                .filter(pipe ->
                        Optional.ofNullable(bores.get(pipe)).map(Bore::offered).orElse(true))
                .toList();
    }

    private double width(Pipe pipe) {
        return bore(pipe).map(Length::inches).orElseGet(() -> Double.parseDouble(pipe.size()));
    }

    /** The inside diameter; none for CSST. */
    public Optional<Length> bore(Pipe pipe) {
        return Optional.ofNullable(bores.get(pipe)).map(bore -> Length.ofInches(bore.inches()));
    }

    /** Fittings as feet of this pipe, by name and number. */
    public Length equivalentLength(Pipe pipe, Map<String, Integer> counts) {
        return fittings.equivalent(pipe, Optional.ofNullable(bores.get(pipe)).map(Bore::inches), counts);
    }

    /** A fitting as said in a sentence; an unknown one is refused. */
    public String fittingWords(String fitting) {
        return fittings.words(fitting);
    }

    /** The multiplier on capacities printed for gravity 0.60; the next heavier line between two. */
    double gravityMultiplier(double specificGravity) {
        return Optional.ofNullable(gravity.ceilingEntry(specificGravity - 1e-9))
                .orElseThrow(() -> Refusal.outOfRange(
                        "specific gravity", specificGravity, gravity.firstKey() + " to " + gravity.lastKey()))
                .getValue();
    }

    Optional<CapacityTable> table(Fuel fuel, Material material, Pressure inlet, Pressure drop) {
        // A table added later stands before one that came with the program.
        return tables.stream()
                .filter(table -> table.conditions().fit(fuel, material, inlet, drop))
                .reduce((earlier, later) -> later);
    }

    Optional<CapacityTable> table(String id) {
        return tables.stream().filter(table -> table.id().equals(id)).findFirst();
    }

    Stream<CapacityTable> tables() {
        return tables.stream();
    }
}
