package fairflame.diagnosis;

import fairflame.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the trade knows about heaters that will not stay lit, read from files and validated. Immutable; rows keep the
 * order of their files.
 */
public final class Knowledge {
    private static final String FOLDER = "/fairflame/knowledge/";

    /** The shipped files. A list, because a class path has no folder that could be listed everywhere. */
    static final List<String> SHIPPED = List.of(
            "sources.csv",
            "instruments.csv",
            "circumstances.csv",
            "complaints.csv",
            "checks.csv",
            "gates.yaml",
            "causes-drops-out.yaml",
            "causes-no-try.yaml",
            "causes-no-flame.yaml",
            "causes-trips.yaml",
            "causes-weak-heat.yaml",
            "causes-lockout.yaml",
            "causes-soot.yaml",
            "causes-leak.yaml",
            "contradictions.yaml",
            "doubts.yaml",
            "verdicts.yaml",
            "es/texts.yaml");

    private final Vocabulary vocabulary;
    private final Rulebook rulebook;
    private final Map<String, Source> sources;

    Knowledge(Vocabulary vocabulary, Rulebook rulebook, Map<String, Source> sources) {
        this.vocabulary = vocabulary;
        this.rulebook = rulebook;
        this.sources = sources;
    }

    /**
     * Reads knowledge from texts by file name, such as {@code causes-drops-out.yaml}. The first row that cannot be read
     * is refused, naming file, row and field.
     */
    public static Knowledge parse(Map<String, String> files) {
        return parse(files, Wording.ENGLISH);
    }

    /** The same with everything that a customer reads in the language of a wording; what it proves is the same. */
    public static Knowledge parse(Map<String, String> files, Wording wording) {
        return new KnowledgeReader(whole(files, wording)).read();
    }

    /** Every text of the files that a customer may come to read, each once. */
    public static List<String> spoken(Map<String, String> files) {
        return whole(files, Wording.ENGLISH).spoken();
    }

    private static KnowledgeFiles whole(Map<String, String> files, Wording wording) {
        return new KnowledgeFiles(files, wording, refusal -> {
            throw refusal;
        });
    }

    /** The knowledge that travels inside the program. */
    public static Knowledge shipped() {
        return parse(shippedFiles());
    }

    /** The shipped texts by file name: a start for a shop's own folder. Reads the class path, the one exception here. */
    public static Map<String, String> shippedFiles() {
        var files = new LinkedHashMap<String, String>();
        for (var name : SHIPPED) {
            try (var stream = Knowledge.class.getResourceAsStream(FOLDER + name)) {
                if (stream == null) {
                    throw new IllegalStateException("not on the class path: " + FOLDER + name);
                }
                files.put(name, new String(stream.readAllBytes(), StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new IllegalStateException("could not read " + FOLDER + name, e);
            }
        }
        return files;
    }

    public Collection<Complaint> complaints() {
        return List.copyOf(vocabulary.complaints().values());
    }

    public Complaint complaint(String id) {
        return vocabulary.complaint(id);
    }

    public Collection<Check> checks() {
        return List.copyOf(vocabulary.checks().values());
    }

    /** The check with this id; refused when there is none. */
    public Check check(String id) {
        return vocabulary.check(id);
    }

    public Collection<Instrument> instruments() {
        return List.copyOf(vocabulary.instruments().values());
    }

    public Instrument instrument(String id) {
        return vocabulary.instrument(id);
    }

    public Collection<Circumstance> circumstances() {
        return List.copyOf(vocabulary.circumstances().values());
    }

    /**
     * The circumstances under which a reading of a check means something else to some rule. One that belongs to a group
     * counts for all readings of the same kind, because they are compared with each other.
     */
    public List<Circumstance> circumstances(String check) {
        var used = new UsedChecks(this);
        var answer = check(check).answer();
        var alike = checks().stream()
                .filter(other -> other.answer().comparable(answer))
                .flatMap(other -> used.tags(other.id()).stream())
                .collect(Collectors.toSet());
        return vocabulary.circumstances().values().stream()
                .filter(each ->
                        used.tags(check).contains(each.id()) || (!each.group().isEmpty() && alike.contains(each.id())))
                .toList();
    }

    /** Danger gates in the order they are asked. */
    public Collection<Gate> gates() {
        return List.copyOf(rulebook.gates().values());
    }

    public Collection<Cause> causes() {
        return List.copyOf(rulebook.causes().values());
    }

    public Optional<Cause> cause(String id) {
        return Optional.ofNullable(rulebook.causes().get(id));
    }

    public Collection<Source> sources() {
        return List.copyOf(sources.values());
    }

    public Optional<Source> source(String key) {
        return Optional.ofNullable(sources.get(key));
    }

    /** Causes that can explain a complaint. */
    public List<Cause> causesOf(String complaint) {
        return causes().stream()
                .filter(cause -> cause.complaints().contains(complaint))
                .toList();
    }

    /**
     * A reading from typed text; refuses an unknown check, instrument or condition and an impossible value.
     *
     * @param instrument id of the instrument kind; empty for none
     */
    public Reading reading(String check, String text, String instrument, Set<String> conditions) {
        var reading = new Reading(check, check(check).read(text), instrument, conditions, true, "");
        vocabulary.admit(reading);
        return reading;
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    Rulebook rulebook() {
        return rulebook;
    }

    /** Refuses a case file with words that this knowledge does not have, or with a bridge that is never allowed. */
    public void admit(CaseFile file) {
        vocabulary.complaint(file.complaint());
        file.readings().forEach(vocabulary::admit);
        file.gates().keySet().forEach(vocabulary::gate);
        file.releases().forEach(release -> vocabulary.gate(release.gate()));
        file.leads().forEach(lead -> BypassTally.admit(lead.device()));
    }
}
