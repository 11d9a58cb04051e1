package fairflame.screen.bench;

import fairflame.diagnosis.Check;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;

/** The readings of a check that was taken more than once: any of them can be opened again. */
final class SeveralReadings {
    private SeveralReadings() {}

    static Chips of(BenchModel model, Words words, Check check, int open) {
        var chips = new Chips();
        var place = 0;
        for (var number : model.readings(check.id())) {
            place++;
            chips.one(
                    "taken-" + place,
                    words.say("reading.taken", place, value(model.draft(), words, "reading." + number + ".value")),
                    number == open,
                    () -> model.show(check, number));
        }
        var away = Texts.button(words.say("reading.away"), () -> model.remove(check, open));
        away.setId("reading-away");
        chips.getChildren().add(away);
        return chips;
    }

    private static String value(Draft draft, Words words, String field) {
        return draft.has(field)
                ? (draft.get(field) + " " + draft.get(field + ".unit")).strip()
                : words.say("reading.none");
    }
}
