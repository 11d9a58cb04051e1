package fairflame.screen.office;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import fairflame.visit.DueVisits;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What is due, in three columns: overdue, this week, later. Each row leads to the visit's file. */
final class DuePage extends VBox {
    private static final double LEAST = 310;

    private final DueModel model;
    private final Words words;
    private final Consumer<String> file;
    private final VBox board = new VBox();

    DuePage(DueModel model, Words words, Ties ties, Consumer<String> file) {
        super(12);
        this.model = model;
        this.words = words;
        this.file = file;
        var write = Texts.button(words.say("due.write"), model::calendar, "act");
        write.setId("due-write");
        getChildren()
                .addAll(
                        Cards.head(words.say("office.due"), words.say("due.note", words.day(model.today()))),
                        Cards.keys(write),
                        Cards.said("due-said", model.written().map(place -> copied(place))),
                        Cards.refused("due-refused", model.refusal()),
                        kinds(),
                        board,
                        Texts.words(words.say("due.calendar-note"), "small", "slate"));
        ties.on(model.kind(), kind -> fill());
    }

    private String copied(String place) {
        return place.isEmpty() ? "" : words.say("copied.to", place);
    }

    private Chips kinds() {
        var chips = new Chips();
        if (model.kinds().size() > 1) {
            chips.one(
                    "due-all",
                    words.say("due.all"),
                    model.kind().get().isEmpty(),
                    () -> model.kind().set(Optional.empty()));
            model.kinds()
                    .forEach(kind -> chips.one(
                            "due-kind-" + kind.name().toLowerCase(Locale.ROOT),
                            words.say("due.kind." + kind.name()),
                            model.kind().get().equals(Optional.of(kind)),
                            () -> model.kind().set(Optional.of(kind))));
        }
        return chips;
    }

    private void fill() {
        var columns = new ArrayList<VBox>();
        model.groups().forEach((when, rows) -> columns.add(column(when, rows)));
        if (columns.isEmpty()) {
            board.getChildren().setAll(Texts.words(words.say("due.nothing"), "slate"));
        } else {
            board.getChildren().setAll(new Columns(LEAST, 12, columns));
        }
    }

    private VBox column(DueModel.When when, List<DueVisits.Row> rows) {
        var key = when.name().toLowerCase(Locale.ROOT);
        var tone = when == DueModel.When.LATE ? Tone.OUTSIDE : when == DueModel.When.SOON ? Tone.EDGE : Tone.OPEN;
        var title = Texts.words(words.say("due." + key), "large", "strong");
        var head = Texts.across(10, new Mark(tone), title, Texts.line(String.valueOf(rows.size()), "figure", "slate"));
        HBox.setHgrow(title, javafx.scene.layout.Priority.SOMETIMES);
        var column = Texts.column(Texts.GAP, head);
        rows.forEach(row -> column.getChildren().add(row(row, when == DueModel.When.LATE)));
        return column;
    }

    private HBox row(DueVisits.Row row, boolean late) {
        var due = row.due();
        var kind = words.say("due.kind." + due.kind().name());
        var text = Cards.twoLines(kind, row.document() + (due.details().isBlank() ? "" : ", " + due.details()));
        return Cards.leading(
                "due-" + due.key(),
                kind + ", " + row.document() + ", " + words.day(due.day()),
                row.visit().orElse(""),
                file,
                tile(due.day(), late),
                text);
    }

    private VBox tile(LocalDate day, boolean late) {
        var month = day.getMonth().getDisplayName(TextStyle.SHORT, words.locale());
        var year = day.getYear() == model.today().getYear() ? "" : " " + day.getYear();
        var tile = Texts.column(
                0,
                Texts.line(String.valueOf(day.getDayOfMonth()), "large", "strong", "figure"),
                Texts.line(month + year, "small"));
        tile.setAlignment(Pos.CENTER);
        tile.getStyleClass().add("date-tile");
        tile.setMinWidth(USE_PREF_SIZE);
        if (late) {
            tile.getStyleClass().add("late");
        }
        return tile;
    }
}
