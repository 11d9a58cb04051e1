package fairflame.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The danger gates of one case: which are open, which were never asked. */
final class Dangers {
    private final Facts facts;
    private final List<Gate> gates;

    Dangers(Knowledge knowledge, Facts facts) {
        this.facts = facts;
        this.gates = List.copyOf(knowledge.gates());
    }

    /** Every gate that is open and not released. A reading opens a gate even when the answer was no. */
    List<Finding.Danger> open() {
        var found = new ArrayList<Finding.Danger>();
        for (var gate : gates) {
            if (!released(gate)) {
                reason(gate)
                        .ifPresent(words -> found.add(
                                new Finding.Danger(gate.id(), gate.title(), words, gate.advice(), gate.source())));
            }
        }
        return found;
    }

    /** Gates that must be asked and were not. "Not asked" is not "no". */
    List<Gate> unanswered() {
        return gates.stream()
                .filter(Gate::asked)
                .filter(gate -> !facts.file().gates().containsKey(gate.id()))
                .filter(gate -> !released(gate))
                .toList();
    }

    private boolean released(Gate gate) {
        return facts.file().releases().stream()
                .anyMatch(release -> release.gate().equals(gate.id()));
    }

    private Optional<String> reason(Gate gate) {
        var said = gate.triggers().stream()
                .map(this::said)
                .flatMap(Optional::stream)
                .distinct()
                .collect(Collectors.joining(" "));
        if (!said.isEmpty()) {
            return Optional.of(said);
        }
        return facts.file().gates().get(gate.id()) == GateAnswer.YES
                ? Optional.of("Answered yes: " + gate.question())
                : Optional.empty();
    }

    // Doubted and merely told readings open a gate as well: a danger needs no proof.
    private Optional<String> said(Gate.Trigger trigger) {
        var refs = new java.util.TreeSet<CheckRef>(trigger.found().refs());
        trigger.when().forEach(condition -> refs.addAll(condition.refs()));
        return Binding.all(facts, refs, Facts.Trust.ANY).stream()
                .filter(binding -> trigger.when().stream().allMatch(condition -> condition.holds(binding)))
                .findFirst()
                .map(trigger.found()::in);
    }
}
