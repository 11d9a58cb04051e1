package fairflame.screen.office;

import fairflame.screen.kit.BesideWindow;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Veil;
import fairflame.screen.ledger.LedgerModel;
import fairflame.screen.ledger.LedgerView;
import fairflame.screen.look.Look;
import fairflame.screen.look.Words;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The ledger: a switch between the list of visits and the pages of the whole office. */
public final class OfficeView extends VBox {
    private final ObjectProperty<OfficePage> page;
    private final OfficeWork work;
    private final LedgerModel ledger;
    private final Room room;
    private final LongWork runner;
    private final LedgerView visits;
    private final StackPane place = new StackPane();
    private final Ties ties = new Ties();
    private Ties pageTies = new Ties();

    /** What the pages stand in: their words, light and type, and what lies over them while one waits. */
    public record Room(Words words, Look look, Veil veil) {}

    /** The use cases of the pages, and which of them lies open. */
    public record Pages(OfficeWork work, ObjectProperty<OfficePage> open) {}

    public OfficeView(Pages pages, LedgerModel ledger, Room room, LedgerView.Ways ways) {
        this.page = pages.open();
        this.work = pages.work();
        this.ledger = ledger;
        this.room = room;
        this.runner = new BesideWindow(room.veil(), room.words());
        this.visits = new LedgerView(ledger, room.words(), room.look(), ways);
        setMinHeight(0);
        VBox.setVgrow(place, javafx.scene.layout.Priority.ALWAYS);
        place.setMinHeight(0);
        getChildren().addAll(bar(), place);
        ties.on(page, now -> show());
    }

    public void close() {
        ties.cut();
        pageTies.cut();
        visits.close();
    }

    private Chips bar() {
        var bar = new Chips();
        bar.setPadding(new Insets(10, 14, 0, 14));
        for (var each : OfficePage.values()) {
            bar.one(
                    "page-" + each.key(),
                    room.words().say("office." + each.key()),
                    each == page.get(),
                    () -> page.set(each));
        }
        ties.later(
                page,
                now -> bar.getChildren().forEach(key -> {
                    if (key instanceof javafx.scene.control.ToggleButton toggle) {
                        toggle.setSelected(toggle.getId().equals("page-" + now.key()));
                    }
                }));
        return bar;
    }

    private void show() {
        pageTies.cut();
        pageTies = new Ties();
        place.getChildren().setAll(page());
    }

    private Node page() {
        return switch (page.get()) {
            case VISITS -> {
                ledger.list();
                yield visits;
            }
            case DUE -> whole(new DuePage(new DueModel(work, runner), room.words(), pageTies, this::file));
            case ORDERS -> whole(new OrdersPage(new OrdersModel(work, runner), room.words(), pageTies, this::file));
            case MONEY -> whole(new MoneyPage(new MoneyModel(work, runner), room.words(), pageTies, this::file));
            case PACKETS -> whole(new PacketsPage(new PacketsModel(work, runner), room.words(), pageTies));
            case FIGURES -> whole(new FiguresPage(new FiguresModel(work, runner), room.words(), pageTies));
            case BOOKS -> whole(new BooksPage(new BooksModel(work, runner), room.words(), pageTies));
        };
    }

    /** A page scrolls as a whole. */
    private static Node whole(Region content) {
        content.setPadding(new Insets(6, 14, 16, 14));
        var scroll = Texts.scrolling(content);
        // What slides under the edge stays a finger's breadth away from the keys above and below.
        StackPane.setMargin(scroll, new Insets(Texts.GAP + 1, 0, Texts.GAP + 1, 0));
        return scroll;
    }

    /** Leads to a visit's file. */
    private void file(String visit) {
        ledger.visit().set(visit);
        page.set(OfficePage.VISITS);
    }
}
