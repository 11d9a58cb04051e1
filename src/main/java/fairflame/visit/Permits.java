package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.CancelRight;
import fairflame.agreement.SignedRevision;
import fairflame.catalog.PermitNeed;
import fairflame.document.CalendarFile;
import fairflame.invoice.Completion;
import fairflame.invoice.account.Ageing;
import fairflame.invoice.permit.Booking;
import fairflame.invoice.permit.CancelGate;
import fairflame.invoice.permit.Due;
import fairflame.invoice.permit.DueList;
import fairflame.invoice.permit.GasWork;
import fairflame.invoice.permit.Permit;
import fairflame.invoice.permit.PermitState;
import fairflame.invoice.permit.PermitStep;
import fairflame.invoice.permit.Waiver;
import fairflame.store.Records;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The register of permits, inspections and licensed gas work of signed quotes, and what is due. */
public final class Permits {
    private static final String CALENDAR = "due.ics";
    private static final String NOT_REQUIRED = "not required:";

    private final Workplace workplace;

    public Permits(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * One line of the register.
     *
     * @param missing what still stands between the work and calling it complete
     */
    public record Entry(Permit permit, PermitNeed need, Optional<GasWork> gasWork, List<String> missing) {
        public Entry {
            missing = List.copyOf(missing);
        }
    }

    /** Every signed quote whose work needs a permit or may need one, by number. */
    public List<Entry> all() {
        return workplace
                .store()
                .reading(records -> Signed.all(records).stream()
                        .filter(agreed -> need(agreed.signed()) != PermitNeed.NO)
                        .map(agreed -> entry(records, agreed))
                        .toList());
    }

    /** The line of one signed quote; a permit that the place does not ask for may be kept too. */
    public Entry of(String quote) {
        return workplace.store().reading(records -> entry(records, Signed.of(records, quote)));
    }

    private static PermitNeed need(SignedRevision signed) {
        return signed.taken().duties().permit();
    }

    Entry entry(Records records, Agreed agreed) {
        var signed = agreed.signed();
        var invoicing = workplace.library().invoicing(agreed);
        return new Entry(
                permit(records, signed),
                need(signed),
                records.registers().gasWork().find(Signed.key(signed)),
                invoicing.missing(completion(records, signed)));
    }

    private static Permit permit(Records records, SignedRevision signed) {
        var quote = signed.quote();
        return records.registers().permits().find(Signed.key(signed)).orElseGet(() -> {
            var day = signed.signature().at().toLocalDate();
            var needed = Permit.needed(quote.number(), quote.revision(), quote.place(), day);
            return records.completionRecords()
                    .latest(quote.number(), quote.revision())
                    .map(known -> reported(needed, known.permitNumber().strip()))
                    .orElse(needed);
        });
    }

    /** A permit of which only the record of the finished work tells. */
    private static Permit reported(Permit needed, String told) {
        var day = needed.opened();
        var by = "record of the finished work";
        if (told.isEmpty()) {
            return needed;
        }
        if (told.startsWith(NOT_REQUIRED)) {
            var words = told.substring(NOT_REQUIRED.length()).strip();
            return words.isEmpty()
                    ? needed
                    : needed.after(new PermitStep(day, PermitState.NOT_NEEDED, by, "", Optional.empty(), words));
        }
        return needed.after(new PermitStep(day, PermitState.APPLIED, by, "", Optional.empty(), ""))
                .after(new PermitStep(day, PermitState.ISSUED, by, told, Optional.empty(), ""));
    }

    /** Takes the next step of a permit. */
    public Entry step(String quote, PermitStep step) {
        workplace.store().change(workplace.by(), records -> {
            var signed = Signed.of(records, quote).signed();
            if (step.on().isAfter(workplace.today())) {
                throw Refusal.outOfRange("day of the step", step.on(), "up to today, " + workplace.today());
            }
            records.registers()
                    .permits()
                    .put(Signed.key(signed), permit(records, signed).after(step));
            keep(records, signed);
        });
        return of(quote);
    }

    /** Records who did the gas work of a signed quote. */
    public Entry gasWork(String quote, GasWork work) {
        workplace.store().change(workplace.by(), records -> {
            var signed = Signed.of(records, quote).signed();
            records.registers().gasWork().put(Signed.key(signed), work);
            keep(records, signed);
        });
        return of(quote);
    }

    /** The record of completion follows the register. */
    private static void keep(Records records, SignedRevision signed) {
        var quote = signed.quote();
        records.completionRecords().put(quote.number(), quote.revision(), completion(records, signed));
    }

    /** The record of the finished work as it is kept; here the register counts before the record. */
    private static Completion completion(Records records, SignedRevision signed) {
        var quote = signed.quote();
        var known = records.completionRecords()
                .latest(quote.number(), quote.revision())
                .orElse(CompletionFile.NOTHING);
        var gas = records.registers().gasWork().find(Signed.key(signed));
        return completion(
                records,
                signed,
                new Completion(
                        "",
                        gas.isPresent() ? "" : known.fitterName(),
                        gas.isPresent() ? "" : known.fitterLicence(),
                        known.tests(),
                        gas.flatMap(GasWork::test).or(known::pressureTest),
                        known.leadsRemoved()));
    }

    /** A record of the finished work, completed by what the register knows; what the record itself tells counts. */
    static Completion completion(Records records, SignedRevision signed, Completion stated) {
        var permit = permit(records, signed).forCompletion();
        var gas = records.registers().gasWork().find(Signed.key(signed));
        return new Completion(
                stated.permitNumber().isBlank() ? permit : stated.permitNumber(),
                stated.fitterName().isBlank() ? gas.map(GasWork::fitter).orElse("") : stated.fitterName(),
                stated.fitterLicence().isBlank() ? gas.map(GasWork::licence).orElse("") : stated.fitterLicence(),
                stated.tests(),
                stated.pressureTest().or(() -> gas.flatMap(GasWork::test)),
                stated.leadsRemoved());
    }

    /** Keeps the customer's own waiver of the right to cancel. */
    public void waive(String quote, LocalDate on, String statement) {
        workplace.store().change(workplace.by(), records -> {
            var signed = Signed.of(records, quote).signed();
            var waiver = new Waiver(quote, signed.quote().revision(), on, statement);
            records.registers().waivers().put(Signed.key(signed), waiver);
        });
    }

    /** Refuses to bill work as done while the customer may still cancel. */
    static void refuseBill(Records records, SignedRevision signed, LocalDate supplied, LocalDate today) {
        CancelGate.refuseBill(
                signed, supplied, today, records.registers().waivers().find(Signed.key(signed)));
    }

    /** Books the day on which signed work begins; refused while the customer may still cancel. */
    public Booking book(String quote, LocalDate day, String crew) {
        return workplace.store().inTransaction(workplace.by(), records -> {
            var signed = Signed.of(records, quote).signed();
            var waiver = records.registers().waivers().find(Signed.key(signed));
            var booking = Booking.of(signed, day, crew, waiver);
            records.registers().bookings().put(Signed.key(signed), booking);
            return booking;
        });
    }

    /** All bookings, in the order in which the quotes were first booked. */
    public List<Booking> bookings() {
        return workplace
                .store()
                .reading(records -> records.registers().bookings().all());
    }

    /** Everything that is due, the earliest day first. */
    public List<Due> due() {
        var today = workplace.today();
        return workplace.store().reading(records -> {
            var list = new DueList();
            for (var agreed : Signed.all(records)) {
                var signed = agreed.signed();
                var customer = signed.quote().customer().name();
                if (need(signed) != PermitNeed.NO) {
                    list.permit(permit(records, signed), customer);
                }
                list.cancel(
                        signed.quote().number(),
                        CancelRight.of(signed).map(CancelRight::lastDay).filter(day -> !day.isBefore(today)),
                        customer);
            }
            records.registers()
                    .gasWork()
                    .all()
                    .forEach(work -> list.licence(work.fitter(), work.licence(), work.licenceEnds()));
            records.quotes().rows().stream()
                    .filter(row -> !row.signed())
                    .flatMap(row -> records.quotes().latest(row.number()).stream())
                    .forEach(quote -> list.quote(quote, today));
            var currency = workplace.library().shop().currency();
            list.invoices(Ageing.of(today, currency, new ArrayList<>(Accounts.all(records, currency))));
            return list.all();
        });
    }

    /** Writes what is due as a calendar file into the folder; its name. */
    public String calendar() {
        var email =
                workplace.library().paper(Library.ENGLISH).company().seller().email();
        var domain = email.substring(email.indexOf('@') + 1);
        var file = CalendarFile.write(due(), domain, workplace.now().toInstant());
        workplace.folder().write(Map.of(CALENDAR, file.getBytes(StandardCharsets.UTF_8)));
        return CALENDAR;
    }
}
