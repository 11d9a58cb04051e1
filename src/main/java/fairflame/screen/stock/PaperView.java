package fairflame.screen.stock;

import fairflame.catalog.edit.Spot;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import fairflame.visit.Shelf;
import java.util.Optional;
import java.util.regex.Pattern;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How printed words stand on the paper while they are typed; what is filled in later is shown in its braces. */
final class PaperView {
    private static final Pattern LEADING = Pattern.compile("^([^:]{1,40}):\\s");

    private PaperView() {}

    /** The paper for rows that are printed; absent for all others. */
    static Optional<VBox> of(EditModel model, Words words) {
        var shelf = model.row().shelf();
        if (shelf == Shelf.COMPANY) {
            return Optional.of(sheet(words, head(model, words.language())));
        }
        if (shelf != Shelf.TEXTS && shelf != Shelf.PROMISES) {
            return Optional.empty();
        }
        var box = Texts.column(6);
        for (var field : model.sheet().fields()) {
            if (!java.util.Set.of("id", "when", "boxed", "source", "gates", "partsMonths", "labourDays")
                    .contains(field.spot().last())) {
                box.getChildren().add(text(model, field.spot(), field.lines()));
            }
        }
        return box.getChildren().isEmpty() ? Optional.empty() : Optional.of(sheet(words, box));
    }

    private static VBox sheet(Words words, VBox content) {
        content.getStyleClass().add("paper-piece");
        content.setPadding(new Insets(18, 22, 18, 22));
        return Texts.column(4, Texts.words(words.say("edit.paper"), "small", "slate"), content);
    }

    private static VBox text(EditModel model, Spot spot, boolean lines) {
        var box = Texts.column(4);
        new Ties().on(model.typed(spot), typed -> {
            box.getChildren().clear();
            var pieces = lines ? typed.lines().toList() : java.util.List.of(typed.replaceAll("\\s+", " "));
            pieces.stream().filter(piece -> !piece.isBlank()).forEach(piece -> {
                var match = LEADING.matcher(piece);
                if (lines && match.find()) {
                    box.getChildren().add(Texts.words(match.group(1), "semi"));
                    box.getChildren()
                            .add(Texts.words(piece.substring(match.end()).strip()));
                } else {
                    box.getChildren().add(Texts.words(piece));
                }
            });
        });
        return box;
    }

    /** The head of every paper. */
    private static VBox head(EditModel model, String language) {
        var left = Texts.column(0, bound(model, "large", "name"), bound(model, "small", "tagline", language));
        var right = Texts.column(
                0,
                bound(model, "small", "address"),
                bound(model, "small", "phone"),
                bound(model, "small", "email"),
                bound(model, "small", "licence", language),
                bound(model, "small", "insurance", language));
        for (var half : new VBox[] {left, right}) {
            half.setMinWidth(0);
            half.setPrefWidth(1);
            HBox.setHgrow(half, Priority.ALWAYS);
        }
        var across = new HBox(16, left, right);
        return Texts.column(8, across, Texts.rule("rule"));
    }

    private static Label bound(EditModel model, String style, String... steps) {
        var spot = model.sheet().fields().stream()
                .map(field -> field.spot())
                .filter(other -> other.equals(Spot.of(steps)) || other.equals(Spot.of(steps[0])))
                .findFirst()
                .orElse(Spot.of(steps));
        var label = Texts.words("", style);
        new Ties().on(model.typed(spot), typed -> {
            label.setText(
                    typed.lines().reduce((one, other) -> one + ", " + other).orElse(""));
            label.setManaged(!typed.isBlank());
            label.setVisible(!typed.isBlank());
        });
        return label;
    }
}
