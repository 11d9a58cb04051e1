package fairflame.screen.office;

import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import fairflame.visit.Differences;
import fairflame.visit.Handoff;
import java.io.ByteArrayInputStream;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Two sides of one thing, side by side; what differs has a broken bar and a frame. A person says what was done. */
final class ConflictCard extends VBox {
    private static final double LEAST = 300;
    private static final int MOST_ROWS = 40;
    private static final double PICTURE = 240;
    private static final int MOST_LETTERS = 160;

    private final Words words;

    ConflictCard(PacketsModel model, Handoff.Conflict conflict, Words words) {
        super(10);
        this.words = words;
        getStyleClass().add("card");
        setPadding(new Insets(14));
        getChildren()
                .addAll(
                        Texts.words(
                                words.say(
                                        "packet.conflict",
                                        conflict.number(),
                                        words.say("packet.kind." + conflict.kind()),
                                        conflict.key(),
                                        conflict.origin()),
                                "large",
                                "strong"),
                        Texts.words(
                                words.sayOr("packet.reason." + conflict.reason().replace(' ', '-'), conflict.reason()),
                                "slate"));
        if (conflict.kind().equals("photo")) {
            photos(conflict);
        } else {
            fields(conflict);
        }
        if (conflict.settled().isEmpty()) {
            settling(model, conflict.number());
        } else {
            getChildren().add(Texts.words(words.say("packet.settled", conflict.settled()), "moss", "strong"));
        }
    }

    private void fields(Handoff.Conflict conflict) {
        var differing = Differences.between(conflict.ours(), conflict.theirs());
        differing.stream()
                .limit(MOST_ROWS)
                .forEach(field -> getChildren()
                        .add(differing(
                                name(field.field()),
                                side("packet.here", field.ours()),
                                side("packet.there", field.theirs()))));
        var same = Differences.all(conflict.ours(), conflict.theirs()).size() - differing.size();
        var more = Math.max(0, differing.size() - MOST_ROWS);
        getChildren()
                .add(Texts.words(
                        words.say("packet.same", same) + (more == 0 ? "" : " " + words.say("packet.more", more)),
                        "small",
                        "slate"));
    }

    private VBox differing(String field, VBox ours, VBox theirs) {
        return Texts.column(
                4,
                Texts.across(
                        8, new Mark(Tone.OUTSIDE), Texts.words(words.say("packet.differs", field), "small", "strong")),
                new Columns(LEAST, 12, List.of(ours, theirs)));
    }

    private VBox side(String title, Optional<String> value) {
        var side = Texts.column(
                4,
                Texts.words(words.say(title), "small", "slate"),
                Texts.words(value.map(ConflictCard::cut).orElse(words.say("packet.nothing")), "semi"));
        side.getStyleClass().addAll("side", "differs");
        return side;
    }

    private static String cut(String text) {
        var line = text.replaceAll("\\s+", " ");
        // Digests and other long words get places where a line may end.
        var broken = line.replaceAll("(\\S{24})(?=\\S)", "$1 ");
        return broken.length() <= MOST_LETTERS ? broken : broken.substring(0, MOST_LETTERS) + " ...";
    }

    /** The path of a field as words: the file of a visit lies in a field of its own. */
    private static String name(String path) {
        return path.replaceFirst("^/(text/)?", "").replace("/", " / ");
    }

    private void photos(Handoff.Conflict conflict) {
        getChildren()
                .add(differing(
                        words.say("packet.photo"),
                        photo("packet.here", conflict.ours()),
                        photo("packet.there", conflict.theirs())));
    }

    private VBox photo(String title, String base64) {
        var bytes = Base64.getDecoder().decode(base64);
        var side = side(
                title,
                bytes.length == 0
                        ? Optional.empty()
                        : Optional.of(words.say("packet.bytes", bytes.length, Differences.fingerprint(bytes))));
        var picture = new Image(new ByteArrayInputStream(bytes), PICTURE, PICTURE, true, true);
        if (bytes.length > 0 && !picture.isError()) {
            var view = new ImageView(picture);
            view.setAccessibleText(words.say(title));
            side.getChildren().add(view);
        }
        return side;
    }

    private void settling(PacketsModel model, int number) {
        var typed = model.settlement(number);
        var slip = new Slip("settle-words-" + number, words.say("packet.settle-words"), typed.value(), typed.refusal());
        var settle = Texts.button(words.say("packet.settle"), () -> model.settle(number));
        settle.setId("settle-" + number);
        HBox keys = new HBox(Texts.GAP, settle);
        getChildren().addAll(slip, keys);
    }
}
