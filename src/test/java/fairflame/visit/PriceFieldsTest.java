package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.Refusal;
import fairflame.quote.Basis;
import fairflame.quote.Line;
import fairflame.quote.Quote;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a visit can say about its price: read strictly, and seen on the quote with its basis. */
class PriceFieldsTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final LocalDate DAY = LocalDate.of(2026, 6, 3);

    private static VisitRecord read(int number, String price) {
        try (var demo = PriceFieldsTest.class.getResourceAsStream("/fairflame/demo/visit-" + number + ".json")) {
            var visit = (ObjectNode) MAPPER.readTree(Objects.requireNonNull(demo));
            visit.set("price", MAPPER.readTree(price));
            return Pad.LIBRARY.visits().read(visit.toString());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The demo visit of the wet switches: both at 389.86, one at 293.80. */
    private static Quote quote(String price) {
        return quote(1, price);
    }

    private static Quote quote(int visit, String price) {
        return new QuoteMaking(Pad.LIBRARY)
                .quote(Examination.of(read(visit, price), Pad.LIBRARY), "Q-2026-0001", 1, DAY);
    }

    private static Line line(Quote quote, String choice, String words) {
        return quote.choice(choice).lines().stream()
                .filter(line -> line.description().contains(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLineDiscountStandsUnderItsLineWithReasonAndTakesFirst() {
        // Labour 195.75, a tenth of it 19.58 (19.575 rounded), not taxed: 389.86 - 19.58.
        var quote = quote("{'lineDiscounts':[{'line':'labour','percent':'10 %','reason':'regular customer'}]}"
                .replace('\'', '"'));
        var discount = line(quote, "both", "Discount 10 %, regular customer");
        assertThat(discount.net().toString()).isEqualTo("USD -19.58");
        assertThat(discount.basis()).extracting(Basis::words).anyMatch(words -> words.contains("regular customer"));
        assertThat(quote.choice("both").totals().total().toString()).isEqualTo("USD 370.28");
    }

    @Test
    void aLineAskedForByTheCustomerStandsWithItsWhyAndSource() {
        var quote = quote("""
                {"extras": [{"kind": "subcontract", "description": "Electrician: move the socket", "quantity": "1.5",
                  "unit": "h", "unitPrice": "90.00", "passThrough": true, "why": "The socket stands in the splash.",
                  "choice": "both"}], "discountPercent": "10", "discountReason": "first visit"}
                """);
        var line = line(quote, "both", "Electrician");
        assertThat(line.net().toString()).isEqualTo("USD 135.00");
        assertThat(line.discount().isZero()).as("passed on as paid").isTrue();
        assertThat(line.basis())
                .anyMatch(basis -> basis.words().equals("The socket stands in the splash.")
                        && basis.source().equals("asked for by the customer"));
        assertThat(quote.choice("one").lines())
                .noneMatch(each -> each.description().contains("Electrician"));
    }

    @Test
    void aDiagnosisPaidOnTheSameTripIsCreditedAndTheTripNotChargedAgain() {
        var paid = "\"diagnosisPaid\": \"120.00\", \"diagnosisPaidOn\": \"2026-06-02\"";
        var other = quote("{" + paid + "}").choice("both");
        var same = quote("{" + paid + ", \"diagnosisSameTrip\": true}");
        assertThat(other.lines()).anyMatch(line -> line.description().equals("Trip"));
        assertThat(same.choice("both").lines())
                .noneMatch(line -> line.description().equals("Trip"));
        assertThat(other.totals()
                        .total()
                        .minus(same.choice("both").totals().total())
                        .toString())
                .isEqualTo("USD 89.00");
        assertThat(line(same, "both", "credited").basis())
                .extracting(Basis::words)
                .anyMatch(words -> words.contains("the trip was paid with it"));
    }

    @Test
    void theQuoteEndsWithThePricesWhenThoseEndFirst() {
        assertThat(quote("{\"pricesUntil\": \"2026-06-10\"}").validUntil()).isEqualTo(LocalDate.of(2026, 6, 10));
        assertThat(quote("{\"pricesUntil\": \"2027-06-10\"}").validUntil())
                .isEqualTo(quote("{}").validUntil());
        assertThatThrownBy(() -> quote("{\"pricesUntil\": \"2026-06-02\"}"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("expired on 2026-06-02");
    }

    @Test
    void aChoiceSoldBeyondTheRepairIsMarked() {
        var quote = quote("{\"further\": [\"both\"]}");
        assertThat(quote.choice("both").lines()).allMatch(Line::further);
        assertThat(quote.choice("one").lines()).noneMatch(Line::further);
    }

    @Test
    void anUnsettledFindingKeepsTheTermsForTheRepairThatMayFollow() {
        assertThat(quote(
                                3,
                                "{\"further\": [\"both\"], \"lineDiscounts\": "
                                        + "[{\"line\": \"labour\", \"percent\": \"5\", \"reason\": \"x\"}]}")
                        .repair())
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        "discountAmount": "500.00", "discountReason": "x"                                           | discount 'USD 500.00' is refused; allowed: at most USD
        "discountAmount": "-5.00", "discountReason": "x"                                            | price.discountAmount: amount of money '-5.00'
        "discountPercent": "101", "discountReason": "x"                                             | price.discountPercent: percentage '101'
        "discountPercent": "10"                                                                     | price.discountReason
        "discountPercent": "10", "discountReason": " "                                              | price.discountReason
        "discountPercent": "10", "discountAmount": "1.00", "discountReason": "x"                    | a percent or an amount, not both
        "lineDiscounts": [{"line": "labour", "amount": "900.00", "reason": "x"}]                    | discount 'USD 900.00' is refused; allowed: at most USD
        "lineDiscounts": [{"line": "labour", "amount": "-1.00", "reason": "x"}]                     | price.lineDiscounts[0].amount
        "lineDiscounts": [{"line": "labour", "percent": "5"}]                                       | price.lineDiscounts[0].reason
        "lineDiscounts": [{"line": "labour", "reason": "x"}]                                        | price.lineDiscounts[0].percent
        "lineDiscounts": [{"line": "P-NONE", "percent": "5", "reason": "x"}]                        | line to discount 'P-NONE' is refused; allowed: SE-01, SW-01
        "lineDiscounts": [{"lines": "labour", "percent": "5", "reason": "x"}]                       | lines
        "extras": [{"kind": "gift", "description": "a", "unitPrice": "1.00", "why": "b"}]           | price.extras[0].kind 'gift'
        "extras": [{"kind": "trip", "description": "a", "unitPrice": "1.00", "why": "b"}]           | price.extras[0].kind 'trip'
        "extras": [{"kind": "part", "description": "a", "unitPrice": "-1.00", "why": "b"}]          | price.extras[0].unitPrice
        "extras": [{"kind": "part", "description": "a", "why": "b"}]                                | price.extras[0].unitPrice
        "extras": [{"kind": "part", "description": "a", "unitPrice": "1.00"}]                       | price.extras[0].why
        "extras": [{"kind": "part", "description": "a", "unitPrice": "1.00", "why": "b", "quantity": "0"}]    | price.extras[0].quantity '0'
        "extras": [{"kind": "part", "description": "a", "unitPrice": "1.00", "why": "b", "quantity": "-2"}]   | price.extras[0].quantity '-2'
        "extras": [{"kind": "part", "description": "a", "unitPrice": "1.00", "why": "b", "choice": "gold"}]   | choice of line 'a' 'gold' is refused; allowed: both, one
        "further": ["gold"]                                                                         | choice sold further 'gold' is refused; allowed: both, one
        "diagnosisSameTrip": true                                                                   | price.diagnosisPaid
        "diagnosisPaid": "120.00"                                                                   | price.diagnosisPaidOn
        "diagnosisPaid": "120.00", "diagnosisPaidOn": "2026-06-02", "diagnosisSameTrip": "yes"      | price.diagnosisSameTrip
        "pricesUntil": "soon"                                                                       | price.pricesUntil
        """)
    void whatCannotBeIsRefusedByFieldAndValue(String price, String told) {
        assertThatThrownBy(() -> quote("{" + price + "}"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(told)
                .hasMessageContaining("allowed:")
                .satisfies(refusal -> assertThat(refusal.getMessage().lines()).hasSize(1));
    }

    @Test
    void theExampleBesideTheSchemaIsReadAndPriced() throws IOException {
        var visit = Pad.LIBRARY.visits().read(Files.readString(Path.of("docs/formats/visit.example.json")));
        var quote = new QuoteMaking(Pad.LIBRARY).quote(Examination.of(visit, Pad.LIBRARY), "Q-2026-0001", 1, DAY);
        assertThat(quote.validUntil()).isEqualTo(LocalDate.of(2026, 6, 20));
        assertThat(quote.choices())
                .allSatisfy(choice -> assertThat(choice.lines())
                        .anyMatch(line -> line.description().startsWith("Painter"))
                        .anyMatch(line -> line.description().startsWith("Discount 5 %")));
    }
}
