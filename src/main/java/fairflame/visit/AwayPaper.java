package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.document.AnswerSheet;
import fairflame.document.MailDraft;
import fairflame.document.PaperIdentity;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import fairflame.store.Attachment;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The paper for a customer who is away: a quote whose last part is filled in on the file itself and sent back. */
public final class AwayPaper {
    private final Workplace workplace;
    private final String language;
    private final Progress progress;

    /**
     * The papers of a shop.
     *
     * @param language of headings and labels; empty for that of the quote, in which its words and promises always are
     * @param progress ends the work before anything is kept
     */
    public AwayPaper(Workplace workplace, String language, Progress progress) {
        this.workplace = workplace;
        this.language = language;
        this.progress = progress;
    }

    /** The paper and the e-mail draft that carries it. */
    public record Written(String quote, int revision, Path paper, Path mail) {}

    /**
     * Writes the paper of a quote's latest revision and an e-mail draft with it attached. What is sent is kept with the
     * visit, to hold the returned paper against. Refused: a quote that is signed already or has expired.
     */
    public Written write(String number) {
        var quote = new Agreeing(workplace).quote(number);
        refuseUnlessOpen(quote);
        progress.at(0, 2);
        var file = kept(quote);
        var mail = file.name().replaceAll("\\.pdf$", ".eml");
        var files = new LinkedHashMap<String, byte[]>();
        files.put(file.name(), file.bytes());
        files.put(mail, draft(quote, file));
        workplace.folder().write(files);
        var folder = workplace.folder().path();
        return new Written(quote.number(), quote.revision(), folder.resolve(file.name()), folder.resolve(mail));
    }

    private byte[] draft(Quote quote, Attachment file) {
        return MailDraft.write(new MailDraft.Letter(
                new MailDraft.Party(quote.seller().name(), quote.seller().email()),
                new MailDraft.Party(quote.customer().name(), quote.customer().email()),
                quote.seller().name() + " " + quote.number(),
                quote.seller().name() + "\n" + quote.number() + "\n",
                workplace.now(),
                List.of(new MailDraft.Attached(file.name(), file.bytes()))));
    }

    private void refuseUnlessOpen(Quote quote) {
        var subject = "paper of " + quote.number() + " revision " + quote.revision();
        var signed = workplace.store().reading(records -> records.agreements().find(quote.number(), quote.revision()));
        if (signed.isPresent()) {
            throw Refusal.notAllowed(subject, "signed already", "a quote that is not signed yet");
        }
        if (workplace.today().isAfter(quote.validUntil())) {
            throw Refusal.notAllowed(subject, "expired on " + quote.validUntil(), "a new revision with today's prices");
        }
    }

    /** The file as it is kept: the same again, or, when words or language are others now, under the next number. */
    private Attachment kept(Quote quote) {
        for (int count = 1; ; count++) {
            var name = quote.number() + "-r" + quote.revision() + "-away-" + count + ".pdf";
            var bytes = new Papers(workplace, progress)
                    .away(quote, sheet(quote, name), language.isEmpty() ? quote.language() : language);
            var file = new Attachment(quote.visit(), name, bytes);
            progress.at(1, 2);
            var before =
                    workplace.store().reading(records -> records.attachments().find(quote.visit(), name));
            if (before.isEmpty()) {
                workplace
                        .store()
                        .change(workplace.by(), records -> records.attachments().add(file));
                return file;
            }
            if (Arrays.equals(before.get().bytes(), bytes)) {
                return file;
            }
        }
    }

    private AnswerSheet sheet(Quote quote, String name) {
        var identity = new PaperIdentity(quote.number(), quote.revision(), digest(CanonicalForm.write(quote)), name);
        var agreeing = new Agreeing(workplace);
        var electronic = agreeing.consent(quote, quote.choices().get(0).id()).get(1);
        return new AnswerSheet(identity, orders(agreeing, quote), agreeing.declines(quote, ""), electronic);
    }

    private static Map<String, String> orders(Agreeing agreeing, Quote quote) {
        return quote.choices().stream()
                .map(Choice::id)
                .collect(Collectors.toMap(
                        id -> id, id -> agreeing.consent(quote, id).get(0)));
    }

    /** SHA-256 in hexadecimal digits. */
    static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
