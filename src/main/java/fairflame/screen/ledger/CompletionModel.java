package fairflame.screen.ledger;

import fairflame.Refusal;
import fairflame.invoice.Completion;
import fairflame.invoice.PressureTest;
import fairflame.invoice.TestRecord;
import fairflame.quote.Choice;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What was done and tested, as it is typed before an invoice. Nothing is passed before somebody says so. */
public final class CompletionModel {
    private static final List<String> FIELDS =
            List.of("permit", "fitter", "licence", "psi", "minutes", "gauge", "medium", "witness");

    private final Map<String, StringProperty> typed = new LinkedHashMap<>();
    private final Map<String, StringProperty> results = new LinkedHashMap<>();
    private final Map<String, BooleanProperty> passed = new LinkedHashMap<>();
    private final BooleanProperty held = new SimpleBooleanProperty(false);
    private final Choice choice;
    private final long leadsPlaced;

    /** A record for a signed choice. */
    public CompletionModel(Choice choice, long leadsPlaced) {
        this.choice = choice;
        this.leadsPlaced = leadsPlaced;
        FIELDS.forEach(field -> typed.put(field, new SimpleStringProperty("")));
        choice.tests().forEach(test -> {
            results.put(test, new SimpleStringProperty(""));
            passed.put(test, new SimpleBooleanProperty(false));
        });
    }

    public Choice choice() {
        return choice;
    }

    /** One of permit, fitter, licence, psi, minutes, gauge, medium, witness. */
    public StringProperty typed(String field) {
        return typed.computeIfAbsent(field, key -> new SimpleStringProperty(""));
    }

    /** What a test read, by its letter. */
    public StringProperty result(String test) {
        return results.computeIfAbsent(test, key -> new SimpleStringProperty(""));
    }

    public BooleanProperty passed(String test) {
        return passed.computeIfAbsent(test, key -> new SimpleBooleanProperty(false));
    }

    /** Whether the pressure test held. */
    public BooleanProperty held() {
        return held;
    }

    public boolean gas() {
        return choice.duties().regulatedGas();
    }

    public boolean pressureTest() {
        return choice.duties().pressureTest();
    }

    /** The record; refused when a number cannot be read. */
    public Completion record() {
        var tests = new LinkedHashMap<String, TestRecord>();
        passed.forEach((test, ok) -> {
            if (ok.get() || !result(test).get().isBlank()) {
                tests.put(test, new TestRecord(ok.get(), result(test).get().strip()));
            }
        });
        return new Completion(text("permit"), text("fitter"), text("licence"), tests, pressure(), leadsPlaced == 0);
    }

    private Optional<PressureTest> pressure() {
        if (!pressureTest() || text("psi").isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PressureTest(
                number("psi"),
                number("minutes").intValue(),
                number("gauge"),
                text("medium"),
                text("witness"),
                held.get()));
    }

    private String text(String field) {
        return typed(field).get().strip();
    }

    private BigDecimal number(String field) {
        if (!text(field).matches("\\d{1,6}(\\.\\d{1,3})?")) {
            throw Refusal.malformed(field, text(field), "a number");
        }
        return new BigDecimal(text(field));
    }
}
