package fairflame.screen.file;

import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;

/** Who did the gas work under which licence, and the pressure test of new piping. */
final class GasCard extends Card {
    GasCard(PermitModel model, String licence, Words words) {
        super(words, words.say("file.gas"));
        add(Texts.words(words.say("file.gas-who", licence), "slate"));
        add(new Columns(
                LEAST * 1.3,
                12,
                List.of(
                        slip(model.gas(), "gas-fitter"),
                        slip(model.gas(), "gas-licence"),
                        slip(model.gas(), "gas-ends").prompt("2027-01-31"),
                        slip(model.gas(), "gas-on").prompt("2026-03-20"))));
        if (model.tested()) {
            add(Texts.words(words.say("file.gas-test"), "semi"));
            add(new Columns(
                    LEAST,
                    12,
                    List.of(
                            slip(model.gas(), "gas-psi"),
                            slip(model.gas(), "gas-minutes"),
                            slip(model.gas(), "gas-gauge"),
                            slip(model.gas(), "gas-witness"))));
            add(one("gas-medium", "medium.", PermitModel.MEDIA, model.medium()));
            add(keys(toggle("gas-held", words.say("complete.held"), model.held())));
        }
        add(whole(model.gas()), keys(key("gas-keep", model::keepGas, "act")));
    }
}
