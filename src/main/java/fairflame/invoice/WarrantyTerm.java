package fairflame.invoice;

import fairflame.agreement.Agreed;
import fairflame.catalog.PartNeed;
import fairflame.catalog.Shop;
import fairflame.catalog.Task;
import fairflame.catalog.Warranty;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the shop promises for one part or one task, by the terms of its folder, counted from the day of completion.
 *
 * @param about line or task, in words
 * @param title of the warranty text
 * @param words what is and is not covered
 * @param until last day; empty where nothing is promised
 */
public record WarrantyTerm(String about, String title, String words, Optional<LocalDate> until) {
    /** The terms of all parts and tasks of a job. */
    public static List<WarrantyTerm> of(Agreed agreed, Shop shop, LocalDate completed) {
        var tasks = agreed.signed().taken().work().stream()
                .flatMap(work -> shop.tasks().stream().filter(task -> task.id().equals(work.task())))
                .toList();
        var terms = new ArrayList<WarrantyTerm>();
        for (var line : agreed.lines()) {
            if (line.kind() == LineKind.PART) {
                part(line, tasks, shop).map(term -> term.from(completed)).ifPresent(terms::add);
            }
        }
        for (var task : tasks) {
            shop.book()
                    .warranty(task.warranty())
                    .map(text -> new WarrantyTerm(
                            task.title(),
                            text.title(),
                            text.words(),
                            text.labourDays() > 0
                                    ? Optional.of(completed.plusDays(text.labourDays()))
                                    : Optional.empty()))
                    .ifPresent(terms::add);
        }
        return terms;
    }

    private record Months(String about, Warranty text, int months) {
        WarrantyTerm from(LocalDate completed) {
            return new WarrantyTerm(
                    about,
                    text.title(),
                    text.words(),
                    months > 0 ? Optional.of(completed.plusMonths(months)) : Optional.empty());
        }
    }

    /** The text of the task that needs such a part, else the shortest of the job's; the part's own term when longer. */
    private static Optional<Months> part(Line line, List<Task> tasks, Shop shop) {
        var part = shop.parts().stream()
                .filter(known -> known.number().equals(line.item()))
                .findFirst();
        var role = part.map(known -> known.role()).orElse("");
        var needing = tasks.stream()
                .filter(task -> task.needs().stream().map(PartNeed::role).anyMatch(role::equals))
                .toList();
        return (needing.isEmpty() ? tasks : needing)
                .stream()
                        .flatMap(task -> shop.book().warranty(task.warranty()).stream())
                        .filter(text -> text.partsMonths() > 0)
                        .min(Comparator.comparing(Warranty::partsMonths))
                        .map(text -> new Months(
                                line.description(),
                                text,
                                Math.max(
                                        text.partsMonths(),
                                        part.map(known -> known.warrantyMonths())
                                                .orElse(0))));
    }
}
