package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.Refusal;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Finding;
import fairflame.quote.Quote;
import fairflame.wording.Language;
import fairflame.wording.Told;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every case that a test writes down is judged and priced for a customer who reads Spanish as well. */
final class SpanishTwin {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-06-10T12:00:00-05:00");

    private SpanishTwin() {}

    /** Refuses a case whose Spanish words prove something else, cost something else or are partly English. */
    static void check(Examination english) {
        var visit = CustomerLanguage.of(english.visit(), Language.SPANISH, Pad.LIBRARY);
        var told = Examination.of(visit, Pad.LIBRARY.in(Language.SPANISH));
        assertThat(proof(told.finding())).isEqualTo(proof(english.finding()));
        english.finding()
                .match(
                        settled -> sameQuote(english, visit),
                        unsettled -> sameQuote(english, visit),
                        danger -> spoken(Told.texts(Stopped.sheet(
                                Examination.of(visit, Pad.LIBRARY), danger, Pad.LIBRARY, NOON, List.of()))));
        told.verdicts().forEach(verdict -> spoken(verdict.words()));
    }

    private static List<String> proof(Finding finding) {
        var proof = new ArrayList<String>();
        proof.add(finding.getClass().getSimpleName() + " " + finding.conflicts().size());
        finding.candidates().forEach(each -> proof.add(proof(each)));
        return proof;
    }

    private static String proof(Candidate each) {
        return String.join(
                " ", each.cause(), each.standing().name(), each.missing().toString(), each.devices() + "");
    }

    private static Void sameQuote(Examination english, VisitRecord visit) {
        var one = quote(english);
        var other = quote(Examination.of(visit, Pad.LIBRARY));
        assertThat(other.isPresent()).isEqualTo(one.isPresent());
        other.ifPresent(quote -> {
            assertThat(quote.language()).isEqualTo("es");
            assertThat(totals(quote)).isEqualTo(totals(one.orElseThrow()));
            spoken(Told.texts(quote));
            spoken(quote.terms());
        });
        return null;
    }

    private static Optional<Quote> quote(Examination examined) {
        try {
            return Optional.of(new QuoteMaking(Pad.LIBRARY).quote(examined, "Q-2026-0001", 1, Pad.DAY));
        } catch (Refusal notPriced) {
            return Optional.empty();
        }
    }

    private static List<String> totals(Quote quote) {
        return quote.choices().stream()
                .map(choice -> choice.id()
                        + choice.totals().total()
                        + choice.deposit()
                        + choice.lines().stream().map(line -> line.net()).toList())
                .toList();
    }

    private static Void spoken(List<String> texts) {
        assertThat(EnglishWords.in(texts)).isEmpty();
        return null;
    }
}
