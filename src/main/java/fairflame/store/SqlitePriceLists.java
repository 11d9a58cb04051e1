package fairflame.store;

import fairflame.Refusal;
import fairflame.catalog.Part;
import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.PriceListUndo;
import fairflame.catalog.upkeep.Stocked;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.catalog.upkeep.Watch;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

final class SqlitePriceLists implements PriceLists {
    private static final int BATCH = 5000;
    private static final String COUNTED = """
            select i.*, (select count(*) from part_state where import = i.id and after = 1) as parts
            from price_import i""";

    private final Handle handle;
    private final Journal journal;

    SqlitePriceLists(Handle handle, Journal journal) {
        this.handle = handle;
        this.journal = journal;
    }

    @Override
    public TakenOver take(Preview preview, LocalDate day, Watch watch) {
        var changes = preview.accepted();
        if (changes.isEmpty()) {
            throw Refusal.notAllowed("price list", preview.file() + " without a change", "a list that changes a part");
        }
        refuseUnlessCurrent(changes);
        var id = handle.createQuery("select coalesce(max(id), 0) + 1 from price_import")
                .mapTo(Integer.class)
                .one();
        handle.createUpdate("insert into price_import (id, supplier, file, day, who)"
                        + " values (:id, :supplier, :file, :day, :who)")
                .bind("id", id)
                .bind("supplier", preview.supplier())
                .bind("file", preview.file())
                .bind("day", day.toString())
                .bind("who", journal.by().who())
                .execute();
        insert(id, changes, watch);
        journal.stored("price list taken over", "import " + id, Digest.of(changes.toString()));
        return find(id);
    }

    /** Between preview and now another import may have come in; then the preview is no longer true. */
    private void refuseUnlessCurrent(List<PartChange> changes) {
        var now = byNumber(states());
        for (var change : changes) {
            var state = now.get(change.number());
            if (state != null && !Optional.of(state).equals(change.before())) {
                throw Refusal.notAllowed(
                        "preview of part " + change.number(), "changed since", "a new preview of the price list");
            }
        }
    }

    private static Map<String, Stocked> byNumber(List<Stocked> states) {
        var byNumber = new HashMap<String, Stocked>();
        states.forEach(state -> byNumber.put(state.part().number(), state));
        return byNumber;
    }

    private void insert(int id, List<PartChange> changes, Watch watch) {
        var done = 0;
        try (var batch = handle.prepareBatch("""
                insert into part_state (import, number, after, sheet_row, role, size, description, consumable, unit,
                    currency, cost, list_price, supplier, warranty_months, preferred, source, replaced_by, vanished)
                values (:import, :number, :after, :row, :role, :size, :description, :consumable, :unit,
                    :currency, :cost, :list, :supplier, :warranty, :preferred, :source, :replacedBy, :vanished)""")) {
            for (var change : changes) {
                change.before().ifPresent(before -> add(batch, id, change.row(), before, false));
                add(batch, id, change.row(), change.after(), true);
                watch.passing(Watch.Stage.STORING, done++);
                if (batch.size() >= BATCH) {
                    batch.execute();
                }
            }
            if (batch.size() > 0) {
                batch.execute();
            }
        }
    }

    private static void add(PreparedBatch batch, int id, int row, Stocked state, boolean after) {
        var part = state.part();
        batch.bind("import", id)
                .bind("number", part.number())
                .bind("after", after)
                .bind("row", row)
                .bind("role", part.role())
                .bind("size", part.size())
                .bind("description", part.description())
                .bind("consumable", part.consumable())
                .bind("unit", part.unit())
                .bind("currency", part.cost().getCurrencyUnit().getCode())
                .bind("cost", part.cost().getAmountMinorLong())
                .bind("list", part.listPrice().map(Money::getAmountMinorLong))
                .bind("supplier", part.supplier())
                .bind("warranty", part.warrantyMonths())
                .bind("preferred", part.preferred())
                .bind("source", part.source())
                .bind("replacedBy", state.replacedBy())
                .bind("vanished", state.vanished())
                .add();
    }

    @Override
    public TakenOver undo(int id, LocalDate day) {
        journal.by();
        var found = find(id);
        if (found.undone().isPresent()) {
            throw Refusal.notAllowed(
                    "undo of import " + id, "undone on " + found.undone().get(), "an import that stands");
        }
        PriceListUndo.refuseUnlessLast(changes(id), byNumber(states()));
        handle.createUpdate("update price_import set undone = :day where id = :id")
                .bind("day", day.toString())
                .bind("id", id)
                .execute();
        journal.changed("price list taken back", "import " + id, Digest.of(found.toString()), Journal.NOTHING);
        return find(id);
    }

    @Override
    public List<Stocked> states() {
        return handle.createQuery("""
                        select s.* from part_state s
                        join (select number, max(import) as last from part_state
                            join price_import on id = import where undone is null and after = 1 group by number) l
                            on l.number = s.number and l.last = s.import
                        where s.after = 1 order by s.number""").map((row, context) -> state(row)).list();
    }

    @Override
    public List<TakenOver> imports() {
        return handle.createQuery(COUNTED + " order by i.id desc")
                .map((row, context) -> read(row))
                .list();
    }

    private TakenOver find(int id) {
        return handle.createQuery(COUNTED + " where i.id = :id")
                .bind("id", id)
                .map((row, context) -> read(row))
                .findOne()
                .orElseThrow(() -> Refusal.unknown("import", id, "the number of an import"));
    }

    private static TakenOver read(ResultSet row) throws SQLException {
        return new TakenOver(
                row.getInt("id"),
                row.getString("supplier"),
                row.getString("file"),
                LocalDate.parse(row.getString("day")),
                row.getString("who"),
                row.getInt("parts"),
                Optional.ofNullable(row.getString("undone")).map(LocalDate::parse));
    }

    @Override
    public List<PartChange> changes(int id) {
        var before = new HashMap<String, Stocked>();
        var after = new LinkedHashMap<String, PartChange>();
        handle.createQuery("select * from part_state where import = :id order by number, after")
                .bind("id", id)
                .map((row, context) -> {
                    var state = state(row);
                    var number = state.part().number();
                    if (row.getInt("after") == 0) {
                        before.put(number, state);
                    } else {
                        after.put(
                                number,
                                new PartChange(
                                        row.getInt("sheet_row"), Optional.ofNullable(before.get(number)), state));
                    }
                    return number;
                })
                .forEach(number -> {});
        return List.copyOf(after.values());
    }

    @Override
    public List<PastPrice> history(String part) {
        var prices = new ArrayList<PastPrice>();
        handle.createQuery("""
                        select s.*, i.day, i.file from part_state s join price_import i on i.id = s.import
                        where s.number = :number and i.undone is null order by s.import, s.after""")
                .bind("number", part)
                .map((row, context) -> price(row))
                .forEach(price -> {
                    var last =
                            prices.isEmpty() ? Optional.<PastPrice>empty() : Optional.of(prices.get(prices.size() - 1));
                    var same = last.filter(old ->
                            old.cost().equals(price.cost()) && old.listPrice().equals(price.listPrice()));
                    if (same.isEmpty()) {
                        prices.add(price);
                    }
                });
        return prices;
    }

    private static PastPrice price(ResultSet row) throws SQLException {
        var part = state(row).part();
        var from = row.getInt("after") == 0 ? "the shop's folder" : row.getString("file");
        return new PastPrice(LocalDate.parse(row.getString("day")), part.cost(), part.listPrice(), from);
    }

    private static Stocked state(ResultSet row) throws SQLException {
        var currency = CurrencyUnit.of(row.getString("currency"));
        var list = row.getObject("list_price") == null
                ? Optional.<Money>empty()
                : Optional.of(Money.ofMinor(currency, row.getLong("list_price")));
        var part = new Part(
                row.getString("number"),
                row.getString("role"),
                row.getString("size"),
                row.getString("description"),
                row.getBoolean("consumable"),
                row.getString("unit"),
                Money.ofMinor(currency, row.getLong("cost")),
                list,
                row.getString("supplier"),
                row.getInt("warranty_months"),
                row.getBoolean("preferred"),
                row.getString("source"));
        return new Stocked(part, row.getString("replaced_by"), row.getBoolean("vanished"));
    }
}
