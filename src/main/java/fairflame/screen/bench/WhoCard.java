package fairflame.screen.bench;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.wording.Language;
import java.util.List;
import javafx.scene.control.TextArea;
import javafx.scene.layout.VBox;

/** Whose heater it is, where it stands and which rules hold there. */
final class WhoCard extends VBox {
    private static final double LEAST = 150;

    WhoCard(BenchModel model, Words words) {
        super(12);
        var address = new TextArea();
        address.setId("customer.address");
        address.setPrefRowCount(2);
        address.setWrapText(true);
        address.setAccessibleText(words.say("who.address"));
        address.textProperty().bindBidirectional(model.typed("customer.address"));
        var places = new Chips();
        model.work()
                .places()
                .forEach(place -> places.one(
                        "place-" + place.id(),
                        place.title(),
                        place.id().equals(model.draft().get("jurisdiction")),
                        () -> model.history().change(draft -> draft.with("jurisdiction", place.id()))));
        var roles = new Chips();
        for (var role : List.of("owner", "tenant", "agent")) {
            roles.one(
                    "role-" + role,
                    words.say("role." + role),
                    role.equals(model.draft().get("customer.role")),
                    () -> model.history().change(draft -> draft.with("customer.role", role)));
        }
        var languages = new Chips();
        var spoken = model.draft().get("customer.language");
        for (var language : Language.values()) {
            languages.one(
                    "language-" + language.code(),
                    words.say("who.language." + language.code()),
                    language.code().equals(spoken.isEmpty() ? Language.ENGLISH.code() : spoken),
                    () -> model.history().change(draft -> draft.with("customer.language", language.code())));
        }
        getChildren()
                .addAll(
                        Texts.words(words.say("step.who"), "large", "strong"),
                        slip(model, words, "customer.name", "who.name"),
                        Texts.column(2, Texts.words(words.say("who.address"), "small", "slate"), address),
                        new Columns(
                                LEAST,
                                12,
                                List.of(
                                        slip(model, words, "customer.phone", "who.phone"),
                                        slip(model, words, "customer.email", "who.email"))),
                        Texts.words(words.say("who.role"), "small", "slate"),
                        roles,
                        Texts.words(words.say("who.language"), "small", "slate"),
                        languages,
                        Texts.words(words.say("who.place"), "small", "slate"),
                        places,
                        slip(model, words, "technician", "who.technician"));
    }

    private static Slip slip(BenchModel model, Words words, String field, String title) {
        return new Slip(field, words.say(title), model.typed(field), model.allowed(field));
    }
}
