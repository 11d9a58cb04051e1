package fairflame.screen.ledger;

import fairflame.agreement.SignedRevision;
import fairflame.invoice.Invoice;
import fairflame.quote.Line;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.visit.VisitPapers;
import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** All papers of one visit on one sheet: signed against billed, invoices, payments, and what can be done now. */
final class FileSheet extends VBox {
    private final LedgerModel model;
    private final Words words;

    FileSheet(LedgerModel model, LedgerWork.File file, Words words, LedgerView.Ways ways) {
        super(14);
        this.model = model;
        this.words = words;
        getStyleClass().add("sheet");
        setPadding(new Insets(20));
        getChildren().addAll(head(file), keys(file, ways), said(), Texts.rule("rule-strong"));
        file.signed().ifPresentOrElse(signed -> signed(file, signed), () -> unsigned(file));
    }

    private VBox head(LedgerWork.File file) {
        var entry = model.entry();
        return Texts.column(
                2,
                Texts.words(entry.map(LedgerWork.Entry::customer).orElse(file.visit()), "heading"),
                Texts.words(
                        entry.map(found -> words.say("next." + LedgerView.key(found.next())))
                                        .orElse("")
                                + "  \u00B7  " + file.visit(),
                        "slate"));
    }

    private FlowPane keys(LedgerWork.File file, LedgerView.Ways ways) {
        var keys = new FlowPane(Texts.GAP, Texts.GAP);
        var open =
                Texts.button(words.say("ledger.open-bench"), () -> ways.bench().accept(file.visit()));
        open.setId("open-bench");
        keys.getChildren().add(open);
        var quote = file.quote().filter(offered -> file.signed().isEmpty());
        if (quote.isPresent()) {
            var away = Texts.button(
                    words.say("away.open"), () -> ways.away().accept(quote.get().number()));
            away.setId("away");
            keys.getChildren().add(away);
        }
        if (file.signed().isPresent()) {
            var verify = Texts.button(words.say("ledger.verify"), model::verify);
            verify.setId("verify");
            keys.getChildren().add(verify);
        }
        return keys;
    }

    private VBox said() {
        var said = Texts.words("", "lagoon");
        said.setId("ledger-said");
        said.textProperty()
                .bind(javafx.beans.binding.Bindings.createStringBinding(
                        () -> model.said().get().equals(LedgerModel.PROVED)
                                ? words.say("ledger.proved")
                                : model.said().get(),
                        model.said()));
        said.managedProperty().bind(model.said().isNotEmpty());
        var refusal = Texts.words("", "refusal");
        refusal.setId("ledger-refusal");
        refusal.textProperty().bind(model.refusal());
        refusal.managedProperty().bind(model.refusal().isNotEmpty());
        return new VBox(said, refusal);
    }

    private void unsigned(LedgerWork.File file) {
        var words2 = file.quote()
                .map(quote ->
                        words.say("ledger.unsigned", quote.number(), quote.revision(), words.day(quote.validUntil())))
                .orElse(words.say("ledger.no-quote"));
        getChildren().add(Texts.words(words2));
        file.quote()
                .ifPresent(quote -> quote.choices()
                        .forEach(choice -> getChildren()
                                .add(pair(
                                        choice.title(),
                                        words.money(choice.totals().total())))));
    }

    private void signed(LedgerWork.File file, SignedRevision signed) {
        var choice = signed.taken();
        var invoices = file.bills().stream().map(VisitPapers.Bill::invoice).toList();
        getChildren()
                .addAll(
                        Texts.words(words.say(
                                "ledger.signed-by",
                                choice.title(),
                                signed.signature().name(),
                                words.moment(signed.signature().at()),
                                signed.seal().brief())),
                        comparison(choice.lines(), invoices));
        getChildren().add(totals(signed, invoices));
        signed.declined()
                .forEach(left -> getChildren()
                        .add(Texts.words(
                                words.say("handover.declined", left.title(), words.money(left.total())),
                                "small",
                                "slate")));
        if (file.bills().isEmpty()) {
            getChildren().add(new CompletionForm(model, new CompletionModel(choice, file.leadsPlaced()), words));
        }
        file.bills().forEach(bill -> getChildren().add(new InvoiceCard(model, bill, words)));
    }

    /** Every signed line beside what was billed for it. */
    private GridPane comparison(List<Line> signed, List<Invoice> invoices) {
        var grid = grid();
        header(grid);
        var row = 1;
        for (var line : signed) {
            var billed = invoices.stream()
                    .flatMap(invoice -> invoice.lines().stream())
                    .filter(other -> other.id().equals(line.id()))
                    .findFirst();
            row(
                    grid,
                    row++,
                    line.description(),
                    words.amount(line.net()),
                    billed.map(other -> words.amount(other.net())));
        }
        for (var extra : invoices.stream()
                .flatMap(invoice -> invoice.lines().stream())
                .filter(other -> signed.stream().noneMatch(line -> line.id().equals(other.id())))
                .toList()) {
            row(grid, row++, extra.description(), "", Optional.of(words.amount(extra.net())));
        }
        return grid;
    }

    private GridPane totals(SignedRevision signed, List<Invoice> invoices) {
        var grid = grid();
        var taken = signed.taken().totals();
        row(
                grid,
                0,
                words.say("paper.subtotal"),
                words.amount(taken.subtotal()),
                invoices.stream()
                        .findFirst()
                        .map(invoice -> words.amount(invoice.totals().subtotal())));
        row(
                grid,
                1,
                words.say("ledger.tax"),
                words.amount(taken.tax()),
                invoices.stream()
                        .findFirst()
                        .map(invoice -> words.amount(invoice.totals().tax())));
        row(
                grid,
                2,
                words.say("paper.total"),
                words.amount(taken.total()),
                invoices.stream()
                        .findFirst()
                        .map(invoice -> words.amount(invoice.totals().total())));
        return grid;
    }

    private void header(GridPane grid) {
        var signed = Texts.line(words.say("ledger.signed"), "small", "slate");
        var billed = Texts.line(words.say("ledger.billed"), "small", "slate");
        GridPane.setHalignment(signed, HPos.RIGHT);
        GridPane.setHalignment(billed, HPos.RIGHT);
        grid.add(signed, 1, 0);
        grid.add(billed, 2, 0);
    }

    private static GridPane grid() {
        var grid = new GridPane();
        grid.setHgap(20);
        grid.setVgap(6);
        var wide = new ColumnConstraints();
        wide.setHgrow(Priority.ALWAYS);
        var figure = new ColumnConstraints(96);
        figure.setHalignment(HPos.RIGHT);
        var other = new ColumnConstraints(96);
        other.setHalignment(HPos.RIGHT);
        grid.getColumnConstraints().addAll(wide, figure, other);
        return grid;
    }

    private static void row(GridPane grid, int row, String name, String signed, Optional<String> billed) {
        var title = Texts.words(name);
        title.setMinWidth(0);
        grid.add(title, 0, row);
        grid.add(Texts.line(signed, "figure"), 1, row);
        grid.add(Texts.line(billed.orElse("\u2013"), "figure"), 2, row);
    }

    static javafx.scene.layout.HBox pair(String name, String figure) {
        var title = Texts.words(name);
        title.setMinWidth(0);
        title.setMaxWidth(Double.MAX_VALUE);
        javafx.scene.layout.HBox.setHgrow(title, Priority.ALWAYS);
        return Texts.across(16, title, Texts.line(figure, "figure"));
    }
}
