package fairflame.repair;

import fairflame.catalog.Fact;
import fairflame.catalog.PairRule;
import fairflame.catalog.Remedy;
import fairflame.catalog.Shop;
import fairflame.diagnosis.Answer;
import fairflame.diagnosis.Cause;
import fairflame.diagnosis.Check;
import fairflame.diagnosis.Knowledge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Holds a shop's repair book against the knowledge: a cause that can be settled needs a remedy, and what the book asks
 * of readings has to be something that a check can answer.
 */
public final class BookCheck {
    private final Knowledge knowledge;
    private final Shop shop;
    private final List<String> problems = new ArrayList<>();

    private BookCheck(Knowledge knowledge, Shop shop) {
        this.knowledge = knowledge;
        this.shop = shop;
    }

    /** Everything that does not fit, a sentence each; empty when book and knowledge belong together. */
    public static List<String> problems(Knowledge knowledge, Shop shop) {
        var check = new BookCheck(knowledge, shop);
        knowledge.causes().forEach(check::check);
        shop.book().remedies().forEach(check::check);
        shop.book().facts().forEach(check::check);
        shop.book().pairs().forEach(check::check);
        return List.copyOf(check.problems);
    }

    private void check(Cause cause) {
        var remedy = shop.book().remedy(cause.id());
        if (remedy.isEmpty()) {
            problems.add("cause " + cause.id() + " (" + cause.title() + ") has no remedy in scopes.yaml");
            return;
        }
        var offered = remedy.get().ways().stream()
                .flatMap(way -> way.tasks().stream())
                .map(step -> step.task())
                .toList();
        if (cause.repairs().isEmpty() != offered.isEmpty()) {
            problems.add("cause " + cause.id() + " names " + named(cause.repairs()) + ", its remedy offers "
                    + named(offered));
        } else if (!cause.repairs().isEmpty() && cause.repairs().stream().noneMatch(offered::contains)) {
            problems.add("cause " + cause.id() + " names " + named(cause.repairs()) + ", but its remedy offers only "
                    + named(offered));
        }
    }

    private static String named(List<String> tasks) {
        return tasks.isEmpty()
                ? "no repair"
                : String.join(", ", tasks.stream().distinct().toList());
    }

    private void check(Remedy remedy) {
        if (knowledge.cause(remedy.cause()).isEmpty()) {
            problems.add("the remedy for " + remedy.cause() + " belongs to no cause of the knowledge");
        }
        var conditions = remedy.ways().stream()
                .flatMap(way ->
                        Stream.concat(way.when().stream(), way.tasks().stream().flatMap(step -> step.when().stream())));
        conditions
                .map(condition -> condition.replaceFirst("^not ", ""))
                .filter(condition -> condition.startsWith("cause:"))
                .map(condition -> condition.substring("cause:".length()))
                .filter(cause -> knowledge.cause(cause).isEmpty())
                .distinct()
                .forEach(cause -> problems.add(
                        "the remedy for " + remedy.cause() + " asks for cause " + cause + ", which is not there"));
    }

    private void check(Fact fact) {
        if (fact.check().isEmpty()) {
            return;
        }
        var check = find(fact.check(), "fact " + fact.id());
        for (var word : fact.readings()) {
            if (check.filter(asked -> !answers(asked, word)).isPresent()) {
                problems.add("fact " + fact.id() + " waits for '" + word + "', which check " + fact.check()
                        + " cannot answer");
            }
        }
    }

    private static boolean answers(Check check, String word) {
        return check.answer() instanceof Answer.Words words && words.words().contains(word);
    }

    private void check(PairRule pair) {
        var figures = Stream.concat(
                pair.age().checks().stream(),
                pair.members().stream()
                        .flatMap(member ->
                                Stream.concat(member.leakChecks().stream(), member.contactChecks().stream())));
        Predicate<Check> aFigure = asked -> asked.answer() instanceof Answer.Figure;
        figures.forEach(id -> {
            if (find(id, "pair " + pair.id()).filter(aFigure.negate()).isPresent()) {
                problems.add("pair " + pair.id() + " needs a figure from check " + id + ", which answers in words");
            }
        });
    }

    private Optional<Check> find(String id, String asker) {
        var check = knowledge.checks().stream()
                .filter(known -> known.id().equals(id))
                .findFirst();
        if (check.isEmpty()) {
            problems.add(asker + " asks for check " + id + ", which is not there");
        }
        return check;
    }
}
