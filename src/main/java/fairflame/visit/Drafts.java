package fairflame.visit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Visits that are still being taken down, kept keystroke by keystroke, and what a window wants to remember. */
public final class Drafts {
    private static final Pattern NUMBER = Pattern.compile("V-(\\d{4})-(\\d{4,6})");

    private final Workplace workplace;

    public Drafts(Workplace workplace) {
        this.workplace = workplace;
    }

    /** A draft as it was last kept. */
    public record Kept(String visit, String text) {}

    /** Saves a draft; when this returns it outlives the process. */
    public void keep(String visit, String text) {
        workplace.store().change(workplace.by(), records -> records.visits().saveDraft(visit, text));
    }

    public Optional<String> find(String visit) {
        return workplace
                .store()
                .reading(records -> records.visits().draft(visit).map(draft -> draft.text()));
    }

    public List<Kept> all() {
        return workplace
                .store()
                .reading(records -> records.visits().drafts().stream()
                        .map(draft -> new Kept(draft.visit(), draft.text()))
                        .toList());
    }

    /** The text of a stored visit. */
    public Optional<String> visit(String id) {
        return workplace.store().reading(records -> records.visits().find(id).map(stored -> stored.text()));
    }

    /** A number that no visit and no draft of this year has. */
    public String nextNumber() {
        var year = workplace.today().getYear();
        return workplace.store().reading(records -> {
            var highest = java.util.stream.Stream.concat(
                            records.visits().all().stream().map(visit -> visit.id()),
                            records.visits().drafts().stream().map(draft -> draft.visit()))
                    .map(NUMBER::matcher)
                    .filter(match -> match.matches() && Integer.parseInt(match.group(1)) == year)
                    .mapToInt(match -> Integer.parseInt(match.group(2)))
                    .max()
                    .orElse(0);
            return String.format("V-%d-%04d", year, highest + 1);
        });
    }

    public Optional<String> remembered(String name) {
        return workplace.store().reading(records -> records.settings().find("window." + name));
    }

    public void remember(String name, String content) {
        workplace.store().change(workplace.by(), records -> records.settings().put("window." + name, content));
    }
}
