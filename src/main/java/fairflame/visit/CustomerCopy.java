package fairflame.visit;

import fairflame.agreement.SignedRevision;
import fairflame.document.QuotePdf;
import fairflame.document.page.PageFormat;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;

/** The customer's copy, given at once: the signed paper in a folder, or an e-mail draft that carries it. */
public final class CustomerCopy {
    private static final int LINE = 76;
    private static final String BETWEEN = "=_copy-of-signed-paper";

    private final Workplace workplace;
    private final SignedRevision signed;
    private final String language;

    public CustomerCopy(Workplace workplace, SignedRevision signed, String language) {
        this.workplace = workplace;
        this.signed = signed;
        this.language = language;
    }

    /** Writes the paper and gives its place. */
    public Path paper() {
        var name = name() + ".pdf";
        workplace.folder().write(Map.of(name, pdf()));
        return workplace.folder().path().resolve(name);
    }

    /** Writes an e-mail (RFC 5322, MIME) that is not sent yet, the paper attached, and gives its place. */
    public Path mail() {
        var name = name() + ".eml";
        workplace.folder().write(Map.of(name, message().getBytes(StandardCharsets.US_ASCII)));
        return workplace.folder().path().resolve(name);
    }

    private String name() {
        return signed.quote().number() + "-copy";
    }

    private byte[] pdf() {
        return QuotePdf.write(
                signed.quote(), Optional.of(signed), workplace.library().paper(language), PageFormat.LETTER);
    }

    private String message() {
        var quote = signed.quote();
        var text = quote.seller().name() + "\n" + quote.number() + ", "
                + signed.seal().brief() + "\n";
        return String.join(
                "\r\n",
                "From: " + word(quote.seller().name()) + " <" + quote.seller().email() + ">",
                "To: " + word(signed.signature().name()) + " <"
                        + quote.customer().email() + ">",
                "Subject: " + word(quote.seller().name() + " " + quote.number()),
                // Mail programs that know this mark open the message for writing instead of as received.
                "X-Unsent: 1",
                "MIME-Version: 1.0",
                "Content-Type: multipart/mixed; boundary=\"" + BETWEEN + "\"",
                "",
                "--" + BETWEEN,
                "Content-Type: text/plain; charset=utf-8",
                "Content-Transfer-Encoding: base64",
                "",
                lines(text.getBytes(StandardCharsets.UTF_8)),
                "--" + BETWEEN,
                "Content-Type: application/pdf; name=\"" + name() + ".pdf\"",
                "Content-Disposition: attachment; filename=\"" + name() + ".pdf\"",
                "Content-Transfer-Encoding: base64",
                "",
                lines(pdf()),
                "--" + BETWEEN + "--",
                "");
    }

    private static String lines(byte[] bytes) {
        return Base64.getMimeEncoder(LINE, new byte[] {'\r', '\n'}).encodeToString(bytes);
    }

    /** Words in a header outside ASCII stand encoded (RFC 2047); a line break would start a header of its own. */
    private static String word(String text) {
        var plain = text.replaceAll("[\\r\\n]+", " ");
        return plain.chars().allMatch(c -> c >= ' ' && c < 127 && c != '"' && c != '<' && c != '>')
                ? "\"" + plain + "\""
                : "=?utf-8?B?" + Base64.getEncoder().encodeToString(plain.getBytes(StandardCharsets.UTF_8)) + "?=";
    }
}
