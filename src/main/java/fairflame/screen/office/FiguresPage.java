package fairflame.screen.office;

import fairflame.invoice.report.ShopReport;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.ShareBar;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** What was won, what was earned and how long it took, over some days. */
final class FiguresPage extends VBox {
    private static final double LEAST = 430;
    private static final double FULL = 1000;

    private final FiguresModel model;
    private final Words words;
    private final VBox charts = new VBox();

    FiguresPage(FiguresModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        var show = Texts.button(words.say("figures.show"), model::show, "act");
        show.setId("figures-show");
        var write = Texts.button(words.say("figures.write"), model::write);
        write.setId("figures-write");
        getChildren()
                .addAll(
                        Cards.head(words.say("office.figures"), words.say("figures.note")),
                        SpanSlips.of("figures", model.span(), words),
                        Cards.keys(show, write),
                        Cards.said(
                                "figures-said",
                                model.written().map(place -> place.isEmpty() ? "" : words.say("copied.to", place))),
                        charts);
        ties.on(model.changes(), count -> fill());
    }

    private void fill() {
        charts.getChildren().clear();
        model.report()
                .get()
                .ifPresent(report -> charts.getChildren()
                        .add(new Columns(
                                LEAST,
                                12,
                                List.of(
                                        Texts.column(12, wins(report), revenue(report)),
                                        new HoursCard(model, report, words)))));
    }

    private VBox chart(String title, String note, List<Node> rows) {
        var box = Texts.column(6);
        box.getChildren().addAll(rows.isEmpty() ? List.of(Texts.words(words.say("figures.nothing"), "slate")) : rows);
        return Cards.card(words.say(title), Texts.words(words.say(note), "small", "slate"), box);
    }

    private VBox wins(ShopReport report) {
        return chart(
                "figures.wins",
                "figures.wins-note",
                report.wins().stream()
                        .<Node>map(row -> Texts.column(
                                3,
                                Cards.figure(
                                        Texts.words(model.name(row.cause())),
                                        words.say(
                                                "figures.won",
                                                row.signed(),
                                                row.quoted(),
                                                Math.round(row.perMille() / 10f))),
                                new ShareBar(row.perMille() / FULL, "won")))
                        .toList());
    }

    private VBox revenue(ShopReport report) {
        var largest = report.revenue().stream()
                .mapToDouble(row -> row.amount().getAmount().doubleValue())
                .max()
                .orElse(0);
        return chart(
                "figures.revenue",
                "figures.revenue-note",
                report.revenue().stream()
                        .<Node>map(row -> Texts.column(
                                3,
                                Cards.figure(
                                        Texts.words(words.say("figures.jobs", work(row.work()), row.jobs())),
                                        words.amount(row.amount())),
                                new ShareBar(
                                        largest <= 0
                                                ? 0
                                                : row.amount().getAmount().doubleValue() / largest,
                                        "earned")))
                        .toList());
    }

    private String work(String ids) {
        return words.sayOr("figures.work." + ids.replace(' ', '-'), model.name(ids));
    }
}
