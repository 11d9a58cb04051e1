package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.PermitNeed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The notes a shop can print, read from {@code templates/notes.yaml}. Work on gas always prints the notes of the
 * licensed gas fitter, of the permit and of the gas test in the box: the program asks for them by name, whatever the
 * file or the place leaves out.
 */
public record NoteBook(List<NoteRule> notes) {
    static final String GAS_FITTER = "N-GASFIT";
    static final String PERMIT = "N-PERMIT";
    static final String GAS_TEST = "N-TEST";

    public NoteBook {
        notes = List.copyOf(notes);
        var seen = new HashSet<String>();
        for (var note : notes) {
            if (!seen.add(note.id())) {
                throw Refusal.notAllowed("note", note.id(), "each id once");
            }
        }
    }

    /** Reads the text of the file. */
    public static NoteBook parse(String yaml) {
        return TemplateText.read("notes.yaml", yaml, NoteBook.class);
    }

    /**
     * The notes of one choice, those of permits and licensed work first, else in the order of the file.
     *
     * @param words what stands for the words in braces
     */
    List<Note> of(NoteFacts facts, Map<String, String> words) {
        var printed = new ArrayList<Note>();
        for (var rule : notes) {
            var must = mustPrint(rule.id(), facts);
            var because = must ? facts.gasWork() : because(rule, facts);
            if (!because.isEmpty()) {
                var text = facts.place().notes().getOrDefault(rule.id(), "");
                text = text.isBlank() ? rule.text() : text;
                printed.add(new Note(rule.id(), TemplateText.fill(text, words), must || rule.boxed(), because));
            }
        }
        placeNotes(facts, words, printed);
        refuseIfMissing(facts, printed);
        printed.sort(Comparator.comparing(note -> !note.boxed()));
        return printed;
    }

    /** A note that a task or the choice names prints whatever its own conditions say. */
    private static String because(NoteRule rule, NoteFacts facts) {
        return rule.because(facts).or(() -> facts.askedBy(rule.id())).orElse("");
    }

    private static boolean mustPrint(String id, NoteFacts facts) {
        return mustPrint(facts).contains(id);
    }

    private static List<String> mustPrint(NoteFacts facts) {
        if (!facts.duties().regulatedGas()) {
            return List.of();
        }
        return facts.duties().permit() == PermitNeed.NO
                ? List.of(GAS_FITTER, GAS_TEST)
                : List.of(GAS_FITTER, PERMIT, GAS_TEST);
    }

    /** Notes that only the place knows print on every quote there. */
    private void placeNotes(NoteFacts facts, Map<String, String> words, List<Note> printed) {
        var known = notes.stream().map(NoteRule::id).collect(Collectors.toSet());
        new TreeMap<>(facts.place().notes()).forEach((id, text) -> {
            if (!known.contains(id)) {
                printed.add(new Note(id, TemplateText.fill(text, words), false, "rule of " + facts.placeName()));
            }
        });
    }

    private void refuseIfMissing(NoteFacts facts, List<Note> printed) {
        var must = new TreeSet<>(facts.allAsked());
        must.addAll(mustPrint(facts));
        printed.forEach(note -> must.remove(note.rule()));
        if (!must.isEmpty()) {
            throw Refusal.unknown(
                    "note that has to print",
                    String.join(", ", must),
                    "the notes of notes.yaml: "
                            + notes.stream().map(NoteRule::id).collect(Collectors.joining(", ")));
        }
    }
}
