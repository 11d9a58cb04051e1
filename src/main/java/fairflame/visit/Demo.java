package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import fairflame.agreement.SigningAct;
import fairflame.money.Amounts;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import fairflame.store.Folder;
import fairflame.wording.Language;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * Four invented visits from reading to paper, in the days of the demo whatever the real day is. Run again in the same
 * folder it tells the same story and changes nothing.
 */
public final class Demo {
    private static final ZoneOffset OFFSET = ZoneOffset.ofHours(-5);
    private static final String TECHNICIAN = "Ines Calloway";

    private final Map<String, String> files = Folder.shipped("fairflame/demo");
    private final Library library = Library.load(Sources.samples());
    private final Path folder;
    private final Language language;
    private final Consumer<String> tell;

    /** A run of the demo with customers who read English. */
    public Demo(Path folder, Consumer<String> tell) {
        this(folder, Language.ENGLISH, tell);
    }

    /**
     * A run of the demo.
     *
     * @param language that the customers read; the story itself is told in English
     * @param tell takes the story, line by line
     */
    public Demo(Path folder, Language language, Consumer<String> tell) {
        this.folder = folder;
        this.language = language;
        this.tell = tell;
    }

    /** Runs all four visits. */
    public void run() {
        tell.accept("Four invented visits of an invented shop. Papers and database: " + folder);
        bothSwitches();
        gasLine();
        notSettled();
        smellOfGas();
        tell.accept("");
        tell.accept("Done. Prices, people and places are invented; local code and the licensed professional decide.");
    }

    private void bothSwitches() {
        var quote = quoted("visit-1.json", "1. Lights, drops out after seconds, retries, locks out");
        var signed = signed(quote, "both", List.of("one"));
        deposit(signed);
        paid(signed, "completion-1.json", 6);
    }

    private void gasLine() {
        var quote = quoted("visit-2.json", "2. The same complaint, but the gas pressure dips by 4 in w.c.");
        var taken = suggested(quote);
        var declined = quote.choices().stream()
                .map(Choice::id)
                .filter(id -> !id.equals(taken.id()))
                .toList();
        var signed = signed(quote, taken.id(), declined);
        deposit(signed);
        refusedInvoice(signed, 12);
        paid(signed, "completion-2.json", 12);
    }

    private void notSettled() {
        var quote = quoted("visit-3.json", "3. Readings that tell two stories at once");
        var signed = signed(quote, suggested(quote).id(), List.of());
        paid(signed, "", 0);
    }

    private void smellOfGas() {
        tell.accept("");
        tell.accept("4. Smell of gas at the pad");
        var visit = visit("visit-4.json");
        at(visit.on(), 0, workplace -> {
            var result = new Offer(workplace)
                    .make(visit, List.of("Gas shut at the meter by the gas company.", "Red tag hung on the heater."));
            result.match(
                    quoted -> {
                        throw new IllegalStateException("a danger was priced");
                    },
                    halted -> {
                        tell.accept("   STOP WORK: " + halted.sheet().headline());
                        halted.sheet()
                                .dangers()
                                .forEach(danger -> danger.advice().forEach(advice -> tell.accept("   " + advice)));
                        tell.accept("   No price was made. Written: " + String.join(", ", halted.files()));
                        return halted;
                    });
            return visit;
        });
    }

    private Quote quoted(String file, String heading) {
        tell.accept("");
        tell.accept(heading);
        var visit = visit(file);
        return at(
                visit.on(),
                0,
                workplace -> offered(workplace, visit).match(this::told, halted -> {
                    throw new IllegalStateException("stopped: " + halted.sheet().headline());
                }));
    }

    /** Papers of another demo, signed already, are not changed by this one. */
    private Offer.Result offered(Workplace workplace, VisitRecord visit) {
        try {
            return new Offer(workplace).make(visit, List.of());
        } catch (Refusal.NotAllowed signed) {
            throw Refusal.notAllowed("demo in " + folder, "signed with other data", "another folder, see --out");
        }
    }

    private Quote told(Offer.Quoted quoted) {
        var quote = quoted.quote();
        tell.accept("   Finding: " + quote.finding().headline());
        quoted.examined()
                .finding()
                .match(
                        settled -> {
                            settled.causes().forEach(cause -> tell.accept("   It rests on: " + cause.restsOn()));
                            return settled;
                        },
                        unsettled -> {
                            var next = unsettled.next().get(0);
                            tell.accept("   Next check: " + next.title() + " (" + next.minutes() + " min). "
                                    + next.reason());
                            return unsettled;
                        },
                        danger -> danger);
        quoted.examined().file().pipe().ifPresent(pipe -> tell.accept("   Gas line: " + pipe.words()));
        for (var choice : quote.choices()) {
            tell.accept(String.format(
                    "   %s %-44s %10s%s",
                    quote.number(),
                    choice.title(),
                    Amounts.plain(choice.totals().total()),
                    choice.suggested() ? "  suggested" : ""));
            choice.arithmetic().forEach(words -> tell.accept("     " + words));
        }
        quote.choices().stream()
                .flatMap(choice -> quote.notes(choice).stream())
                .filter(note -> note.boxed())
                .map(note -> "   ! " + note.text())
                .distinct()
                .forEach(tell);
        tell.accept("   Written: " + String.join(", ", quoted.files()));
        return quote;
    }

    private SignedRevision signed(Quote quote, String choice, List<String> declined) {
        return at(quote.made(), 1, workplace -> {
            var agreeing = new Agreeing(workplace);
            var former =
                    workplace.store().reading(records -> records.agreements().find(quote.number(), quote.revision()));
            var signed = former.orElseGet(
                    () -> agreeing.sign(quote.number(), choice, act(workplace, agreeing, quote, choice))
                            .signed());
            if (signed.declined().size() != declined.size()) {
                throw new IllegalStateException("declined: " + signed.declined());
            }
            tell.accept("   Signed by " + signed.signature().name() + " for "
                    + Amounts.plain(signed.taken().totals().total()) + ", seal "
                    + signed.seal().brief());
            var proof = new Proof(workplace).of(quote.number());
            tell.accept("   Proof: "
                    + (proof.holds() ? "as it was signed" : proof.differences().toString()));
            return signed;
        });
    }

    private SigningAct act(Workplace workplace, Agreeing agreeing, Quote quote, String choice) {
        return new SigningAct(
                quote.customer().name(),
                "owner",
                workplace.now(),
                Set.of(SigningAct.AUTHORISE, SigningAct.ELECTRONIC),
                agreeing.declines(quote, choice),
                StrokesFile.parse(text("strokes.json")),
                TECHNICIAN);
    }

    private void deposit(SignedRevision signed) {
        var amount = signed.taken().deposit();
        if (amount.isPositive() && payments(signed) == 0) {
            var deposited = at(
                    signed.quote().made(),
                    1,
                    workplace -> new Billing(workplace)
                            .deposit(
                                    signed.quote().number(),
                                    new Billing.Received(amount, "card", "", workplace.today())));
            tell.accept("   Written: " + String.join(", ", deposited.files()));
        }
        tell.accept("   Deposit " + Amounts.plain(amount));
    }

    /** Shows that gas work is not billed as complete on trust. */
    private void refusedInvoice(SignedRevision signed, int days) {
        at(signed.quote().made().plusDays(days), 2, workplace -> {
            try {
                new Billing(workplace)
                        .invoice(
                                signed.quote().number(),
                                CompletionFile.NOTHING,
                                new Billing.Terms(workplace.today(), 14, true));
            } catch (Refusal refusal) {
                tell.accept("   Without permit, fitter and test record: " + refusal.getMessage());
            }
            return signed;
        });
    }

    private void paid(SignedRevision signed, String completion, int days) {
        var day = signed.quote().made().plusDays(days);
        at(day, 8, workplace -> {
            var billing = new Billing(workplace);
            var record = completion.isEmpty() ? CompletionFile.NO_WORK : CompletionFile.read(text(completion));
            var former = workplace
                    .store()
                    .reading(
                            records -> records.invoices().ofQuote(signed.quote().number()));
            var billed = former.isEmpty()
                    ? billing.invoice(signed.quote().number(), record, new Billing.Terms(day, 14, true))
                    : billing.shown(former.get(0).number());
            var result = pay(billing, billed);
            tell.accept(String.format(
                    "   Invoice %s: total %s, paid %s, balance %s",
                    result.invoice().number(),
                    Amounts.plain(result.invoice().totals().total()),
                    Amounts.plain(result.invoice().paid()),
                    Amounts.plain(result.balance())));
            tell.accept("   Written: " + String.join(", ", result.files()));
            return result;
        });
    }

    private static Billing.Result pay(Billing billing, Billing.Result billed) {
        Money due = billed.balance();
        return due.isPositive()
                ? billing.pay(
                        billed.invoice().number(),
                        new Billing.Received(due, "card", "", billed.invoice().issued()))
                : billed;
    }

    private long payments(SignedRevision signed) {
        return at(signed.quote().made(), 1, workplace -> (long) workplace
                .store()
                .reading(records -> records.payments().ofQuote(signed.quote().number()))
                .size());
    }

    private static Choice suggested(Quote quote) {
        return quote.choices().stream().filter(Choice::suggested).findFirst().orElseThrow();
    }

    private VisitRecord visit(String file) {
        return CustomerLanguage.of(library.visits().read(text(file)), language, library);
    }

    private String text(String file) {
        // What people type into a record stays as typed, so each language has a record of its own.
        var text = files.getOrDefault(language.code() + "/" + file, files.get(file));
        if (text == null) {
            throw new IllegalStateException("the program lacks its own file " + file);
        }
        return text;
    }

    /** Works at an hour of a day of the demo. */
    private <T> T at(LocalDate day, int hours, Function<Workplace, T> work) {
        var time = OffsetDateTime.of(day.atTime(10, 0).plusHours(hours), OFFSET);
        try (var workplace = Workplace.open(folder, library, Clock.fixed(time.toInstant(), OFFSET), TECHNICIAN)) {
            return work.apply(workplace);
        }
    }
}
