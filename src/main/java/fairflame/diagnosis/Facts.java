package fairflame.diagnosis;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A case file as rules see it: readings by check in an order of their own, with their tags and what is doubted. */
final class Facts {
    /** More readings of one check than a visit ever needs; it bounds the pairings a rule has to try. */
    static final int MOST_OF_ONE_CHECK = 12;

    /** Stands for whatever is read off the data plate. */
    static final CheckRef DATA_PLATE = CheckRef.of("data-plate");

    /** Stands for the layout of the gas line, from which the computed drop comes. */
    static final CheckRef PIPE_LAYOUT = CheckRef.of("pipe-layout");

    private static final Comparator<Reading> ORDER = Comparator.comparing((Reading reading) -> reading.check())
            .thenComparing(reading -> reading.value().toString())
            .thenComparing(reading -> String.join(",", new TreeSet<>(reading.conditions())))
            .thenComparing(Reading::instrument)
            .thenComparing(Reading::seen)
            .thenComparing(Reading::note);

    private final CaseFile file;
    private final Vocabulary vocabulary;
    private final Map<String, List<Reading>> byCheck = new TreeMap<>();
    /** Worked out once, by the very reading: every rule asks for them, and they do not change. */
    private final IdentityHashMap<Reading, Set<String>> tags = new IdentityHashMap<>();

    private final Map<Trust, Map<CheckRef, List<Reading>>> meant = new EnumMap<>(Trust.class);
    private final Set<Reading> doubted;
    private final boolean allSound;

    private Facts(CaseFile file, Vocabulary vocabulary, Set<Reading> doubted) {
        this.file = file;
        this.vocabulary = vocabulary;
        this.doubted = Set.copyOf(doubted);
        new LinkedHashSet<>(file.readings()).stream().sorted(ORDER).forEach(reading -> {
            byCheck.computeIfAbsent(reading.check(), check -> new ArrayList<>()).add(reading);
            tags.put(reading, tagsOf(reading));
        });
        for (var trust : Trust.values()) {
            meant.put(trust, new HashMap<>());
        }
        this.allSound = tags.keySet().stream().allMatch(this::sound);
    }

    /** The facts of a case file whose every word is known; refuses it otherwise. */
    static Facts of(CaseFile file, Vocabulary vocabulary) {
        file.readings().forEach(vocabulary::admit);
        vocabulary.complaint(file.complaint());
        var facts = new Facts(file, vocabulary, Set.of());
        facts.byCheck.forEach((check, readings) -> {
            if (readings.size() > MOST_OF_ONE_CHECK) {
                throw Refusal.outOfRange("readings of " + check, readings.size(), "up to " + MOST_OF_ONE_CHECK);
            }
        });
        return facts;
    }

    Facts doubting(Collection<Reading> readings) {
        return new Facts(file, vocabulary, new HashSet<>(readings));
    }

    CaseFile file() {
        return file;
    }

    RatingPlate plate() {
        return file.plate();
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    /** All readings in canonical order. */
    List<Reading> readings() {
        return byCheck.values().stream().flatMap(List::stream).toList();
    }

    /** Seen by the person at the heater, and not doubted. */
    boolean sound(Reading reading) {
        return !doubted.contains(reading)
                && (reading.seen() || vocabulary.check(reading.check()).told());
    }

    /** Whether every reading is sound, so that {@link Trust#ANY} finds no more than {@link Trust#SOUND}. */
    boolean allSound() {
        return allSound;
    }

    boolean doubted(Reading reading) {
        return doubted.contains(reading);
    }

    /** The readings that a reference means, without those that were not measured. */
    List<Reading> matching(CheckRef ref, Trust trust) {
        return Objects.requireNonNull(meant.get(trust)).computeIfAbsent(ref, any -> matches(ref, trust));
    }

    private List<Reading> matches(CheckRef ref, Trust trust) {
        return byCheck.getOrDefault(ref.check(), List.of()).stream()
                .filter(reading -> !(reading.value() instanceof Value.NotMeasured))
                .filter(reading -> ref.tags().isEmpty()
                        || tags.getOrDefault(reading, Set.of()).containsAll(ref.tags()))
                .filter(reading -> trust == Trust.ANY || sound(reading))
                .toList();
    }

    boolean measured(CheckRef ref, Trust trust) {
        return !matching(ref, trust).isEmpty();
    }

    /** Whether somebody has dealt with a check, if only by saying that it was not measured. */
    boolean answered(String check) {
        return byCheck.containsKey(check);
    }

    /** The first reading of a check as a number. */
    Optional<Amount> first(String check) {
        return matching(CheckRef.of(check), Trust.ANY).stream()
                .map(Facts::amount)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Set<String> tagsOf(Reading reading) {
        var tags = new HashSet<>(reading.conditions());
        tags.add(reading.seen() ? "seen" : "told");
        if (!reading.instrument().isEmpty()) {
            tags.add(reading.instrument());
            tags.addAll(vocabulary.speedTags(reading.instrument()));
        }
        return tags;
    }

    static Optional<Amount> amount(Reading reading) {
        if (reading.value() instanceof Value.Measured measured) {
            return Optional.of(Amount.of(measured.measure()));
        }
        return reading.value() instanceof Value.OpenLine ? Optional.of(Amount.open()) : Optional.empty();
    }

    /** Whether doubted and merely told readings count. */
    enum Trust {
        ANY,
        SOUND
    }
}
