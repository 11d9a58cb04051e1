package fairflame.document;

import fairflame.quote.Choice;
import fairflame.quote.Note;
import fairflame.quote.Quote;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The notes of a quote and its choices, each printed once, with the choices that it belongs to. */
final class PrintedNotes {
    /** Printed beside the signature and nowhere else. */
    static final String CANCEL = "N-CANCEL";

    private final Map<Key, List<String>> choices = new LinkedHashMap<>();
    private final Quote quote;
    private final PaperText text;
    private final ChoiceNames names;

    private record Key(String rule, String words, boolean boxed) {
        static Key of(Note note) {
            return new Key(note.rule(), note.text(), note.boxed());
        }
    }

    PrintedNotes(Quote quote, PaperText text) {
        this.quote = quote;
        this.text = text;
        this.names = new ChoiceNames(quote, text);
        quote.notes().forEach(note -> choices.put(Key.of(note), List.of()));
        for (var choice : quote.choices()) {
            choice.notes().forEach(note -> choices.merge(Key.of(note), List.of(choice.id()), PrintedNotes::and));
        }
    }

    // No choice named means the whole quote; that stays so whatever a choice adds.
    private static List<String> and(List<String> before, List<String> more) {
        if (before.isEmpty()) {
            return before;
        }
        var all = new ArrayList<>(before);
        all.addAll(more);
        return List.copyOf(all);
    }

    /** Notes on permits and licensed work. */
    List<String> boxed() {
        return sentences(key -> key.boxed() && !key.rule().equals(CANCEL));
    }

    List<String> cautions() {
        return sentences(key -> !key.boxed() && !key.rule().equals(CANCEL));
    }

    List<String> cancel() {
        return sentences(key -> key.rule().equals(CANCEL));
    }

    /** Whether a notice on permits or licensed work stands over this choice. */
    boolean boxed(Choice choice) {
        return choices.entrySet().stream()
                .filter(entry -> entry.getKey().boxed())
                .anyMatch(
                        entry -> entry.getValue().isEmpty() || entry.getValue().contains(choice.id()));
    }

    private List<String> sentences(Predicate<Key> which) {
        return choices.entrySet().stream()
                .filter(entry -> which.test(entry.getKey()))
                .map(entry -> limited(entry.getValue()) + entry.getKey().words())
                .toList();
    }

    private String limited(List<String> ids) {
        if (ids.isEmpty() || ids.size() == quote.choices().size()) {
            return "";
        }
        var named = ids.stream().map(names::of).collect(Collectors.joining(", "));
        return text.say(Label.NOTICE_ONLY, named) + " ";
    }
}
