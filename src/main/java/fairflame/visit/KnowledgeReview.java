package fairflame.visit;

import fairflame.catalog.Task;
import fairflame.diagnosis.KnowledgeCheck;
import fairflame.repair.BookCheck;
import fairflame.wording.Language;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a whole library lacks or contradicts.
 *
 * @param checks how many the knowledge has
 * @param causes how many the knowledge has
 * @param repairs tasks that the shop has
 * @param problems a sentence each; none when all holds together
 * @param withoutSpanish texts of knowledge, catalog and templates that a customer who reads Spanish would read in English;
 *     no problem for a shop without such customers
 */
public record KnowledgeReview(int checks, int causes, int repairs, List<String> problems, List<String> withoutSpanish) {
    public KnowledgeReview {
        problems = List.copyOf(problems);
        withoutSpanish = List.copyOf(withoutSpanish);
    }

    /** Reviews the knowledge by itself, then held against the shop's repair book. */
    public static KnowledgeReview of(Library library) {
        var shop = library.shop();
        var tasks = shop.tasks().stream().map(Task::id).collect(Collectors.toSet());
        var problems = new ArrayList<String>();
        KnowledgeCheck.problems(library.knowledge(), tasks).forEach(problem -> problems.add(problem.toString()));
        problems.addAll(BookCheck.problems(library.knowledge(), shop));
        return new KnowledgeReview(
                library.knowledge().checks().size(),
                library.knowledge().causes().size(),
                shop.tasks().size(),
                problems,
                TranslationReview.missing(library, Language.SPANISH));
    }
}
