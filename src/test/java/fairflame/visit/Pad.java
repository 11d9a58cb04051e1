package fairflame.visit;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.diagnosis.Finding;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/** A visit written the way a technician tells it: {@code check value [instrument; condition, condition]}. */
final class Pad {
    static final Library LIBRARY = Library.load(Sources.samples());
    static final LocalDate DAY = LocalDate.of(2026, 6, 10);
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final ObjectNode visit = MAPPER.createObjectNode();
    private final ObjectNode heater;
    private final ObjectNode gates;
    private final ArrayNode readings;

    private Pad(String complaint) {
        visit.put("format", VisitFile.FORMAT)
                .put("id", "V-TEST")
                .put("date", "2026-06-10")
                .put("technician", "Ines Calloway")
                .put("jurisdiction", "larkwell")
                .put("complaint", complaint);
        visit.putObject("customer")
                .put("name", "Marguerite Oduya")
                .putArray("address")
                .add("18 Heron Walk");
        heater = visit.putObject("heater").put("description", "gas pool heater").put("fuel", "natural");
        gates = visit.putObject("gates");
        LIBRARY.knowledge().gates().stream().filter(gate -> gate.asked()).forEach(gate -> gates.put(gate.id(), "no"));
        readings = visit.putArray("readings");
    }

    static Pad complaint(String complaint) {
        return new Pad(complaint);
    }

    Pad plate(String field, String value) {
        heater.put(field, value);
        return this;
    }

    Pad age(int years) {
        heater.put("ageYears", years);
        return this;
    }

    Pad gate(String gate, String answer) {
        gates.put(gate, answer);
        return this;
    }

    Pad read(String... lines) {
        Arrays.stream(lines).forEach(this::reading);
        return this;
    }

    private void reading(String line) {
        var match = java.util.regex.Pattern.compile("(\\S+) ([^\\[]+?)(?: \\[([^;\\]]*)(?:;([^\\]]*))?\\])?")
                .matcher(line);
        if (!match.matches()) {
            throw new IllegalArgumentException(line);
        }
        var node = readings.addObject().put("check", match.group(1)).put("value", match.group(2));
        if (match.group(3) != null && !match.group(3).isBlank()) {
            node.put("instrument", match.group(3).strip());
        }
        if (match.group(4) != null) {
            var conditions = node.putArray("conditions");
            Arrays.stream(match.group(4).split(",", -1)).map(String::strip).forEach(conditions::add);
        }
    }

    Pad lead(String device) {
        visit.withArray("bypassLeads")
                .addObject()
                .put("device", device)
                .put("placedBy", "Ines Calloway")
                .put("removed", true);
        return this;
    }

    Pad release(String gate, String cause) {
        visit.withArray("releases")
                .addObject()
                .put("gate", gate)
                .put("name", "Rosalind Achterberg")
                .put("licence", "GF-40217")
                .put("cause", cause);
        return this;
    }

    Pad facts(String... facts) {
        var array = repair().putArray("facts");
        Arrays.stream(facts).forEach(array::add);
        return this;
    }

    Pad partYears(int years) {
        repair().put("partYears", years);
        return this;
    }

    private ObjectNode repair() {
        return visit.has("repair") ? (ObjectNode) visit.get("repair") : visit.putObject("repair");
    }

    /** One line of steel from the meter to the heater. */
    Pad line(
            String meterStatic,
            String meterFiring,
            String size,
            String length,
            int ells,
            String minimum,
            String maximum) {
        var layout = visit.putObject("layout").put("site", "test");
        layout.putObject("gas")
                .put("fuel", "natural")
                .put("specificGravity", 0.60)
                .put("heatingValue", "1030btu/ft3");
        layout.putObject("source")
                .put("kind", "meter")
                .put("node", "meter")
                .put("pressure", meterStatic)
                .put("firing", meterFiring)
                .put("capacity", "630cfh");
        layout.putObject("drop").put("low", "1inwc");
        layout.putArray("segments")
                .addObject()
                .put("id", "pad-line")
                .put("from", "meter")
                .put("to", "pad")
                .put("material", "steel-schedule-40")
                .put("size", size)
                .put("length", length)
                .put("place", "outdoors")
                .putObject("fittings")
                .put("ell-90", ells)
                .put("union", 2);
        layout.putArray("appliances")
                .addObject()
                .put("id", "pool-heater")
                .put("node", "pad")
                .put("input", "400000btu/h")
                .put("minimum", minimum)
                .put("maximum", maximum);
        return this;
    }

    VisitRecord record() {
        return LIBRARY.visits().read(visit.toString());
    }

    /** The case judged; its twin for a customer who reads Spanish is held against it. */
    Examination examined() {
        var examined = Examination.of(record(), LIBRARY);
        SpanishTwin.check(examined);
        return examined;
    }

    Finding.Settled settled() {
        return examined()
                .finding()
                .match(
                        settled -> settled,
                        unsettled -> {
                            throw new AssertionError("not settled: " + unsettled.next() + unsettled.conflicts()
                                    + unsettled.candidates());
                        },
                        danger -> {
                            throw new AssertionError("stopped: " + danger.dangers());
                        });
    }

    Finding.Unsettled unsettled() {
        return examined()
                .finding()
                .match(
                        settled -> {
                            throw new AssertionError("settled: " + settled.causes());
                        },
                        unsettled -> unsettled,
                        danger -> {
                            throw new AssertionError("stopped: " + danger.dangers());
                        });
    }

    Finding.StopWork stopped() {
        return examined()
                .finding()
                .match(
                        settled -> {
                            throw new AssertionError("settled: " + settled.causes());
                        },
                        unsettled -> {
                            throw new AssertionError("not settled: " + unsettled.next());
                        },
                        danger -> danger);
    }

    Quote quote() {
        return new QuoteMaking(LIBRARY).quote(examined(), "Q-2026-0001", 1, DAY);
    }

    static List<String> work(Choice choice) {
        return choice.work().stream().map(work -> work.task()).toList();
    }

    static List<String> notes(Quote quote, Choice choice) {
        return quote.notes(choice).stream().map(note -> note.rule()).toList();
    }
}
