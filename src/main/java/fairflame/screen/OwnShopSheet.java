package fairflame.screen;

import fairflame.Refusal;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.visit.OwnShop;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Asks what stands on top of every paper of a shop of one's own. */
final class OwnShopSheet extends VBox {
    private static final List<String> FIELDS = List.of("name", "address", "phone", "email", "licence");

    private final LongWork runner;
    private final Map<String, StringProperty> typed = new LinkedHashMap<>();
    private final Map<String, StringProperty> refused = new LinkedHashMap<>();
    private final Label refusal = Texts.words("", "refusal");

    OwnShopSheet(Words words, LongWork runner, Beginning begin, Runnable back) {
        super(12);
        this.runner = new OneAtATime(runner);
        getStyleClass().add("sheet");
        setPadding(new Insets(20, 12, 20, 24));
        var fields = Texts.column(
                12,
                Texts.words(words.say("own.begin"), "large", "strong"),
                Texts.words(words.say("own.note"), "slate"));
        fields.setPadding(new Insets(2, 14, 8, 2));
        for (var field : FIELDS) {
            fields.getChildren()
                    .add(new Slip("own-" + field, words.say("own." + field), of(typed, field), of(refused, field)));
        }
        refusal.managedProperty().bind(refusal.textProperty().isNotEmpty());
        var start = Texts.button(words.say("own.start"), () -> start(begin), "act");
        start.setId("own-start");
        start.setMaxWidth(Double.MAX_VALUE);
        var stay = Texts.button(words.say("own.stay"), back);
        stay.setId("own-stay");
        stay.setMaxWidth(Double.MAX_VALUE);
        fields.getChildren().addAll(refusal, start, stay);
        getChildren().add(Texts.scrolling(fields));
    }

    private static StringProperty of(Map<String, StringProperty> texts, String field) {
        return texts.computeIfAbsent(field, key -> new SimpleStringProperty(""));
    }

    /** What is refused stands beside its field; what belongs to none, above the keys. */
    private void start(Beginning begin) {
        refused.values().forEach(said -> said.set(""));
        refusal.setText("");
        try {
            var details = details();
            runner.run(
                    "own",
                    progress -> {
                        begin.begin(details);
                        return details;
                    },
                    begun -> begin.begun(),
                    this::tell);
        } catch (Refusal wrong) {
            tell(Ended.refused(wrong));
        }
    }

    private void tell(Ended ended) {
        var field = ended.refusal().filter(wrong -> FIELDS.contains(wrong.where()));
        field.ifPresentOrElse(
                wrong -> of(refused, wrong.where()).set(wrong.what() + ": " + wrong.allowed()),
                () -> refusal.setText(ended.words()));
    }

    private OwnShop.Details details() {
        var lines = Arrays.stream(of(typed, "address").get().split(","))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
        return new OwnShop.Details(
                of(typed, "name").get(),
                lines,
                of(typed, "phone").get(),
                of(typed, "email").get(),
                of(typed, "licence").get());
    }
}
