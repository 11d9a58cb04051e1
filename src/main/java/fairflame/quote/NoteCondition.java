package fairflame.quote;

import com.fasterxml.jackson.annotation.JsonCreator;
import fairflame.Refusal;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.Trade;
import java.util.Optional;

/** One condition under which a note prints. Its spellings are listed in {@link #ALLOWED}. */
public record NoteCondition(String word, String argument) {
    private static final String ALLOWED = "always, repair, diagnosis-only, regulated-gas, asked, cancel-right, "
            + "unknown-place, permit yes, permit ask, trade G, test A, task R18, access AX-DRAIN";

    public NoteCondition {
        var known = switch (word) {
            case "always", "repair", "diagnosis-only", "regulated-gas", "asked", "cancel-right", "unknown-place" ->
                argument.isEmpty();
            case "permit" -> argument.equals("yes") || argument.equals("ask");
            case "trade", "test", "task", "access" -> !argument.isEmpty();
            default -> false;
        };
        if (!known) {
            throw Refusal.unknown("note condition", (word + " " + argument).strip(), ALLOWED);
        }
        if (word.equals("trade")) {
            Trade.parse(argument);
        }
    }

    /** Reads text such as {@code always} or {@code trade G}. */
    @JsonCreator
    public static NoteCondition parse(String text) {
        var parts = text.strip().split("\\s+", 2);
        return new NoteCondition(parts[0], parts.length > 1 ? parts[1] : "");
    }

    /** Why it holds; empty when it does not. */
    Optional<String> because(String note, NoteFacts facts) {
        return switch (word) {
            case "always" -> Optional.of("stands on every quote");
            case "repair" -> when(facts.repair(), "stands on every repair");
            case "diagnosis-only" -> when(!facts.repair(), "no repair is priced");
            case "regulated-gas" -> when(facts.duties().regulatedGas(), facts.gasWork());
            case "asked" -> facts.askedBy(note);
            case "cancel-right" -> when(facts.cancelRight(), "right to cancel in " + facts.placeName());
            case "unknown-place" -> when(facts.placeUnknown(), "rules of this place were not checked");
            case "permit" -> when(facts.duties().permit() == need(), "permit: " + argument + ", " + facts.placeName());
            case "trade" -> when(facts.trades().contains(Trade.parse(argument)), "needs trade " + argument);
            case "test" -> when(facts.tests().contains(argument), "test " + argument + " after the repair");
            case "task" -> when(facts.tasks().contains(argument), "task " + argument);
            case "access" -> when(facts.access().contains(argument), "step " + argument);
            default -> throw new IllegalStateException(word);
        };
    }

    private PermitNeed need() {
        return argument.equals("yes") ? PermitNeed.YES : PermitNeed.ASK;
    }

    private static Optional<String> when(boolean holds, String because) {
        return holds ? Optional.of(because) : Optional.empty();
    }
}
