package fairflame.quote;

import fairflame.Refusal;
import fairflame.wording.Spoken;
import java.util.List;
import java.util.Set;

/**
 * Words for danger and for work that is not cleared, read from {@code templates/cautions.yaml}.
 *
 * @param notCleared sentences of an invoice whose work may not be called complete; {@code {reason}} is filled in
 */
public record Cautions(StopWork stopWork, @Spoken List<String> notCleared) {
    public Cautions {
        notCleared = List.copyOf(notCleared);
        notCleared.forEach(sentence -> TemplateText.check(sentence, Set.of("reason")));
    }

    /** Reads the text of the file. */
    public static Cautions parse(String yaml) {
        return TemplateText.read("cautions.yaml", yaml, Cautions.class);
    }

    /**
     * Words of the stop-work sheet.
     *
     * @param headline {@code {danger}} is filled in
     * @param receipt words beside the signature
     * @param always sentences on every sheet
     */
    public record StopWork(
            @Spoken String headline,
            @Spoken String receipt,
            @Spoken List<String> always,
            List<Advice> advice) {
        public StopWork {
            always = List.copyOf(always);
            advice = List.copyOf(advice);
            TemplateText.check(headline, Set.of("danger"));
            if (receipt.isBlank() || always.isEmpty()) {
                throw Refusal.missing("words of the stop-work sheet", "a receipt and at least one sentence");
            }
        }
    }

    /** What to do now when one of these gates is open. */
    public record Advice(Set<String> gates, @Spoken List<String> say, String source) {
        public Advice {
            gates = Set.copyOf(gates);
            say = List.copyOf(say);
        }
    }
}
