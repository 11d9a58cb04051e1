package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import fairflame.catalog.upkeep.ColumnMapping;
import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.money.Amounts;
import fairflame.visit.Upkeep;
import fairflame.visit.Workplace;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Keeps the parts list up to date from supplier price lists. */
@Command(
        name = "catalog",
        mixinStandardHelpOptions = true,
        description = "Take supplier price lists over: look first, then all of it or nothing; undo; price history.",
        subcommands = {
            CatalogCommand.Look.class,
            CatalogCommand.Take.class,
            CatalogCommand.Undo.class,
            CatalogCommand.Imports.class,
            CatalogCommand.History.class
        })
final class CatalogCommand extends CommandGroup {
    /** Rows of each kind that are printed for people; {@code --json} prints all. */
    private static final int SHOWN = 20;

    /** A price list and how it is laid out. */
    static final class ListOptions {
        @Parameters(paramLabel = "FILE", description = "price list, CSV (UTF-8) or XLSX (first sheet)")
        private Path file;

        @Option(names = "--supplier", paramLabel = "ID", required = true, description = "id in suppliers.csv")
        private String supplier;

        @Option(
                names = "--map",
                paramLabel = "FIELD=HEADING",
                description =
                        "column of a field, such as cost='Dealer price'; told once, then remembered. Fields: number,"
                                + " cost, description, list-price, unit, role, size, consumable, warranty-months, replaced-by")
        private List<String> map = List.of();

        private Preview preview(Upkeep upkeep) {
            ColumnMapping mapping = map.isEmpty() ? upkeep.mapping(supplier) : upkeep.remember(supplier, map);
            return upkeep.preview(file, mapping);
        }
    }

    @Command(
            name = "preview",
            mixinStandardHelpOptions = true,
            description = "Show new, changed, vanished and refused rows. Nothing is changed.")
    static final class Look extends ShopCommand {
        @Mixin
        private ListOptions list;

        @Override
        void run(Workplace workplace) {
            var preview = list.preview(new Upkeep(workplace));
            print(() -> data(preview), out -> text(out, preview));
        }
    }

    @Command(
            name = "take",
            mixinStandardHelpOptions = true,
            description = "Take a price list over, all of it or, when a single row is refused, nothing.")
    static final class Take extends ShopCommand {
        @Mixin
        private ListOptions list;

        @Override
        void run(Workplace workplace) {
            var upkeep = new Upkeep(workplace);
            var taken = upkeep.take(list.preview(upkeep));
            print(() -> data(taken), out -> out.println(line(taken)));
        }
    }

    @Command(name = "undo", mixinStandardHelpOptions = true, description = "Take an import back.")
    static final class Undo extends ShopCommand {
        @Parameters(paramLabel = "IMPORT", description = "number of the import")
        private int id;

        @Override
        void run(Workplace workplace) {
            var taken = new Upkeep(workplace).undo(id);
            print(() -> data(taken), out -> out.println(line(taken)));
        }
    }

    @Command(name = "imports", mixinStandardHelpOptions = true, description = "List the price lists taken over.")
    static final class Imports extends ShopCommand {
        @Override
        void run(Workplace workplace) {
            var imports = new Upkeep(workplace).imports();
            print(
                    () -> {
                        var rows = Printing.object();
                        var array = rows.putArray("imports");
                        imports.forEach(taken -> array.add(data(taken)));
                        return rows;
                    },
                    out -> imports.forEach(taken -> out.println(line(taken))));
        }
    }

    @Command(name = "history", mixinStandardHelpOptions = true, description = "Show what a part has cost.")
    static final class History extends ShopCommand {
        @Parameters(paramLabel = "PART", description = "part number")
        private String part;

        @Override
        void run(Workplace workplace) {
            var prices = new Upkeep(workplace).history(part);
            print(
                    () -> {
                        var root = Printing.object().put("part", part);
                        var array = root.putArray("prices");
                        prices.forEach(price -> array.addObject()
                                .put("since", price.since().toString())
                                .put("cost", Amounts.plain(price.cost()))
                                .put(
                                        "listPrice",
                                        price.listPrice().map(Amounts::plain).orElse(null))
                                .put("from", price.from()));
                        return root;
                    },
                    out -> prices.forEach(price -> out.printf(
                            "%s  cost %10s  list %10s  %s%n",
                            price.since(),
                            Amounts.plain(price.cost()),
                            price.listPrice().map(Amounts::plain).orElse("-"),
                            price.from())));
        }
    }

    private static JsonNode data(TakenOver taken) {
        return Printing.object()
                .put("import", taken.id())
                .put("supplier", taken.supplier())
                .put("file", taken.file())
                .put("day", taken.day().toString())
                .put("by", taken.who())
                .put("parts", taken.parts())
                .put("undone", taken.undone().map(Object::toString).orElse(null));
    }

    private static String line(TakenOver taken) {
        return "import " + taken.id() + ", " + taken.day() + ", " + taken.supplier() + ", " + taken.file() + ", "
                + taken.parts() + " parts, by " + taken.who()
                + taken.undone().map(day -> ", undone on " + day).orElse("");
    }

    private static JsonNode data(Preview preview) {
        var root = Printing.object()
                .put("supplier", preview.supplier())
                .put("file", preview.file())
                .put("unchanged", preview.unchanged());
        changes(root.putArray("new"), preview.added());
        changes(root.putArray("changed"), preview.changed());
        changes(root.putArray("vanished"), preview.vanished());
        var refused = root.putArray("refused");
        preview.refused()
                .forEach(row -> refused.addObject()
                        .put("row", row.row())
                        .put("number", row.number())
                        .put("reason", row.reason()));
        return root;
    }

    private static void changes(ArrayNode array, List<PartChange> changes) {
        changes.forEach(change -> array.addObject()
                .put("row", change.row())
                .put("number", change.number())
                .put("what", String.join("; ", change.words())));
    }

    private static void text(PrintWriter out, Preview preview) {
        out.printf(
                "%s: %d new, %d changed, %d vanished, %d refused, %d unchanged%n",
                preview.file(),
                preview.added().size(),
                preview.changed().size(),
                preview.vanished().size(),
                preview.refused().size(),
                preview.unchanged());
        part(out, "new", preview.added());
        part(out, "changed", preview.changed());
        part(out, "vanished", preview.vanished());
        preview.refused().stream()
                .limit(SHOWN)
                .forEach(row -> out.println("  refused row " + row.row() + ": " + row.reason()));
        if (!preview.refused().isEmpty()) {
            out.println("Nothing of this list can be taken over until no row is refused.");
        }
    }

    private static void part(PrintWriter out, String what, List<PartChange> changes) {
        changes.stream()
                .limit(SHOWN)
                .forEach(change ->
                        out.println("  " + what + " " + change.number() + ": " + String.join("; ", change.words())));
        if (changes.size() > SHOWN) {
            out.println("  ... and " + (changes.size() - SHOWN) + " more " + what);
        }
    }
}
