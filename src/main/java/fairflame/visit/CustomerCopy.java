package fairflame.visit;

import fairflame.agreement.SignedRevision;
import fairflame.document.MailDraft;
import fairflame.document.PaperPrinter;
import fairflame.store.OutputFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The customer's copy, given at once: the signed paper in a folder, or an e-mail draft that carries it. */
public final class CustomerCopy {
    private final Workplace workplace;
    private final SignedRevision signed;
    private final Progress progress;

    /** The copy of a signed revision; ended before it is written or printed, it is not. */
    public CustomerCopy(Workplace workplace, SignedRevision signed, Progress progress) {
        this.workplace = workplace;
        this.signed = signed;
        this.progress = progress;
    }

    /** Writes the paper into a folder, made when it is not there, and gives its place. */
    public Path paper(Path folder) {
        var name = name() + ".pdf";
        var pdf = pdf();
        OutputFolder.at(folder).write(Map.of(name, pdf));
        return folder.resolve(name);
    }

    /** Prints the paper and gives the printer's name; refused when this computer has none. Takes seconds. */
    public String print() {
        var printer = PaperPrinter.ofThisComputer();
        printer.print(name(), pdf());
        return printer.name();
    }

    /** Writes an e-mail (RFC 5322, MIME) that is not sent yet, the paper attached, and gives its place. */
    public Path mail() {
        var name = name() + ".eml";
        workplace.folder().write(Map.of(name, message()));
        return workplace.folder().path().resolve(name);
    }

    private String name() {
        return signed.quote().number() + "-copy";
    }

    private byte[] pdf() {
        progress.at(0, 2);
        var pdf = new Papers(workplace, progress).signedPdf(signed);
        progress.at(1, 2);
        return pdf;
    }

    private byte[] message() {
        var quote = signed.quote();
        return MailDraft.write(new MailDraft.Letter(
                new MailDraft.Party(quote.seller().name(), quote.seller().email()),
                new MailDraft.Party(signed.signature().name(), quote.customer().email()),
                quote.seller().name() + " " + quote.number(),
                quote.seller().name() + "\n" + quote.number() + ", "
                        + signed.seal().brief() + "\n",
                signed.signature().at(),
                List.of(new MailDraft.Attached(name() + ".pdf", pdf()))));
    }
}
