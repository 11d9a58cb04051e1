package fairflame.quote;

import fairflame.catalog.Jurisdiction;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Evidence;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.NextCheck;
import fairflame.repair.RepairPlan;
import fairflame.repair.Scope;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Quotes of the demo visits by hand. People and places are invented for the demo. */
public final class DemoQuotes {
    public static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    private DemoQuotes() {}

    public static String template(String name) {
        try {
            return Files.readString(Path.of("templates", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static final NoteBook NOTES = NoteBook.parse(template("notes.yaml"));
    public static final Cautions CAUTIONS = Cautions.parse(template("cautions.yaml"));

    public static final QuoteRequest.People PEOPLE = new QuoteRequest.People(
            new Party(
                    "Quiet Flame Heater Service",
                    List.of("2 Quay Row", "Demo City"),
                    "555-0101",
                    "desk@example.com",
                    ""),
            "service licence 4471",
            new Party("Ida Brandt", List.of("9 Hill Lane", "Demo City"), "555-0102", "ida@example.com", "owner"),
            new Party("Ida Brandt", List.of("9 Hill Lane", "Demo City"), "555-0102", "", ""));

    public static QuoteRequest request(Jurisdiction place, PricingInputs inputs) {
        return new QuoteRequest(
                new QuoteRequest.Head("Q-2026-0001", 1, "V-1", DAY),
                PEOPLE,
                "gas pool heater, 400,000 Btu/h",
                place,
                inputs,
                new QuoteRequest.Paper(
                        NOTES, List.of("Payment within 14 days."), List.of(DemoShop.SHOP.version()), Optional.empty()),
                Optional.empty(),
                List.of(),
                List.of());
    }

    public static QuoteRequest request() {
        return request(DemoShop.CITY, PricingInputs.inZone("near"));
    }

    public static Quoting quoting(QuoteRequest request) {
        return new Quoting(DemoShop.SHOP, request);
    }

    public static final Candidate WET_SWITCHES = candidate(
            "LD01",
            Candidate.Standing.SETTLED,
            List.of(
                    new Evidence(
                            "leak-high", List.of("leak-high-limit"), "High limit reads 22 kilohm to its body.", "OHM"),
                    new Evidence(
                            "hold-in", List.of("valve-min"), "Valve voltage fell to 15.7 V before the flame.", "M-13")),
            List.of());
    public static final Candidate GAS = candidate(
            "GP01",
            Candidate.Standing.RULED_OUT,
            List.of(),
            List.of(new Evidence(
                    "drop", List.of("gas-static"), "The drop is 1.2 in w.c.", "common practice, no source")));

    public static Candidate candidate(
            String cause, Candidate.Standing standing, List<Evidence> supports, List<Evidence> against) {
        return new Candidate(
                cause,
                "title of " + cause,
                "Plain words of " + cause + ".",
                standing,
                supports,
                against,
                List.of(),
                standing == Candidate.Standing.SETTLED ? "the lifted-lead test" : "",
                List.of());
    }

    public static final Finding.Settled SETTLED =
            new Finding.Settled(List.of(WET_SWITCHES), List.of(WET_SWITCHES, GAS), List.of());
    public static final Finding.Unsettled UNSETTLED = new Finding.Unsettled(
            List.of(new NextCheck(
                    "leak-warm",
                    "Test the limit with lifted leads while warm",
                    "It tells damp from gas.",
                    8,
                    "H1",
                    "T",
                    "ohmmeter")),
            List.of(candidate("LD01", Candidate.Standing.LIKELY, WET_SWITCHES.supports(), List.of()), GAS),
            List.of("Two readings tell different stories."));
    public static final Finding.StopWork STOP = new Finding.StopWork(
            List.of(new Finding.Danger("G1", "Smell of gas", "detector alarm near the union", List.of(), "S-GASEM")),
            List.of(),
            List.of());

    public static RepairPlan plan(Scope... scopes) {
        return new RepairPlan(List.of(scopes), List.of());
    }

    /** Made anew, for tests of the making itself. */
    public static Quote switches() {
        return quoting(request()).repair(SETTLED, plan(DemoScopes.BOTH, DemoScopes.ONE));
    }

    public static final Quote SWITCHES = switches();
}
