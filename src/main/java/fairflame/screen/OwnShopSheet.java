package fairflame.screen;

import fairflame.Refusal;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.visit.OwnShop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.geometry.Insets;
import javafx.scene.layout.VBox;

/** Asks what stands on top of every paper of a shop of one's own. */
final class OwnShopSheet extends VBox {
    private static final List<String> FIELDS = List.of("name", "address", "phone", "email", "licence");

    private final Map<String, StringProperty> typed = new LinkedHashMap<>();

    OwnShopSheet(Words words, Consumer<OwnShop.Details> begin, Runnable back) {
        super(12);
        getStyleClass().add("sheet");
        setPadding(new Insets(24));
        getChildren()
                .addAll(
                        Texts.words(words.say("own.begin"), "large", "strong"),
                        Texts.words(words.say("own.note"), "slate"));
        for (var field : FIELDS) {
            typed.put(field, new SimpleStringProperty(""));
            getChildren()
                    .add(new Slip(
                            "own-" + field, words.say("own." + field), field(field), new SimpleStringProperty("")));
        }
        var refusal = Texts.words("", "refusal");
        var start = Texts.button(
                words.say("own.start"),
                () -> {
                    try {
                        begin.accept(details());
                    } catch (Refusal refused) {
                        refusal.setText(refused.getMessage());
                    }
                },
                "act");
        start.setId("own-start");
        start.setMaxWidth(Double.MAX_VALUE);
        var stay = Texts.button(words.say("own.stay"), back);
        stay.setId("own-stay");
        stay.setMaxWidth(Double.MAX_VALUE);
        getChildren().addAll(refusal, start, stay);
    }

    private StringProperty field(String name) {
        return typed.computeIfAbsent(name, key -> new SimpleStringProperty(""));
    }

    private OwnShop.Details details() {
        var lines = java.util.Arrays.stream(field("address").get().split(","))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
        return new OwnShop.Details(
                field("name").get(),
                lines,
                field("phone").get(),
                field("email").get(),
                field("licence").get());
    }
}
