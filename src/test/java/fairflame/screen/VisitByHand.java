package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.diagnosis.Answer;
import fairflame.screen.bench.Draft;
import java.util.List;
import org.joda.money.Money;

/** Types a visit into the window from nothing: what a draft holds is pressed and typed as a technician would. */
final class VisitByHand {
    private static final List<String> PLATE = List.of(
            "description",
            "input",
            "inletMinimum",
            "inletMaximum",
            "manifold",
            "flameMinimum",
            "riseMaximum",
            "efficiency",
            "ageYears");

    private final Hand hand;
    private final Draft wanted;

    /** A person who has this visit on a slip of paper. */
    VisitByHand(Hand hand, Draft wanted) {
        this.hand = hand;
        this.wanted = wanted;
    }

    /** Begins an empty visit and gives its number. */
    String begin() {
        hand.press("new-visit");
        return hand.model().bench().get().orElseThrow().draft().get("id");
    }

    void who() {
        for (var field : List.of("customer.name", "customer.address", "customer.phone", "customer.email")) {
            if (wanted.has(field)) {
                hand.type(field, wanted.get(field));
            }
        }
        hand.press("place-" + wanted.get("jurisdiction"));
    }

    void complaint() {
        hand.press("step-complaint").press("complaint-" + wanted.get("complaint"));
    }

    void plate() {
        hand.press("step-plate");
        for (var name : PLATE) {
            if (wanted.has("heater." + name)) {
                hand.type("heater." + name, wanted.get("heater." + name));
            }
        }
    }

    /** Answers the danger questions as the slip says, those that are "no" first. */
    void gates() {
        hand.press("step-gates");
        for (var answer : List.of("no", "yes")) {
            for (int gate = 1; gate <= 9; gate++) {
                if (wanted.get("gate.G" + gate).equals(answer)) {
                    hand.press("gate-G" + gate + "-" + answer);
                }
            }
        }
    }

    void readings() {
        for (var number : wanted.numbers("reading")) {
            reading("reading." + number + ".");
        }
    }

    private void reading(String entry) {
        var bench = hand.model().bench().get().orElseThrow();
        var check = bench.work().knowledge().check(wanted.get(entry + "check"));
        var again = !bench.readings(check.id()).isEmpty();
        hand.press("step-more").press("more-" + check.id());
        if (again) {
            hand.press("again");
        }
        var value = wanted.get(entry + "value");
        if (check.answer() instanceof Answer.Words) {
            hand.press("word-" + value);
        } else if (value.equals("open")) {
            hand.press("open-line");
        } else {
            hand.type("typed", value);
            var unit = "unit-" + wanted.get(entry + "value.unit").replaceAll("[^a-z0-9]", "-");
            if (!wanted.get(entry + "value.unit").isEmpty() && hand.has(unit)) {
                hand.press(unit);
            }
        }
        if (wanted.has(entry + "instrument") && check.instruments().size() > 1) {
            hand.press("instrument-" + wanted.get(entry + "instrument"));
        }
        for (var condition : wanted.get(entry + "conditions").split(",")) {
            if (!condition.isBlank()) {
                if (!hand.has("condition-" + condition)) {
                    hand.press("condition-more");
                }
                hand.press("condition-" + condition);
            }
        }
        if (wanted.get(entry + "told").equals("yes")) {
            hand.press("condition-told");
        }
    }

    /** The terms of the repair and of the decision that the slip holds. */
    void terms() {
        typed("step-terms", "repair.");
        typed("step-decide", "decision.");
    }

    private void typed(String step, String start) {
        var fields = wanted.fields().keySet().stream()
                .filter(field -> field.startsWith(start) && !field.endsWith(".unit"))
                .toList();
        if (!fields.isEmpty()) {
            hand.press(step);
            fields.forEach(field -> hand.type(field, wanted.get(field)));
        }
    }

    /**
     * Takes the suggested choice on the customer's page, accepts what has to be, signs with a drawn stroke.
     *
     * @return the total of the choice as the quote told it before the signature
     */
    Money sign(String what) {
        hand.press("hand-over").look(what + "-handover");
        assertThat(hand.has("line-story"))
                .as("the gas line before and after is told where one was drawn")
                .isEqualTo(wanted.has("layout"));
        var quote = hand.model()
                .bench()
                .get()
                .orElseThrow()
                .judged()
                .get()
                .orElseThrow()
                .quote();
        var suggested = quote.orElseThrow().choices().stream()
                .filter(choice -> choice.suggested() || quote.get().choices().size() == 1)
                .findFirst()
                .orElseThrow();
        hand.press("take-" + suggested.id());
        ids("promise-").forEach(hand::press);
        hand.type("signer", wanted.get("customer.name")).draw("signature-pad").press("sign");
        hand.look(what + "-signed");
        return suggested.totals().total();
    }

    /** Back to the bench with the technician's digits. */
    void unlock() {
        hand.press("handover-back").type("pin", "2468").press("pin-open");
    }

    /** Ids of the keys to be seen that begin so, in the order of the alphabet. */
    List<String> ids(String start) {
        return Toolkit.on(() -> hand.scene().getRoot().lookupAll(".toggle-button").stream()
                .map(node -> node.getId())
                .filter(id -> id != null && id.startsWith(start))
                .distinct()
                .sorted()
                .toList());
    }
}
