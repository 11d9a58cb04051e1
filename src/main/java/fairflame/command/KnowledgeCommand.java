package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.visit.KnowledgeReview;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Checks a shop's knowledge and repair book as a whole. */
@Command(
        name = "knowledge",
        mixinStandardHelpOptions = true,
        description =
                "Check knowledge and repair book: contradictions, causes that cannot be reached or decided, missing"
                        + " repairs and sources; these end with exit code 1. Lists customers' texts without Spanish"
                        + " words as well.")
final class KnowledgeCommand implements Callable<Integer> {
    @Mixin
    private ShopOptions shop;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var review = KnowledgeReview.of(shop.library());
        printing.print(() -> data(review), out -> {
            review.problems().forEach(out::println);
            review.withoutSpanish().forEach(text -> out.println("No Spanish words: " + text));
            out.printf(
                    "%d checks, %d causes, %d repairs: %d problems, %d texts without Spanish words%n",
                    review.checks(),
                    review.causes(),
                    review.repairs(),
                    review.problems().size(),
                    review.withoutSpanish().size());
        });
        return review.problems().isEmpty() ? 0 : 1;
    }

    private static JsonNode data(KnowledgeReview review) {
        var data = Printing.object()
                .put("checks", review.checks())
                .put("causes", review.causes())
                .put("repairs", review.repairs());
        data.set("problems", Printing.texts(review.problems()));
        data.set("withoutSpanish", Printing.texts(review.withoutSpanish()));
        return data;
    }
}
