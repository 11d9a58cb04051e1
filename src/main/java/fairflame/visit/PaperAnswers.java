package fairflame.visit;

import fairflame.Refusal;
import fairflame.document.AnswerSheet;
import fairflame.document.returned.Answers;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a returned paper says, once it is whole and does not contradict itself. Nothing is read into an empty field.
 *
 * @param choice empty when none of the choices is wanted
 */
record PaperAnswers(Optional<String> choice, String name, String role, LocalDate dated) {
    /**
     * Reads the fields of a paper of this quote; refused by the name of the field.
     *
     * @param today no date after it is taken
     */
    static PaperAnswers read(Answers answers, Quote quote, LocalDate today) {
        var choice = choice(answers, quote);
        for (var each : quote.choices()) {
            refuseOtherTicks(answers, each, choice);
        }
        if (choice.isPresent() && !answers.ticked(AnswerSheet.ELECTRONIC)) {
            throw unticked(AnswerSheet.ELECTRONIC, "consent to answer by a file");
        }
        var role = required(answers, AnswerSheet.ROLE, "owner, tenant or agent chosen");
        var name = required(answers, AnswerSheet.NAME, "the name in print");
        required(answers, AnswerSheet.SIGNATURE, "the name typed as a signature");
        return new PaperAnswers(choice, name, role, dated(answers, quote, today));
    }

    private static String field(String name) {
        return "field '" + name + "' of the returned paper";
    }

    private static Optional<String> choice(Answers answers, Quote quote) {
        var value = required(answers, AnswerSheet.CHOICE, "one choice, or none of these");
        if (value.equals(AnswerSheet.NONE)) {
            return Optional.empty();
        }
        var offered = quote.choices().stream()
                .map(Choice::id)
                .filter(id -> AnswerSheet.value(id).equals(value))
                .findFirst();
        if (offered.isEmpty()) {
            var values = Stream.concat(
                    quote.choices().stream().map(each -> AnswerSheet.value(each.id())), Stream.of(AnswerSheet.NONE));
            throw Refusal.unknown(field(AnswerSheet.CHOICE), value, values.collect(Collectors.joining(", ")));
        }
        return offered;
    }

    private static void refuseOtherTicks(Answers answers, Choice choice, Optional<String> taken) {
        var order = AnswerSheet.order(choice.id());
        var decline = AnswerSheet.decline(choice.id());
        if (taken.equals(Optional.of(choice.id()))) {
            if (!answers.ticked(order)) {
                throw unticked(order, "the order of the choice taken");
            }
            refuseTick(answers, decline, "the choice is taken and declined");
        } else {
            refuseTick(answers, order, "a second choice is ordered");
            if (!answers.ticked(decline)) {
                throw unticked(decline, "the word on a choice that is not taken");
            }
        }
    }

    private static Refusal unticked(String name, String what) {
        return Refusal.missing(field(name), "a tick: " + what);
    }

    private static void refuseTick(Answers answers, String name, String told) {
        if (answers.ticked(name)) {
            throw Refusal.notAllowed(field(name), "ticked: " + told, "ticks for one choice only");
        }
    }

    private static String required(Answers answers, String name, String allowed) {
        var text = answers.text(name);
        if (text.isEmpty()) {
            throw Refusal.missing(field(name), allowed);
        }
        return text;
    }

    private static LocalDate dated(Answers answers, Quote quote, LocalDate today) {
        var text = required(answers, AnswerSheet.DATE, "a day such as " + today);
        var last = today.isBefore(quote.validUntil()) ? today + ", today" : quote.validUntil() + ", its last day";
        try {
            var day = LocalDate.parse(text);
            if (day.isBefore(quote.made()) || day.isAfter(today) || day.isAfter(quote.validUntil())) {
                throw Refusal.outOfRange(
                        field(AnswerSheet.DATE), day, quote.made() + ", the day of the quote, to " + last);
            }
            return day;
        } catch (DateTimeParseException e) {
            throw Refusal.malformed(field(AnswerSheet.DATE), text, "year-month-day, such as " + today);
        }
    }
}
