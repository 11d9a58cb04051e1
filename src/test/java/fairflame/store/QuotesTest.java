package fairflame.store;

import static fairflame.store.Samples.VISIT;
import static fairflame.store.Samples.quote;
import static fairflame.store.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.quote.Quote;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuotesTest extends RecordsContract {
    @BeforeEach
    void visitFirst() {
        change(records -> records.visits().save(VISIT));
    }

    @Test
    void aQuoteComesBackAsItWasStored() {
        var made = make(records -> records.quotes().issue("Q", 2026, number -> quote(number, 1)));
        assertThat(made.number()).isEqualTo("Q-2026-0001");
        assertThat(seen().quotes().find("Q-2026-0001", 1)).contains(made);
        assertThat(seen().quotes().bytes("Q-2026-0001", 1))
                .hasValueSatisfying(bytes -> assertThat(bytes).isEqualTo(CanonicalForm.write(made)));
        assertThat(seen().quotes().find("Q-2026-0001", 2)).isEmpty();
        assertThat(seen().quotes().latest("Q-2026-0002")).isEmpty();
    }

    @Test
    void numbersFollowEachOtherInEachSeriesAndYear() {
        for (var expected : new String[] {"Q-2026-0001", "Q-2026-0002", "Q-2027-0001", "T1-2026-0001", "Q-2026-0003"}) {
            var series = expected.substring(0, expected.indexOf('-'));
            var year = Integer.parseInt(expected.substring(series.length() + 1, series.length() + 5));
            var made = make(records -> records.quotes().issue(series, year, number -> quote(number, 1)));
            assertThat(made.number()).isEqualTo(expected);
        }
    }

    @Test
    void aFailedTransactionGivesItsNumberBack() {
        assertThatThrownBy(() -> change(records -> {
                    records.quotes().issue("Q", 2026, number -> quote(number, 1));
                    throw new IllegalStateException("printer on fire");
                }))
                .hasMessage("printer on fire");
        assertThat(make(records -> records.quotes().issue("Q", 2026, number -> quote(number, 1)))
                        .number())
                .isEqualTo("Q-2026-0001");
    }

    @Test
    void aNumberOtherThanTheGivenOneIsABug() {
        assertThatThrownBy(() ->
                        change(records -> records.quotes().issue("Q", 2026, number -> quote("Q-2026-0007", 1))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> change(records -> records.quotes().issue("Q", 2026, number -> quote(number, 2))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void storingTheSameRevisionAgainChangesNothing() {
        change(records -> records.quotes().add(quote("Q-2026-0001", 1)));
        change(records -> records.quotes().add(quote("Q-2026-0001", 1)));
        assertThat(seen().quotes().revisions("Q-2026-0001")).hasSize(1);
        assertThat(seen().audit().about("Q-2026-0001 revision 1")).hasSize(1);
    }

    @Test
    void otherContentUnderAStoredRevisionIsRefused() {
        change(records -> records.quotes().add(quote("Q-2026-0001", 1)));
        assertThatThrownBy(() -> change(records -> records.quotes().add(quote("Q-2026-0001", 1, "something else"))))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("quote 'Q-2026-0001 revision 1 with other content'");
        assertThat(seen().quotes().find("Q-2026-0001", 1)).contains(quote("Q-2026-0001", 1));
    }

    @Test
    void everyRevisionIsKeptAndTheHighestIsTheLatest() {
        change(records -> {
            records.quotes().add(quote("Q-2026-0001", 1));
            records.quotes().add(quote("Q-2026-0001", 2, "after a second look"));
        });
        assertThat(seen().quotes().latest("Q-2026-0001")).contains(quote("Q-2026-0001", 2, "after a second look"));
        assertThat(seen().quotes().revisions("Q-2026-0001"))
                .extracting(Quote::revision)
                .containsExactly(1, 2);
    }

    @Test
    void theListShowsTheLatestRevisionWithTheSuggestedTotal() {
        change(records -> {
            records.quotes().add(quote("Q-2026-0001", 1));
            records.quotes().add(quote("Q-2026-0001", 2));
            records.quotes().add(quote("Q-2026-0002", 1));
            records.agreements()
                    .add(Samples.signed(quote("Q-2026-0001", 2), records.chain().last()));
        });
        assertThat(seen().quotes().rows())
                .containsExactly(
                        new QuoteRow(
                                "Q-2026-0002",
                                1,
                                VISIT.id(),
                                "Odile Marsh",
                                Samples.DAY,
                                Samples.DAY.plusDays(30),
                                usd("103.71"),
                                false),
                        new QuoteRow(
                                "Q-2026-0001",
                                2,
                                VISIT.id(),
                                "Odile Marsh",
                                Samples.DAY,
                                Samples.DAY.plusDays(30),
                                usd("103.71"),
                                true));
    }

    @Test
    void aQuoteOfAnUnknownVisitIsRefused() {
        assertThatThrownBy(() -> store.change(Samples.OFFICE, records -> {
                    var other = new StoredVisit("V-2026-0002", "found", "x", Samples.DAY, "{}");
                    records.visits().save(other);
                    records.quotes().add(quote("Q-2026-0001", 1));
                    records.quotes().add(ofVisit(quote("Q-2026-0001", 2), other.id()));
                }))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("the visit it was made for, V-2026-0001");
        assertThatThrownBy(() -> change(records -> records.quotes().add(ofVisit(quote("Q-2026-0001", 1), "V-9"))))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("visit of quote Q-2026-0001 'V-9'");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "Q", "Q-26-0001", "q-2026-0001", "Q-2026-1", "Q-2026-00001", "Q-2026-0000", "1-2026-0001"})
    void aNumberOfAnotherShapeIsRefused(String number) {
        assertThatThrownBy(() -> change(records -> records.quotes().add(quote(number, 1))))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void aNumberGrowsBeyondFourDigits() {
        change(records -> records.quotes().add(quote("Q-2026-9999", 1)));
        assertThat(make(records -> records.quotes().issue("Q", 2026, number -> quote(number, 1)))
                        .number())
                .isEqualTo("Q-2026-10000");
    }

    @Test
    void aSeriesOrYearThatCannotBeIsRefused() {
        assertThatThrownBy(() -> change(records -> records.quotes().issue("q", 2026, number -> quote(number, 1))))
                .isInstanceOf(Refusal.Malformed.class);
        assertThatThrownBy(() -> change(records -> records.quotes().issue("Q", 26, number -> quote(number, 1))))
                .isInstanceOf(Refusal.OutOfRange.class);
    }

    private static Quote ofVisit(Quote quote, String visit) {
        return new Quote(
                quote.number(),
                quote.revision(),
                visit,
                quote.repair(),
                quote.made(),
                quote.validUntil(),
                quote.currency(),
                quote.seller(),
                quote.sellerLicence(),
                quote.customer(),
                quote.site(),
                quote.heater(),
                quote.place(),
                quote.rules(),
                quote.finding(),
                quote.choices(),
                quote.notes(),
                quote.terms(),
                quote.assumed(),
                quote.madeFrom(),
                "en",
                List.of());
    }
}
