package fairflame.quote;

import fairflame.Refusal;
import fairflame.wording.Language;
import fairflame.wording.Spoken;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/**
 * A quote with everything it was made from, so that opening it again gives the same paper.
 *
 * @param number unique in the shop, such as {@code Q-2026-0001}
 * @param revision from 1
 * @param visit id of the visit
 * @param repair false for a diagnosis-only quote
 * @param validUntil last day on which it may be signed
 * @param heater what the plate says, in words
 * @param place name of the jurisdiction
 * @param rules the rules of the place that the quote was made under, for change orders, invoices and credits
 * @param assumed sentences for everything that was assumed because the place or a value is unknown
 * @param notes notes that every choice prints, the boxed ones first; {@link #notes(Choice)} gives all that apply
 * @param terms printed terms
 * @param madeFrom names and versions of catalog, knowledge, templates and profile
 * @param language code of the language that it is written in and that its customer consents in, such as {@code es}
 * @param photos of the visit at the time, with the digests of their files
 */
public record Quote(
        String number,
        int revision,
        String visit,
        boolean repair,
        LocalDate made,
        LocalDate validUntil,
        CurrencyUnit currency,
        Party seller,
        String sellerLicence,
        Party customer,
        Party site,
        String heater,
        String place,
        PlaceRules rules,
        FindingSheet finding,
        List<Choice> choices,
        List<Note> notes,
        List<String> terms,
        @Spoken List<String> assumed,
        List<String> madeFrom,
        @Usually(Quote.USUAL_LANGUAGE) String language,
        @LeftOutWhenEmpty List<Photo> photos) {
    /** The language of a quote that names none: those made before quotes named it are in English. */
    static final String USUAL_LANGUAGE = "en";

    public Quote {
        Language.of(language);
        choices = List.copyOf(choices);
        notes = List.copyOf(notes);
        terms = List.copyOf(terms);
        assumed = List.copyOf(assumed);
        madeFrom = List.copyOf(madeFrom);
        photos = List.copyOf(photos);
    }

    /** The same with these photographs. */
    public Quote with(List<Photo> others) {
        return copy(choices, others);
    }

    /** The same with further decision arithmetic beside each choice. */
    public Quote telling(Function<Choice, List<String>> arithmetic) {
        var told = choices.stream()
                .map(choice ->
                        choice.told(Stream.concat(choice.arithmetic().stream(), arithmetic.apply(choice).stream())
                                .distinct()
                                .toList()))
                .toList();
        return copy(told, photos);
    }

    private Quote copy(List<Choice> others, List<Photo> shown) {
        return new Quote(
                number,
                revision,
                visit,
                repair,
                made,
                validUntil,
                currency,
                seller,
                sellerLicence,
                customer,
                site,
                heater,
                place,
                rules,
                finding,
                others,
                notes,
                terms,
                assumed,
                madeFrom,
                language,
                shown);
    }

    /** All notes that apply when this choice is taken, the boxed ones first. */
    public List<Note> notes(Choice choice) {
        return Stream.concat(notes.stream(), choice.notes().stream())
                .sorted(Comparator.comparing(note -> !note.boxed()))
                .toList();
    }

    /** The choice with this id. */
    public Choice choice(String id) {
        return choices.stream()
                .filter(candidate -> candidate.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "choice", id, choices.stream().map(Choice::id).collect(Collectors.joining(", "))));
    }
}
