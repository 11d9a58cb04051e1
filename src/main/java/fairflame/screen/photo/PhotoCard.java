package fairflame.screen.photo;

import fairflame.quote.Photo;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Choosing;
import fairflame.screen.kit.Dropped;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.io.ByteArrayInputStream;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Photographs as evidence: taken in by path, chooser or drop, each with its caption and what it belongs to. */
public final class PhotoCard extends VBox {
    private static final double TALL = 150;
    private static final double WIDE = 220;
    private static final String[] ENDINGS = {"*.jpg", "*.jpeg", "*.JPG", "*.png", "*.PNG", "*.gif", "*.bmp", "*.tif"};

    private final PhotoModel model;
    private final Words words;
    private final VBox rows = new VBox(Texts.GAP);

    public PhotoCard(PhotoModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        getChildren()
                .addAll(
                        Texts.words(words.say("step.photos"), "large", "strong"),
                        Texts.words(words.say("photo.what"), "slate"),
                        new Slip("photo-file", words.say("photo.file"), model.file(), model.refusal()),
                        new FlowPane(
                                Texts.GAP,
                                Texts.GAP,
                                key("photo-choose", words.say("photo.choose"), this::choose),
                                key("photo-add", words.say("photo.add"), model::add)),
                        rows);
        Dropped.on(this, file -> {
            model.file().set(file.getPath());
            model.add();
        });
        ties.on(
                model.photos(),
                photos ->
                        rows.getChildren().setAll(photos.stream().map(this::row).toList()));
    }

    private static Button key(String id, String text, Runnable action) {
        var key = Texts.button(text, action);
        key.setId(id);
        return key;
    }

    private VBox row(Photo photo) {
        var view = new ImageView(new Image(new ByteArrayInputStream(model.picture(photo)), WIDE, TALL, true, true));
        view.setAccessibleText(photo.caption().isEmpty() ? photo.name() : photo.caption());
        var caption = new Slip(
                "photo-caption-" + photo.name(),
                words.say("photo.caption"),
                new SimpleStringProperty(photo.caption()),
                new SimpleStringProperty(""));
        keep(caption.field(), photo);
        var keys = new Chips();
        keys.any("photo-show-" + photo.name(), words.say("photo.show"), photo.shown(), on -> model.show(photo, on));
        keys.getChildren()
                .add(key("photo-remove-" + photo.name(), words.say("photo.remove"), () -> model.remove(photo)));
        var abouts = abouts(photo);
        var card = Texts.column(
                8,
                view,
                Texts.words(photo.name(), "small", "slate"),
                caption,
                keys,
                key("photo-about-" + photo.name(), words.say("photo.about", about(photo)), () -> {
                    abouts.setVisible(!abouts.isVisible());
                    abouts.setManaged(abouts.isVisible());
                }),
                abouts);
        card.getStyleClass().add("card");
        card.setPadding(new Insets(12));
        return card;
    }

    private String about(Photo photo) {
        return model.abouts().stream()
                .filter(about -> about.id().equals(photo.about()))
                .map(PhotoModel.About::title)
                .findFirst()
                .orElse(words.say("photo.about-none"));
    }

    /** What a photograph may belong to: many, so folded away until asked for. */
    private Chips abouts(Photo photo) {
        var chips = new Chips();
        for (var about : model.abouts()) {
            chips.one(
                    "photo-about-" + photo.name() + "-" + about.id(),
                    about.title(),
                    about.id().equals(photo.about()),
                    () -> model.about(photo, about.id()));
        }
        chips.setVisible(false);
        chips.setManaged(false);
        return chips;
    }

    /** A caption is kept when the field is left or Enter is struck, not letter by letter: each state is registered. */
    private void keep(TextField field, Photo photo) {
        Runnable keep = () -> {
            if (!field.getText().strip().equals(photo.caption())) {
                model.caption(photo, field.getText());
            }
        };
        field.setOnAction(event -> keep.run());
        field.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                keep.run();
            }
        });
    }

    private void choose() {
        Choosing.at(this, Choosing.Wanted.file(words.say("photo.choose"), words.say("step.photos"), ENDINGS))
                .ifPresent(chosen -> {
                    model.file().set(chosen.getPath());
                    model.add();
                });
    }
}
