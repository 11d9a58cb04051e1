package fairflame.screen;

import fairflame.screen.bench.Draft;
import fairflame.screen.handover.HandoverWork;
import fairflame.visit.Billing;
import fairflame.visit.CompletionFile;
import fairflame.visit.Deliveries;
import fairflame.visit.Demo;
import fairflame.visit.Handoff;
import fairflame.visit.JobHours;
import fairflame.visit.Ledger;
import fairflame.visit.Library;
import fairflame.visit.Ordering;
import fairflame.visit.Progress;
import fairflame.visit.Sources;
import fairflame.visit.Workplace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** A truck's folder with a packet, and an office's folder with work of every kind in it. All invented. */
final class OfficeFolder {
    static final String PHOTO = "wet switch.jpg";
    private static final Library LIBRARY = Library.load(Sources.samples());
    private static final List<List<Integer>> STROKE = List.of(List.of(100, 100, 300, 160, 500, 90));
    private static final int JOBS = 9;

    private OfficeFolder() {}

    static Workplace at(Path folder, String day) {
        var clock = Clock.fixed(Instant.parse(day + "T17:05:00Z"), ZoneId.of("America/Los_Angeles"));
        return Workplace.open(folder, LIBRARY, clock, "Ines Calloway");
    }

    /** The packet of a truck that made the four demo visits. */
    static Path packet(Path truck) {
        new Demo(truck, line -> {}).run();
        try (var workplace = at(truck, "2026-06-20")) {
            var handoff = new Handoff(workplace);
            handoff.name("truck-2", "Q");
            photo(truck, workplace, (byte) 7);
            return truck.resolve(handoff.export());
        }
    }

    private static void photo(Path folder, Workplace workplace, byte last) {
        try {
            var file = Files.write(folder.resolve(PHOTO), new byte[] {(byte) 0xFF, (byte) 0xD8, last});
            new Handoff(workplace).attach("V-2026-0603", file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An office on June 20 with the packet taken in, and a visit of its own that disagrees with it. */
    static void busy(Path folder, Path packet) {
        try (var workplace = at(folder, "2026-06-05")) {
            new Handoff(workplace).name("office", "QA");
            var other = Shop.demo(3).with("customer.phone", "555-0199").with("readings.note", "told on the phone");
            new WorkplaceScreens(workplace, false).offer(other, Progress.UNWATCHED);
            photo(folder, workplace, (byte) 9);
            new Handoff(workplace).take(packet);
            for (int i = 1; i <= JOBS; i++) {
                job(workplace, i);
            }
        }
        // The right to cancel what was signed on June 5 ends on June 9.
        bill(folder, "2026-06-10", "QA-2026-0002", 1);
        try (var workplace = at(folder, "2026-06-20")) {
            var invoice = bill(folder, "2026-06-20", "QA-2026-0003", 14);
            new Billing(workplace)
                    .pay(invoice, new Billing.Received(Money.parse("USD 100"), "cheque", "1187", workplace.today()));
            new Ledger(workplace).writeOff(invoice, Money.parse("USD 12.50"), "agreed after a late start");
            var sheet = new Ordering(workplace).sheets().get(0);
            var order = new Ordering(workplace).place(sheet.supplier().id()).content();
            new Deliveries(workplace)
                    .mark(order.number(), sheet.lines().get(0).part().number(), true);
        }
    }

    private static String bill(Path folder, String day, String quote, int dueDays) {
        try (var workplace = at(folder, day)) {
            return new Billing(workplace)
                    .invoice(quote, CompletionFile.NOTHING, new Billing.Terms(workplace.today(), dueDays, false))
                    .invoice()
                    .number();
        }
    }

    /** One more signed job of the first kind, with the hours it took. */
    private static void job(Workplace workplace, int number) {
        var work = new WorkplaceScreens(workplace, false);
        Draft draft = Shop.demo(1)
                .with("id", "V-2026-07" + String.format("%02d", number))
                .with("date", "2026-06-05")
                .with("customer.name", "Customer " + (char) ('A' + number) + " of Larkwell");
        var quote = work.offer(draft, Progress.UNWATCHED);
        if (number == JOBS) {
            return; // one stays unsigned
        }
        sign(work, quote);
        var task = quote.choices().get(0).work().get(0).task();
        new JobHours(workplace)
                .record(
                        quote.number(),
                        task,
                        "",
                        Optional.of(new BigDecimal("1.1")),
                        new BigDecimal("0.9").add(new BigDecimal("0.1").multiply(BigDecimal.valueOf(number))));
    }

    static void sign(ScreenWork work, fairflame.quote.Quote quote) {
        var choice = quote.choices().get(0).id();
        work.sign(
                quote,
                choice,
                new HandoverWork.Act(
                        quote.customer().name(), "owner", work.promises(quote, choice, "en"), STROKE, "Ines Calloway"),
                Progress.UNWATCHED);
    }
}
