package fairflame.screen;

import fairflame.screen.away.AwayModel;
import fairflame.screen.away.AwaySheet;
import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.BenchView;
import fairflame.screen.bench.Steps;
import fairflame.screen.handover.HandoverModel;
import fairflame.screen.handover.HandoverView;
import fairflame.screen.kit.BesideWindow;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Veil;
import fairflame.screen.ledger.LedgerModel;
import fairflame.screen.ledger.LedgerView;
import fairflame.screen.line.LineModel;
import fairflame.screen.line.LineView;
import fairflame.screen.look.Look;
import fairflame.screen.look.Words;
import fairflame.screen.office.OfficeView;
import fairflame.screen.pin.PinChangeSheet;
import fairflame.screen.pin.PinModel;
import fairflame.screen.pin.PinWork;
import fairflame.screen.stock.StockModel;
import fairflame.screen.stock.StockView;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;

/** The window's content: header, the place one is in, rail; or the customer's page alone. */
public final class Shell extends StackPane {
    private static final double SHEET = 520;

    private final ShellModel model;
    private final Look look;
    private final Beginning begin;
    private final Ties ties = new Ties();
    private Veil veil = new Veil(new StackPane());
    private Words words;
    private Runnable closeView = () -> {};
    private boolean withCustomer;

    /** A shell; {@code begin} starts a shop of one's own with these details. */
    public Shell(ShellModel model, Look look, Beginning begin) {
        this.model = model;
        this.begin = begin;
        this.look = look;
        this.words = Words.in(model.language().get());
        getStyleClass().add("desk");
        ties.later(model.language(), language -> {
            words = Words.in(language);
            show();
        });
        ties.later(model.place(), place -> show());
        ties.later(model.bench(), bench -> show());
        show();
    }

    /** Keys that work everywhere. */
    public void keys(javafx.scene.Scene scene) {
        var places = Place.values();
        for (int i = 0; i < places.length; i++) {
            var place = places[i];
            scene.getAccelerators().put(new KeyCodeCombination(KeyCode.valueOf("F" + (i + 1))), () -> {
                if (free() && !held() && canGo(place)) {
                    model.place().set(place);
                }
            });
        }
        scene.getAccelerators()
                .put(
                        new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN),
                        () -> onBench(bench -> bench.history().undo()));
        scene.getAccelerators()
                .put(
                        new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN),
                        () -> onBench(bench -> bench.history().redo()));
        scene.getAccelerators().put(new KeyCodeCombination(KeyCode.N, KeyCombination.SHORTCUT_DOWN), () -> {
            if (free() && !held()) {
                model.start();
            }
        });
    }

    /** Changes the visit by a key; stopped work and a quote before the customer are not changed so. */
    private void onBench(Consumer<BenchModel> change) {
        if (free()) {
            model.bench()
                    .get()
                    .filter(bench ->
                            bench.judged().get().filter(found -> found.danger()).isEmpty())
                    .ifPresent(change);
        }
    }

    /** Whether stopped work holds the screen: nothing leads away before its sheet is printed or a release recorded. */
    private boolean held() {
        return model.bench().get().filter(BenchModel::held).isPresent();
    }

    /** Whether keys may lead anywhere: not while a sheet asks, and never away from the customer's page. */
    private boolean free() {
        return !withCustomer && !veil.covered();
    }

    private boolean canGo(Place place) {
        return place == Place.LEDGER
                || place == Place.STOCK
                || model.bench().get().isPresent();
    }

    private void show() {
        withCustomer = false;
        model.refresh();
        closeView.run();
        closeView = () -> {};
        var frame = new BorderPane();
        veil = new Veil(frame);
        var header = new Header(model, words, this::handOver);
        var rail = new Rail(model, words, look, () -> digits(() -> {}));
        frame.setTop(header);
        frame.setBottom(rail);
        frame.setCenter(place());
        var redraw = new Ties();
        redraw.later(look.theme(), theme -> rail.fill());
        redraw.later(look.textPercent(), percent -> rail.fill());
        model.bench().get().ifPresent(bench -> {
            redraw.later(bench.judged(), judged -> header.fill());
            redraw.later(bench.step(), step -> header.fill());
            redraw.later(bench.history().now(), draft -> rail.fill());
        });
        var before = closeView;
        closeView = () -> {
            redraw.cut();
            before.run();
        };
        getChildren().setAll(veil);
    }

    private Node place() {
        return switch (model.place().get()) {
            case BENCH -> model.bench().get().<Node>map(this::bench).orElseGet(StackPane::new);
            case LEDGER -> ledger();
            case LINE -> model.bench().get().<Node>map(this::line).orElseGet(StackPane::new);
            case STOCK -> stock();
        };
    }

    private BenchView bench(BenchModel bench) {
        var view = new BenchView(bench, words, look, veil, new BenchView.Ways(this::handOver, () -> printStop(bench)));
        closeView = view::close;
        return view;
    }

    private LineView line(BenchModel bench) {
        var view = new LineView(new LineModel(bench, model.work().line(), beside()), words, look);
        closeView = view::close;
        return view;
    }

    private StockView stock() {
        var view = new StockView(
                new StockModel(model.work().stock(), beside()),
                words,
                look,
                veil,
                model.work().demo() ? Optional.of(this::ownShop) : Optional.empty());
        closeView = view::close;
        return view;
    }

    private OfficeView ledger() {
        var open = new LedgerModel(model.work(), beside());
        model.bench().get().ifPresent(bench -> open.visit().set(bench.draft().get("id")));
        var ways = new LedgerView.Ways(
                model::start,
                model::open,
                model.work().demo() ? Optional.of(this::ownShop) : Optional.empty(),
                quote -> away(quote, open));
        var view = new OfficeView(
                new OfficeView.Pages(model.work().office(), model.page()),
                open,
                new OfficeView.Room(words, look, veil),
                ways);
        closeView = view::close;
        return view;
    }

    /** Opens the sheet for a customer who is away. */
    private void away(String quote, LedgerModel ledger) {
        var paper =
                new AwayModel(model.work().away(), quote, model.language().get(), beside(), signed -> ledger.again());
        veil.lay(new AwaySheet(paper, words, veil), AwaySheet.WIDEST);
    }

    /** Asks who the shop is and begins it. */
    private void ownShop() {
        veil.lay(new OwnShopSheet(words, beside(), begin, veil::lift), SHEET);
    }

    private void printStop(BenchModel bench) {
        var draft = bench.draft();
        beside().run(
                        "papers",
                        progress -> model.work().printStopWork(draft, progress),
                        file -> {
                            bench.printed();
                            say(words.say("copied.to", file.toString()));
                        },
                        ended -> say(ended.words()));
    }

    /** Runs long work under the sheet that lies over everything here. */
    private LongWork beside() {
        return new BesideWindow(veil, words);
    }

    /** Keeps the quote and gives the screen to the customer. */
    private void handOver() {
        if (model.work().pin().state() == PinWork.State.NONE) {
            digits(this::give);
        } else {
            give();
        }
    }

    /** Sets or changes the digits of the person at work, then goes on. */
    private void digits(Runnable on) {
        var sheet = new PinChangeSheet(
                new PinModel(model.work().pin()),
                words,
                () -> {
                    veil.lift();
                    on.run();
                },
                veil::lift);
        veil.lay(sheet, PinChangeSheet.WIDEST);
    }

    private void give() {
        model.bench().get().ifPresent(bench -> {
            if (bench.leadsPlaced() > 0) {
                bench.step().set(Steps.LEADS);
                say(words.say("handover.leads", bench.leadsPlaced()));
                return;
            }
            var draft = bench.draft();
            beside().run(
                            "quote",
                            progress -> {
                                var quote = model.work().offer(draft, progress);
                                return new HandoverModel.Offered(
                                        quote, model.work().line(quote));
                            },
                            offered -> give(offered, draft.get("technician")),
                            ended -> say(ended.words()));
        });
    }

    /** The screen is the customer's until the technician takes it back. */
    private void give(HandoverModel.Offered offered, String witness) {
        var customers = Words.in(offered.quote().language());
        closeView.run();
        closeView = () -> {};
        withCustomer = true;
        var holder = new StackPane();
        veil = new Veil(holder);
        var page = new HandoverModel(model.work(), offered, witness, new BesideWindow(veil, customers));
        holder.getChildren().add(new HandoverView(page, customers, look.em(), veil, signed -> {}, this::show));
        getChildren().setAll(veil);
    }

    /** Says something on a sheet over everything. */
    void say(String text) {
        var close = Texts.button(words.say("why.close"), veil::lift, "act");
        close.setId("say-close");
        var said = Texts.words(text);
        said.setId("say-text");
        var sheet = Texts.column(16, said, close);
        sheet.getStyleClass().add("sheet");
        sheet.setPadding(new Insets(24));
        veil.lay(sheet, SHEET);
    }
}
