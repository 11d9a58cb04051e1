package fairflame.catalog;

import fairflame.Refusal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Reads a shop's folder: file name (with {@code /} before the files of a sub-folder) to text. The format of each file
 * stands in docs/formats/catalog.md.
 */
public final class ShopFiles {
    static final String SHOP = "shop.yaml";

    private final Map<String, String> files;
    private final Problems problems = new Problems();

    private ShopFiles(Map<String, String> files) {
        this.files = Map.copyOf(files);
    }

    /**
     * The shop.
     *
     * @throws Refusal the first problem of the folder; {@link #problems} tells all of them
     */
    public static Shop parse(Map<String, String> files) {
        var reader = new ShopFiles(files);
        var shop = reader.read();
        reader.problems.found().stream().findFirst().ifPresent(problem -> {
            throw problem;
        });
        return shop.orElseThrow();
    }

    /** Everything that is wrong in the folder, in the order of reading; empty when {@link #parse} would succeed. */
    public static List<Refusal> problems(Map<String, String> files) {
        var reader = new ShopFiles(files);
        reader.read();
        return reader.problems.found();
    }

    /** What the entries of a shop that was changed in memory demand of each other and do not get. */
    public static List<Refusal> disagreements(Shop shop) {
        var reader = new ShopFiles(Map.of());
        reader.crossCheck(shop);
        var suppliers = shop.suppliers().stream().map(Supplier::id).toList();
        shop.parts().stream()
                .filter(part -> !suppliers.contains(part.supplier()))
                .forEach(part -> reader.problems.add(
                        Refusal.unknown("supplier", part.supplier(), "one of " + String.join(", ", suppliers))
                                .at("part " + part.number() + ", supplier")));
        return reader.problems.found();
    }

    /**
     * One part from the cells of a row, read as {@code parts.csv} is.
     *
     * @param cells by the name of the column
     * @throws Refusal that names row and column
     */
    public static Part part(Map<String, String> cells, Shop shop) {
        return new PartsFile(shop.currency(), shop.suppliers()).part(new CsvRow(PartsFile.NAME, 2, cells));
    }

    private Optional<Shop> read() {
        var head = problems.attempt(
                () -> YamlEntry.parse(FileText.in(files, SHOP)).only("name", "version", "currency", "source"));
        var currency = head.flatMap(file -> problems.attempt(() -> file.read("currency", Fields::currency)));
        // Without a currency no amount can be read, so the rest would only repeat this one problem.
        return head.flatMap(file -> currency.flatMap(unit -> read(file, unit)));
    }

    private Optional<Shop> read(YamlEntry head, CurrencyUnit currency) {
        var suppliers = SuppliersFile.read(files, problems);
        var parts = PartsFile.read(files, currency, suppliers, problems);
        var access = AccessFile.read(files, problems);
        var tasks = TasksFile.read(files, problems);
        var rates = RatesFile.rates(files, currency, problems);
        var ladder = RatesFile.ladder(files, currency, problems);
        var elsewhere = UnknownPlaceFile.read(files, currency, problems);
        var places = PlaceFile.read(files, currency, elsewhere, problems);
        var book = book();
        var shop = problems.attempt(() -> new Names(head.text("name"), head.text("version")))
                .flatMap(names -> rates.flatMap(paid -> ladder.map(steps -> new Shop(
                        names.name(),
                        names.version(),
                        currency,
                        parts,
                        suppliers,
                        access,
                        tasks,
                        paid,
                        steps,
                        places,
                        book,
                        elsewhere))));
        // Cross-checks on a half-read folder would accuse entries whose only fault is a broken neighbour.
        if (problems.found().isEmpty()) {
            shop.ifPresent(this::crossCheck);
        }
        return shop;
    }

    private record Names(String name, String version) {}

    private RepairBook book() {
        var tests = TablesFile.tests(files, problems);
        var warranties = TablesFile.warranties(files, problems);
        var joints = TablesFile.joints(files, problems);
        var pairs = PairsFile.read(files, problems);
        return ScopesFile.file(files, problems)
                .flatMap(file -> problems.attempt(() -> new RepairBook(
                        file.text("version"),
                        ScopesFile.remedies(file, problems),
                        pairs,
                        ScopesFile.facts(file, problems),
                        tests,
                        warranties,
                        joints,
                        ScopesFile.fittings(file))))
                .orElse(RepairBook.EMPTY);
    }

    private void crossCheck(Shop shop) {
        BookChecks.check(shop, problems);
        TaskChecks.check(shop, problems);
    }
}
