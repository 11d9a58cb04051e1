package fairflame.screen;

import fairflame.catalog.Shop;
import fairflame.screen.stock.StockWork;
import fairflame.visit.Library;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The tables of a shop as rows of words for the stock room. */
final class ShelvesOfShop {
    private final Library library;
    private final Shop shop;

    ShelvesOfShop(Library library) {
        this.library = library;
        this.shop = library.shop();
    }

    List<StockWork.Table> tables() {
        return List.of(parts(), tasks(), access(), rates(), ladder(), places(), suppliers(), texts());
    }

    private StockWork.Table parts() {
        return new StockWork.Table(
                "parts",
                List.of("number", "description", "cost", "list price", "unit", "supplier"),
                shop.parts().stream()
                        .map(part -> List.of(
                                part.number(),
                                part.description(),
                                part.cost().toString(),
                                part.listPrice().map(Object::toString).orElse(""),
                                part.unit(),
                                part.supplier()))
                        .toList());
    }

    private StockWork.Table tasks() {
        return new StockWork.Table(
                "tasks",
                List.of("id", "title", "times", "permit class"),
                shop.tasks().stream()
                        .map(task -> List.of(
                                task.id(),
                                task.title(),
                                String.join(
                                        ", ",
                                        task.times().stream()
                                                .map(time -> time.hours().toPlainString() + " h "
                                                        + time.per().name().toLowerCase(java.util.Locale.ROOT))
                                                .toList()),
                                task.permitClass()))
                        .toList());
    }

    private StockWork.Table access() {
        return new StockWork.Table(
                "access",
                List.of("id", "title", "hours"),
                shop.access().stream()
                        .map(step ->
                                List.of(step.id(), step.title(), step.hours().toPlainString() + " h"))
                        .toList());
    }

    private StockWork.Table rates() {
        var rows = new ArrayList<List<String>>();
        shop.rates()
                .hourly()
                .forEach((trade, rate) -> rows.add(List.of(trade.letter(), trade.name(), rate.toString())));
        shop.rates().trip().forEach((zone, charge) -> rows.add(List.of("trip", zone, charge.toString())));
        rows.add(List.of("fee", "diagnosis", shop.rates().diagnosticFee().toString()));
        rows.sort(java.util.Comparator.comparing(row -> row.get(0) + row.get(1)));
        return new StockWork.Table("rates", List.of("key", "what", "amount"), rows);
    }

    private StockWork.Table ladder() {
        return new StockWork.Table(
                "ladder",
                List.of("from", "markup"),
                shop.ladder().steps().stream()
                        .map(step ->
                                List.of(step.from().toString(), step.markup().toString()))
                        .toList());
    }

    private StockWork.Table places() {
        return new StockWork.Table(
                "places",
                List.of("id", "name", "codes", "permits"),
                shop.jurisdictions().stream()
                        .map(place -> List.of(
                                place.id(),
                                place.name(),
                                String.join("; ", place.codes()),
                                place.permits().entrySet().stream()
                                        .sorted(Map.Entry.comparingByKey())
                                        .map(entry -> entry.getKey() + " " + entry.getValue())
                                        .collect(java.util.stream.Collectors.joining(", "))))
                        .toList());
    }

    private StockWork.Table suppliers() {
        return new StockWork.Table(
                "suppliers",
                List.of("id", "name", "phone", "e-mail"),
                shop.suppliers().stream()
                        .map(supplier -> List.of(supplier.id(), supplier.name(), supplier.phone(), supplier.email()))
                        .toList());
    }

    /** Company details and printed texts, file by file. */
    private StockWork.Table texts() {
        return new StockWork.Table(
                "texts",
                List.of("file", "text"),
                library.templates().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(entry -> List.of(entry.getKey(), entry.getValue()))
                        .toList());
    }
}
