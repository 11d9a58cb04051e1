package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.agreement.OnPaper;
import fairflame.agreement.SigningAct;
import fairflame.document.AnswerSheet;
import fairflame.document.PaperIdentity;
import fairflame.document.returned.ReturnedPaper;
import fairflame.quote.Quote;
import fairflame.store.Attachment;
import fairflame.store.Records;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads a paper that a customer who was away filled in and sent back, and seals what it says. */
public final class PaperReturn {
    private static final int BRIEF = 12;

    private final Workplace workplace;
    private final Progress progress;

    public PaperReturn(Workplace workplace) {
        this(workplace, Progress.UNWATCHED);
    }

    /** As it is watched: ended before all papers are made, it keeps nothing. */
    public PaperReturn(Workplace workplace, Progress progress) {
        this.workplace = workplace;
        this.progress = progress;
    }

    /** What a returned paper led to. */
    public sealed interface Outcome {
        <T> T match(Function<Ordered, T> ordered, Function<NoneTaken, T> none);
    }

    /** A choice was taken: it is signed and sealed. */
    public record Ordered(Agreeing.Result result) implements Outcome {
        @Override
        public <T> T match(Function<Ordered, T> ordered, Function<NoneTaken, T> none) {
            return ordered.apply(this);
        }
    }

    /** None of the choices is wanted; the paper is kept with the visit. */
    public record NoneTaken(String quote, String name, LocalDate dated, String file) implements Outcome {
        @Override
        public <T> T match(Function<Ordered, T> ordered, Function<NoneTaken, T> none) {
            return none.apply(this);
        }
    }

    /**
     * Reads a file. Refused, and nothing stored: no PDF, protected, too large, altered in anything but its fields, of an
     * unknown, old, signed or expired revision, and fields that are empty or contradict each other.
     *
     * @param number of the quote it has to be of; empty for any
     */
    public Outcome read(String number, Path file) {
        try {
            return read(number, bytes(file));
        } catch (Refusal refusal) {
            throw refusal.at(String.valueOf(file.getFileName()));
        }
    }

    private static byte[] bytes(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw Refusal.unusable("returned paper", file, "a file, not a folder");
            }
            if (Files.size(file) > ReturnedPaper.MOST_BYTES) {
                throw Refusal.outOfRange("returned paper", Files.size(file) + " bytes", "at most 20 MiB");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw Refusal.unusable("returned paper", file, "a file that can be read (" + e.getMessage() + ")");
        }
    }

    private Outcome read(String number, byte[] bytes) {
        var paper = ReturnedPaper.open(bytes);
        var identity = paper.identity();
        if (!number.isEmpty() && !identity.quote().equals(number)) {
            throw Refusal.notAllowed("returned paper", "of quote " + identity.quote(), "a paper of quote " + number);
        }
        var kept = workplace.store().reading(records -> kept(records, identity));
        paper.proveAgainst(kept.sent());
        refuseUnlessCurrent(identity, kept);
        var said = PaperAnswers.read(paper.answers(), kept.quote(), workplace.today());
        refuseOtherWords(ReturnedPaper.open(kept.sent()), kept.quote());
        return store(kept.quote(), said, bytes);
    }

    /** What is here of a paper: its quote, the latest revision, and the bytes that were sent. */
    @SuppressWarnings("ArrayRecordComponent") // handed straight on, never compared
    private record Kept(Quote quote, int latest, boolean signed, byte[] sent) {}

    private static Kept kept(Records records, PaperIdentity identity) {
        var revisions = records.quotes().revisions(identity.quote());
        var quote = revisions.stream()
                .filter(each -> each.revision() == identity.revision())
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "quote on the returned paper",
                        identity.quote() + " revision " + identity.revision(),
                        "a revision that is kept here"));
        var sent = records.attachments()
                .find(quote.visit(), identity.paper())
                .orElseThrow(() -> Refusal.unknown(
                        "returned paper", identity.paper(), "a paper that was written here for " + quote.number()));
        var latest = revisions.stream().mapToInt(Quote::revision).max().orElse(quote.revision());
        var signed = records.agreements().find(quote.number(), quote.revision()).isPresent();
        return new Kept(quote, latest, signed, sent.bytes());
    }

    private void refuseUnlessCurrent(PaperIdentity identity, Kept kept) {
        var quote = kept.quote();
        var subject = "paper of " + quote.number() + " revision " + quote.revision();
        if (!identity.digest().equals(AwayPaper.digest(CanonicalForm.write(quote)))) {
            throw Refusal.notAllowed(subject, "digest " + identity.digest(), "the digest of the quote kept here");
        }
        if (kept.signed()) {
            throw Refusal.notAllowed(subject, "signed already", "a quote that is not signed yet");
        }
        if (quote.revision() != kept.latest()) {
            throw Refusal.notAllowed(
                    subject, "superseded by revision " + kept.latest(), "a paper of the latest revision");
        }
        if (workplace.today().isAfter(quote.validUntil())) {
            throw Refusal.notAllowed(subject, "expired on " + quote.validUntil(), "a new revision with today's prices");
        }
    }

    /** The words that are sealed have to be the words that were ticked. */
    private void refuseOtherWords(ReturnedPaper sent, Quote quote) {
        var agreeing = new Agreeing(workplace);
        var words = new LinkedHashMap<String, String>();
        agreeing.declines(quote, "").forEach((id, text) -> words.put(AnswerSheet.decline(id), text));
        for (var choice : quote.choices()) {
            var consent = agreeing.consent(quote, choice.id());
            words.put(AnswerSheet.order(choice.id()), consent.get(0));
            words.put(AnswerSheet.ELECTRONIC, consent.get(1));
        }
        words.forEach((field, text) -> {
            if (!sent.told(field).equals(text)) {
                throw Refusal.notAllowed(
                        "words of field '" + field + "'", "not those of today", "a new paper with the words of today");
            }
        });
    }

    private Outcome store(Quote quote, PaperAnswers said, byte[] bytes) {
        var digest = AwayPaper.digest(bytes);
        var name = quote.number() + "-r" + quote.revision() + "-returned-" + digest.substring(0, BRIEF) + ".pdf";
        var file = new Attachment(quote.visit(), name, bytes);
        if (said.choice().isEmpty()) {
            progress.look();
            workplace.store().change(workplace.by(), records -> {
                records.attachments().add(file);
                records.audit().note("paper returned, none of the choices taken", quote.number());
            });
            return new NoneTaken(quote.number(), said.name(), said.dated(), name);
        }
        var act = act(quote, said, new OnPaper(said.dated(), workplace.today(), name, digest));
        return new Ordered(new Agreeing(workplace, progress)
                .sign(
                        quote.number(),
                        said.choice().get(),
                        act,
                        records -> records.attachments().add(file)));
    }

    private SigningAct act(Quote quote, PaperAnswers said, OnPaper paper) {
        Map<String, String> declined =
                new Agreeing(workplace).declines(quote, said.choice().orElse(""));
        return new SigningAct(
                said.name(),
                said.role(),
                workplace.now(),
                Set.of(SigningAct.AUTHORISE, SigningAct.ELECTRONIC),
                declined,
                List.of(),
                workplace.who(),
                Optional.of(paper));
    }
}
