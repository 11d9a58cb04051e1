package fairflame.document;

import fairflame.document.page.PageFormat;
import fairflame.document.sheet.Value;
import fairflame.quote.Party;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What every spreadsheet of a shop is filled with: printed words, the shop, the customer. */
final class SheetFacts {
    private final Map<String, Value> values = new HashMap<>();

    SheetFacts(PaperText text) {
        Arrays.stream(Label.values())
                .filter(label -> label.names().isEmpty())
                .forEach(label -> with("words." + label.key(), text.say(label)));
    }

    SheetFacts with(String name, String words) {
        return with(name, Value.words(words));
    }

    SheetFacts with(String name, Value value) {
        values.put(name, value);
        return this;
    }

    SheetFacts seller(Party seller, String licence) {
        return with("seller.name", seller.name())
                .with("seller.address", String.join(", ", seller.address()))
                .with("seller.phone", seller.phone())
                .with("seller.email", seller.email())
                .with("seller.licence", licence);
    }

    SheetFacts customer(Party customer, Party site) {
        return with("customer.name", customer.name())
                .with("customer.address", String.join(", ", customer.address()))
                .with("customer", party(customer))
                .with("site", party(site));
    }

    private static String party(Party party) {
        return Stream.concat(Stream.of(party.name()), party.address().stream())
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining(", "));
    }

    Map<String, Value> values() {
        return Map.copyOf(values);
    }

    /** Fills what stands in page header and footer, where {@code &} begins a code of the spreadsheet. */
    static UnaryOperator<String> running(String foot) {
        return words -> words.replace("{foot}", foot.replace("&", "&&"));
    }

    static void paper(XSSFWorkbook book, PageFormat format) {
        for (int i = 0; i < book.getNumberOfSheets(); i++) {
            book.getSheetAt(i)
                    .getPrintSetup()
                    .setPaperSize(format == PageFormat.LETTER ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE);
        }
    }
}
