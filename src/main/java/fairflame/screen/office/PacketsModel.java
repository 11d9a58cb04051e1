package fairflame.screen.office;

import fairflame.Refusal;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.visit.Handoff;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Packets from and to other laptops, without a window. */
public final class PacketsModel {
    private final OfficeWork work;
    private final LongWork runner;
    private final Typed file = new Typed("");
    private final Typed laptop;
    private final Typed series = new Typed("");
    private final StringProperty written = new SimpleStringProperty("");
    private final StringProperty named;
    private final ObjectProperty<Optional<Handoff.Taken>> taken = new SimpleObjectProperty<>(Optional.empty());
    private final Map<Integer, Typed> settlements = new HashMap<>();
    private List<Handoff.Conflict> conflicts;
    private final IntegerProperty changes = new SimpleIntegerProperty();

    public PacketsModel(OfficeWork work, LongWork runner) {
        this.work = work;
        this.runner = runner;
        this.named = new SimpleStringProperty(work.laptop());
        this.laptop = new Typed(named.get());
        this.conflicts = work.conflicts();
    }

    /** The packet to take in. */
    public Typed file() {
        return file;
    }

    public Typed laptop() {
        return laptop;
    }

    public Typed series() {
        return series;
    }

    /** Name of this laptop as it is kept; empty until it was told. */
    public StringProperty named() {
        return named;
    }

    /** Place of the packet made here; empty until it is written. */
    public StringProperty written() {
        return written;
    }

    /** What the last packet did. */
    public ObjectProperty<Optional<Handoff.Taken>> taken() {
        return taken;
    }

    public List<Handoff.Conflict> conflicts() {
        return conflicts;
    }

    /** Counts up when the conflicts have changed. */
    public IntegerProperty changes() {
        return changes;
    }

    /** What is to be said about a conflict. */
    public Typed settlement(int number) {
        return settlements.computeIfAbsent(number, key -> new Typed(""));
    }

    /** Takes the packet in, all of it or nothing. */
    public void take() {
        taken.set(Optional.empty());
        file.path("packet")
                .ifPresent(path -> runner.run(
                        "take",
                        progress -> work.take(path, progress),
                        done -> {
                            taken.set(Optional.of(done));
                            read();
                        },
                        Ended.in(file.refusal())));
    }

    private void read() {
        conflicts = work.conflicts();
        changes.set(changes.get() + 1);
    }

    /** Names this laptop. */
    public void name() {
        try {
            work.name(laptop.text(), series.text());
            laptop.refusal().set("");
            named.set(work.laptop());
        } catch (Refusal refused) {
            (refused.what().startsWith("series") ? series : laptop).refusal().set(refused.getMessage());
        }
    }

    /** Writes the packet of this laptop. */
    public void export() {
        written.set("");
        runner.run("export", progress -> work.export().toString(), written::set, Ended.in(laptop.refusal()));
    }

    /** Keeps what a person says about a conflict. */
    public void settle(int number) {
        try {
            work.settle(number, settlement(number).text());
            read();
        } catch (Refusal refused) {
            settlement(number).refusal().set(refused.getMessage());
        }
    }
}
