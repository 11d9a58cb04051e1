package fairflame.diagnosis;

import fairflame.diagnosis.ReadingVerdict.Verdict;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import fairflame.wording.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Judges each reading on its own. */
final class Judging {
    private final Knowledge knowledge;
    private final Facts facts;
    private final Doubts doubts;

    Judging(Knowledge knowledge, Facts facts, Doubts doubts) {
        this.knowledge = knowledge;
        this.facts = facts;
        this.doubts = doubts;
    }

    /** All readings in the usual order of work. */
    List<ReadingVerdict> all() {
        return facts.readings().stream()
                .sorted(Comparator.comparingInt(
                        reading -> knowledge.check(reading.check()).effort().step()))
                .map(this::judge)
                .toList();
    }

    private ReadingVerdict judge(Reading reading) {
        var check = knowledge.check(reading.check());
        var said = said(reading);
        var worst =
                said.stream().map(Said::verdict).max(Comparator.naturalOrder()).orElse(Verdict.INFORMATION);
        var loudest = said.stream().filter(each -> each.verdict() == worst).toList();
        var rule = knowledge.rulebook().verdicts().get(check.id());
        return new ReadingVerdict(
                reading,
                check.title(),
                worst,
                loudest.isEmpty()
                        ? List.of(check.title() + ": " + word(reading.value().toString()) + ".")
                        : loudest.stream().map(Said::words).toList(),
                Optional.ofNullable(rule).flatMap(VerdictRule::low).flatMap(end -> end(end, reading)),
                Optional.ofNullable(rule).flatMap(VerdictRule::high).flatMap(end -> end(end, reading)),
                loudest.stream().map(Said::source).toList());
    }

    private List<Said> said(Reading reading) {
        var check = knowledge.check(reading.check());
        var said = new ArrayList<Said>();
        var rule = knowledge.rulebook().verdicts().get(check.id());
        if (rule != null) {
            rule.marks().forEach(mark -> said(mark, reading).ifPresent(said::add));
        }
        if (said.isEmpty()) {
            word(check, reading).ifPresent(said::add);
        }
        if (said.isEmpty()) {
            check.remark(reading.value())
                    .map(words -> words.endsWith(".") ? words : words + ".")
                    .map(wording()::of)
                    .ifPresent(words -> said.add(new Said(Verdict.EDGE, words, check.source())));
        }
        doubts.about(reading).forEach(doubt -> said.add(new Said(Verdict.DOUBTED, doubt.words(), doubt.source())));
        if (reading.value() instanceof Value.NotMeasured) {
            said.add(new Said(
                    Verdict.DOUBTED,
                    wording().of(check.title() + " was not measured; that is no good reading."),
                    check.source()));
        }
        return said;
    }

    private Wording wording() {
        return knowledge.vocabulary().wording();
    }

    /** What a check gave, as a sentence takes it in. */
    private String word(String value) {
        return wording().of(value.replace('-', ' '));
    }

    private Optional<Said> word(Check check, Reading reading) {
        if (!(check.answer() instanceof Answer.Words words)
                || words.good().isEmpty()
                || !(reading.value() instanceof Value.Word said)) {
            return Optional.empty();
        }
        var verdict = words.good().contains(said.word()) ? Verdict.GOOD : Verdict.OUTSIDE;
        return Optional.of(new Said(verdict, check.title() + ": " + word(said.word()) + ".", check.source()));
    }

    private Optional<Said> said(VerdictRule.Mark mark, Reading reading) {
        var refs = new TreeSet<CheckRef>(mark.words().refs());
        mark.when().forEach(condition -> refs.addAll(condition.refs()));
        return Binding.about(facts, refs, reading).stream()
                .filter(binding -> mark.when().stream().allMatch(condition -> condition.holds(binding)))
                .findFirst()
                .map(binding -> new Said(mark.verdict(), mark.words().in(binding), mark.source()));
    }

    /** An end of the band in the unit of the reading, to two decimals. */
    private Optional<Measure> end(Term term, Reading reading) {
        var unit = reading.value() instanceof Value.Measured measured
                ? measured.measure().unit()
                : term.shown();
        return Binding.about(facts, term.refs(), reading).stream()
                .map(term::in)
                .flatMap(Optional::stream)
                .findFirst()
                .filter(amount -> Double.isFinite(amount.base()))
                .map(amount -> new Measure(BigDecimal.valueOf(amount.base()), Unit.baseOf(amount.dimension())))
                .map(base -> new Measure(BigDecimal.valueOf(base.in(unit)).setScale(2, RoundingMode.HALF_UP), unit));
    }

    private record Said(Verdict verdict, String words, String source) {}
}
