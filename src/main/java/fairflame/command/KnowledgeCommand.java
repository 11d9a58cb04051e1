package fairflame.command;

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
                        + " repairs and sources. Problems end with exit code 1.")
final class KnowledgeCommand implements Callable<Integer> {
    @Mixin
    private ShopOptions shop;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        var review = KnowledgeReview.of(shop.library());
        printing.print(
                () -> Printing.object()
                        .put("checks", review.checks())
                        .put("causes", review.causes())
                        .put("repairs", review.repairs())
                        .set("problems", Printing.texts(review.problems())),
                out -> {
                    review.problems().forEach(out::println);
                    out.printf(
                            "%d checks, %d causes, %d repairs: %d problems%n",
                            review.checks(),
                            review.causes(),
                            review.repairs(),
                            review.problems().size());
                });
        return review.problems().isEmpty() ? 0 : 1;
    }
}
