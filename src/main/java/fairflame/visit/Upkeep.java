package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.Part;
import fairflame.catalog.Shop;
import fairflame.catalog.Task;
import fairflame.catalog.upkeep.ColumnMapping;
import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.PriceListImport;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.catalog.upkeep.Upkept;
import fairflame.catalog.upkeep.Watch;
import fairflame.invoice.report.TimeDecision;
import fairflame.store.PriceSheetFile;
import fairflame.store.Records;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Keeps the parts list up to date from supplier price lists. The shop's folder is never written: what imports changed
 * lies over it in the database, and every quote keeps the prices it was made with.
 */
public final class Upkeep {
    private final Workplace workplace;

    public Upkeep(Workplace workplace) {
        this.workplace = workplace;
    }

    /** The shop as quotes are made from it: its folder, with imported prices and accepted times laid over. */
    static Shop applied(Shop folder, Records records) {
        var states = records.priceLists().states();
        var decisions = records.registers().timeDecisions().all();
        if (states.isEmpty() && decisions.isEmpty()) {
            return folder;
        }
        var factors = decisions.stream().collect(Collectors.toMap(TimeDecision::task, TimeDecision::factor));
        List<Task> tasks = folder.tasks().stream()
                .map(task -> factors.containsKey(task.id()) ? task.timed(factors.get(task.id())) : task)
                .toList();
        return folder.with(Upkept.of(folder.parts(), states).forQuotes(), tasks);
    }

    /** Name of the state of catalog that imports and decisions made, kept in every quote. */
    static String state(Records records) {
        var last = records.priceLists().imports().stream()
                .filter(taken -> taken.undone().isEmpty())
                .findFirst()
                .map(taken -> "up to price list " + taken.id())
                .orElse("without price lists");
        var decided = records.registers().timeDecisions().all().size();
        return "catalog upkeep: " + last + ", " + decided + (decided == 1 ? " changed time" : " changed times");
    }

    /** The layout of a supplier's lists as it is remembered. */
    public ColumnMapping mapping(String supplier) {
        workplace.library().shop().supplier(supplier);
        return workplace
                .store()
                .reading(records -> records.registers().mappings().find(supplier))
                .orElseThrow(() -> Refusal.missing(
                        "column mapping of " + supplier, "--map number=HEADING --map cost=HEADING, told once"));
    }

    /** Tells how a supplier lays out its lists; remembered from now on. */
    public ColumnMapping remember(String supplier, Collection<String> pairs) {
        workplace.library().shop().supplier(supplier);
        var mapping = ColumnMapping.parse(supplier, pairs);
        workplace
                .store()
                .change(
                        workplace.by(),
                        records -> records.registers().mappings().put(supplier, mapping));
        return mapping;
    }

    /** What a price list would change. Nothing is changed yet. */
    public Preview preview(Path file, ColumnMapping mapping) {
        return preview(file, mapping, Watch.NONE);
    }

    /** As {@link #preview(Path, ColumnMapping)}, watched. */
    public Preview preview(Path file, ColumnMapping mapping, Watch watch) {
        return PriceListImport.preview(
                PriceSheetFile.read(file, watch),
                mapping,
                workplace.library().shop().currency(),
                list().all(),
                watch);
    }

    /** The parts list with everything that imports left behind, superseded and vanished parts among it. */
    public Upkept list() {
        return workplace
                .store()
                .reading(
                        records -> Upkept.of(folderParts(), records.priceLists().states()));
    }

    private List<Part> folderParts() {
        return workplace.folderShop().parts();
    }

    /** Takes a whole price list over, or nothing of it. */
    public TakenOver take(Preview preview) {
        return take(preview, Watch.NONE);
    }

    /** As {@link #take(Preview)}, watched. */
    public TakenOver take(Preview preview, Watch watch) {
        var taken = workplace
                .store()
                .inTransaction(workplace.by(), records -> records.priceLists().take(preview, workplace.today(), watch));
        workplace.renew();
        return taken;
    }

    /** Takes an import back. */
    public TakenOver undo(int id) {
        var taken = workplace
                .store()
                .inTransaction(workplace.by(), records -> records.priceLists().undo(id, workplace.today()));
        workplace.renew();
        return taken;
    }

    /** All imports, the last first. */
    public List<TakenOver> imports() {
        return workplace.store().reading(records -> records.priceLists().imports());
    }

    /** What an import changed. */
    public List<PartChange> changes(int id) {
        return workplace.store().reading(records -> records.priceLists().changes(id));
    }

    /** What a part has cost, the first price first; one price for a part that no import changed. */
    public List<PastPrice> history(String part) {
        var past = workplace.store().reading(records -> records.priceLists().history(part));
        if (!past.isEmpty()) {
            return past;
        }
        var now = folderParts().stream()
                .filter(candidate -> candidate.number().equals(part))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("part number", part, "a part of the shop"));
        return List.of(new PastPrice(workplace.today(), now.cost(), now.listPrice(), "the shop's folder"));
    }
}
