package fairflame.screen.file;

import fairflame.invoice.PressureTest;
import fairflame.invoice.permit.GasWork;
import fairflame.invoice.permit.PermitState;
import fairflame.invoice.permit.PermitStep;
import fairflame.visit.Permits;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The permit's next step and the gas work, as they are typed in. */
public final class PermitModel {
    /** Test media that the code allows (IFGC 406.2), as they are recorded. */
    static final List<String> MEDIA = List.of("air", "nitrogen", "carbon dioxide", "inert gas");

    private final FileModel file;
    private final Form step = new Form();
    private final Form gas = new Form();
    private final ObjectProperty<Optional<PermitState>> to = new SimpleObjectProperty<>(Optional.empty());
    private final StringProperty medium = new SimpleStringProperty(MEDIA.get(0));
    private final BooleanProperty held = new SimpleBooleanProperty(false);

    public PermitModel(FileModel file) {
        this.file = file;
        var today = file.work().today().toString();
        step.with("permit-on", today)
                .with("permit-by", file.work().who())
                .beside("number of the permit", "permit-number")
                .beside("day of the inspection", "permit-day")
                .beside("day of the step", "permit-on")
                .beside("who reports", "permit-by")
                .beside("reason of the failure", "permit-words")
                .beside("who said", "permit-words");
        gas.with("gas-on", today).beside("licensed gas fitter", "gas-licence").beside("gas work on", "gas-ends");
        entry().gasWork().ifPresent(this::known);
        var next = nextSteps();
        if (next.size() == 1) {
            to.set(Optional.of(next.get(0)));
        }
    }

    private void known(GasWork work) {
        gas.with("gas-on", work.on().toString())
                .with("gas-fitter", work.fitter())
                .with("gas-licence", work.licence())
                .with("gas-ends", work.licenceEnds().toString());
        work.test().ifPresent(test -> {
            gas.with("gas-psi", ActualModel.plain(test.psi()))
                    .with("gas-minutes", String.valueOf(test.minutes()))
                    .with("gas-gauge", ActualModel.plain(test.gaugeTopPsi()))
                    .with("gas-witness", test.witness());
            medium.set(test.medium());
            held.set(test.held());
        });
    }

    public Permits.Entry entry() {
        return file.job().permit();
    }

    /** Whether the work is regulated gas work. */
    public boolean gasIsDone() {
        return file.job().agreed().duties().regulatedGas();
    }

    /** Whether new gas piping has to be pressure-tested. */
    public boolean tested() {
        return file.job().agreed().duties().pressureTest();
    }

    /** The steps that may follow now. */
    public List<PermitState> nextSteps() {
        return entry().permit().state().next().stream().sorted().toList();
    }

    /** The step that was chosen. */
    public ObjectProperty<Optional<PermitState>> to() {
        return to;
    }

    public Form step() {
        return step;
    }

    public Form gas() {
        return gas;
    }

    public StringProperty medium() {
        return medium;
    }

    /** Whether the pressure held. */
    public BooleanProperty held() {
        return held;
    }

    /** Takes the chosen step. */
    public boolean take() {
        return file.act(step, "file.said.permit", () -> {
            var state = to.get().orElseThrow(() -> fairflame.Refusal.missing("next step", "one of the steps"));
            file.work()
                    .permit(
                            file.quote(),
                            new PermitStep(
                                    step.day("permit-on"),
                                    state,
                                    step.words("permit-by"),
                                    step.text("permit-number"),
                                    step.dayIfAny("permit-day"),
                                    step.text("permit-words")));
        });
    }

    /** Keeps who did the gas work, and the pressure test. */
    public boolean keepGas() {
        return file.act(
                gas,
                "file.said.gas",
                () -> file.work()
                        .gasWork(
                                file.quote(),
                                new GasWork(
                                        file.quote(),
                                        entry().permit().revision(),
                                        gas.day("gas-on"),
                                        gas.words("gas-fitter"),
                                        gas.words("gas-licence"),
                                        gas.day("gas-ends"),
                                        test())));
    }

    private Optional<PressureTest> test() {
        if (!tested() || gas.isBlank("gas-psi")) {
            return Optional.empty();
        }
        return Optional.of(new PressureTest(
                gas.number("gas-psi"),
                gas.whole("gas-minutes"),
                gas.number("gas-gauge"),
                medium.get(),
                gas.text("gas-witness"),
                held.get()));
    }
}
