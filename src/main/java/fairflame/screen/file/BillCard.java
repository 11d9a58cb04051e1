package fairflame.screen.file;

import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Fold;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** What has to be on record before the work is billed as complete, and the bill for a part. */
final class BillCard extends Card {
    private final BillModel model;

    BillCard(BillModel model, Words words) {
        super(words, words.say("complete.title"));
        this.model = model;
        model.missing().forEach(line -> add(Texts.words("\u2022 " + line, "amber")));
        model.tests().forEach(test -> add(test(test)));
        add(slip(model.whole(), "bill-day").prompt("2026-03-20"));
        var make = key("make-invoice", words.say("complete.invoice"), model::invoice, "act");
        make.setMaxWidth(Double.MAX_VALUE);
        add(whole(model.whole()), make);
        add(new Fold("part-bill", words.say("file.part-bill"), this::part));
    }

    private HBox test(String test) {
        var field = BillModel.test(test);
        var slip = slip(model.whole(), field, words.sayOr("test." + test, words.say("complete.test", test)));
        HBox.setHgrow(slip, Priority.ALWAYS);
        slip.setMinWidth(0);
        var passed = toggle("passed-" + test, words.say("complete.passed"), model.passed(test));
        passed.setMinWidth(USE_PREF_SIZE);
        var row = Texts.across(Texts.GAP, slip, passed);
        row.setAlignment(javafx.geometry.Pos.BOTTOM_LEFT);
        return row;
    }

    private Node part() {
        var box = Texts.column(Texts.GAP, Texts.words(words.say("file.part-why"), "small", "slate"));
        var slips = new java.util.ArrayList<Slip>();
        for (var line : model.open()) {
            slips.add(slip(
                    model.part(),
                    BillModel.part(line),
                    words.say(
                            "file.part-line",
                            line.description(),
                            words.number(model.left(line)),
                            words.sayOr("unit." + line.unit(), line.unit()))));
        }
        slips.add(slip(model.part(), "part-day").prompt("2026-03-20"));
        box.getChildren()
                .addAll(
                        new Columns(LEAST * 2, 12, slips),
                        whole(model.part()),
                        keys(key("make-part", model::billPart, "act"), key("part-all", model::allThatWasDone)));
        return box;
    }
}
