package fairflame.visit;

import fairflame.agreement.CanonicalForm;
import fairflame.agreement.ChangeOrder;
import fairflame.agreement.SignedRevision;
import fairflame.catalog.Shop;
import fairflame.catalog.upkeep.Stocked;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.quote.Quote;
import fairflame.store.Bodies;
import fairflame.store.Body;
import fairflame.store.By;
import fairflame.store.OutputFolder;
import fairflame.store.Store;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;

/** A shop at work: its library, its database and its folder of papers. Clock and name come in here. */
public final class Workplace implements AutoCloseable {
    /** Name of the database in the folder. */
    public static final String DATABASE = "fairflame.db";

    private static final Bodies BODIES = new Bodies(
            body(Quote.class),
            body(SignedRevision.class),
            body(ChangeOrder.class),
            body(Invoice.class),
            body(Completion.class));

    private volatile Library folders;
    private volatile Library library;
    private final Store store;
    private final OutputFolder folder;
    private final Clock clock;
    private final String who;

    private Workplace(Library library, Store store, OutputFolder folder, Clock clock, String who) {
        this.folders = library;
        this.library = library;
        this.store = store;
        this.folder = folder;
        this.clock = clock;
        this.who = who;
        renew();
    }

    /** Lays what imports and decisions changed over the shop's folder; called after each of them. */
    void renew() {
        library = store.reading(records -> {
            var shop = Upkeep.applied(folders.shop(), records);
            return shop.equals(folders.shop()) ? folders : folders.with(shop, Upkeep.state(records));
        });
    }

    /** Takes the shop's files as they now are; what imports and decisions changed lies over them as before. */
    void reread(Library read) {
        folders = read;
        renew();
    }

    /** The library as it was read from the shop's files. */
    Library folders() {
        return folders;
    }

    /** The shop as it stands in its folder, without what imports and decisions changed. */
    Shop folderShop() {
        return folders.shop();
    }

    /** The shop with every part it ever had, those that were superseded too. */
    Shop everyPart() {
        var all = new Upkeep(this).list().all().stream().map(Stocked::part).toList();
        return folders.shop().with(all, folders.shop().tasks());
    }

    /**
     * Opens the folder of a shop, with its database and its papers; makes both when they are not there.
     *
     * @param who stands in the journal beside every change
     */
    public static Workplace open(Path folder, Library library, Clock clock, String who) {
        var papers = OutputFolder.at(folder);
        return new Workplace(library, Store.open(folder.resolve(DATABASE), BODIES), papers, clock, who);
    }

    /** Everything a visit is judged, priced and printed by, with imported prices and accepted times. */
    public Library library() {
        return library;
    }

    Store store() {
        return store;
    }

    OutputFolder folder() {
        return folder;
    }

    /** Day of the shop's clock. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** Time of the shop's clock with its offset. */
    public OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }

    /** Folder of the shop's papers. */
    public java.nio.file.Path papers() {
        return folder.path();
    }

    By by() {
        return new By(who, clock.instant());
    }

    /** Name in the journal. */
    public String who() {
        return who;
    }

    @Override
    public void close() {
        store.close();
    }

    private static <T extends Record> Body<T> body(Class<T> type) {
        return new Body<>() {
            @Override
            public byte[] write(T thing) {
                return CanonicalForm.write(thing);
            }

            @Override
            public T read(byte[] bytes) {
                return CanonicalForm.read(type, bytes);
            }
        };
    }
}
