package fairflame.screen.file;

import fairflame.catalog.PermitNeed;
import fairflame.invoice.Invoice;
import fairflame.invoice.permit.PermitState;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.VBox;

/** The cards of a signed job, one section of them at a time. */
public final class FileCards extends VBox {
    private static final double GAP = 14;

    private final FileModel file;
    private final Words words;
    private final Consumer<Invoice> paper;
    private final long leadsPlaced;

    /**
     * The cards of a file.
     *
     * @param paper writes an invoice or credit note as paper
     * @param leadsPlaced bypass leads not recorded as removed
     */
    public FileCards(FileModel file, Words words, long leadsPlaced, Consumer<Invoice> paper) {
        super(GAP);
        this.file = file;
        this.words = words;
        this.paper = paper;
        this.leadsPlaced = leadsPlaced;
    }

    /** The sections that this job has. */
    public List<Section> sections() {
        var all = new ArrayList<>(List.of(Section.values()));
        var permit = file.job().permit();
        var duties = file.job().agreed().duties();
        if (permit.need() == PermitNeed.NO && permit.permit().state() == PermitState.NEEDED && !duties.regulatedGas()) {
            all.remove(Section.PERMIT);
        }
        return all;
    }

    /** Shows one section. */
    public void show(Section section) {
        getChildren().clear();
        switch (section) {
            case WORK -> getChildren().add(new WorkCard(file, words));
            case PERMIT -> permit();
            case DAYS -> getChildren().add(new DaysCard(file, words));
            case CHANGE -> getChildren().add(new ChangeCard(file, words));
            case BILL -> bills();
            case MONEY -> getChildren().add(new MoneyCard(file, words));
            case WARRANTY -> getChildren().add(new WarrantyCard(file, words));
        }
    }

    private void permit() {
        var model = new PermitModel(file);
        getChildren().add(new PermitCard(model, words));
        if (model.gasIsDone()) {
            var licence = file.job().agreed().signed().quote().rules().gasLicence();
            getChildren().add(new GasCard(model, licence, words));
        }
    }

    private void bills() {
        var model = new BillModel(file, leadsPlaced);
        var items = file.job().account().items();
        for (int i = items.size() - 1; i >= 0; i--) {
            getChildren().add(new InvoiceCard(new InvoiceModel(file, items.get(i)), words, paper));
        }
        var waits = model.open().stream().anyMatch(line -> !file.job().credited(line));
        if (items.isEmpty() || waits) {
            getChildren().add(new BillCard(model, words));
        }
    }
}
