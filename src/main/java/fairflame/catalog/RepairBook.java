package fairflame.catalog;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the shop mends what is found: the remedies with their conditions, and the tables that tasks refer to.
 *
 * @param version name and date of this state of the book
 * @param tests tests after the repair, in the order in which they are done
 * @param fittings role stem of a fitting by the word of the sizing layout: {@code tee-run} is bought as {@code tee}
 */
public record RepairBook(
        String version,
        List<Remedy> remedies,
        List<PairRule> pairs,
        List<Fact> facts,
        List<AfterTest> tests,
        List<Warranty> warranties,
        List<JointKind> joints,
        Map<String, String> fittings) {
    /** A book without an entry. */
    public static final RepairBook EMPTY =
            new RepairBook("", List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Map.of());

    /**
     * Facts that the program works out by itself, with what they say. A condition may also name
     * {@code device:high-limit-switch} (the finding names the device), {@code cause:LD01} (the cause is settled) and
     * {@code material:csst} (the sized line is of it).
     */
    public static final Map<String, String> WORKED_OUT = Map.ofEntries(
            Map.entry("pair-by-rule", "both parts of the pair are damaged, or one is damaged and the other damp"),
            Map.entry("pair-recommended", "the other part of the pair is old, of the same batch or not proved good"),
            Map.entry("single-allowed", "the other part of the pair is proved dry and good and the water is stopped"),
            Map.entry("switch-dry", "both switches of the pair measure dry to their bodies"),
            Map.entry("pipe-sized", "the new gas line has a sizing record"),
            Map.entry("cause-named", "what caused the damage is settled or named in a licensed release"),
            Map.entry("released", "a licensed person has released the danger in writing"),
            Map.entry("technician-opens-taps", "the place lets a technician open a gas test tap"),
            Map.entry("bypassed", "a test lead was placed across a safety switch on this visit"),
            Map.entry("buried-runs", "part of the new gas line lies underground"),
            Map.entry("open-runs", "part of the new gas line lies in the open"));

    public RepairBook {
        remedies = List.copyOf(remedies);
        pairs = List.copyOf(pairs);
        facts = List.copyOf(facts);
        tests = List.copyOf(tests);
        warranties = List.copyOf(warranties);
        joints = List.copyOf(joints);
        fittings = Map.copyOf(fittings);
    }

    public Optional<Remedy> remedy(String cause) {
        return remedies.stream().filter(remedy -> remedy.cause().equals(cause)).findFirst();
    }

    /** The rule of the pair that a task renews. */
    public Optional<PairRule> pairOf(String task) {
        return pairs.stream().filter(pair -> pair.task().equals(task)).findFirst();
    }

    public Optional<Warranty> warranty(String key) {
        return warranties.stream().filter(text -> text.key().equals(key)).findFirst();
    }

    /** What a fact says, in words; its id when nobody has described it. */
    public String wordsOf(String fact) {
        return facts.stream()
                .filter(known -> known.id().equals(fact))
                .map(Fact::words)
                .findFirst()
                .orElseGet(() -> WORKED_OUT.getOrDefault(fact, fact));
    }
}
