package fairflame.document;

import fairflame.Refusal;
import jakarta.activation.DataHandler;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.internet.MimeUtility;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.Date;
import java.util.List;
import java.util.Properties;

/**
 * An e-mail that is not sent yet (RFC 5322, MIME), for the sender's own mail program to open, look at and send. The
 * same letter gives the same bytes.
 */
public final class MailDraft {
    private MailDraft() {}

    /** A name and an address; both may be empty for the receiver, whom the sender then fills in. */
    public record Party(String name, String address) {}

    /**
     * What is written.
     *
     * @param at stands as the date of the draft
     * @param attached PDF files
     */
    public record Letter(
            Party from, Party to, String subject, String text, OffsetDateTime at, List<Attached> attached) {
        public Letter {
            attached = List.copyOf(attached);
        }
    }

    /** A PDF file that goes along. */
    @SuppressWarnings("ArrayRecordComponent") // handed straight on, never compared
    public record Attached(String name, byte[] pdf) {}

    /**
     * The bytes of the draft.
     *
     * @throws Refusal when an address is not one
     */
    public static byte[] write(Letter letter) {
        try {
            var message = new Draft(letter);
            message.saveChanges();
            var out = new ByteArrayOutputStream();
            message.writeTo(out);
            return out.toByteArray();
        } catch (MessagingException | IOException e) {
            throw new IllegalStateException("a letter in memory cannot be written", e);
        }
    }

    private static InternetAddress address(String role, Party party) {
        try {
            var address = new InternetAddress(party.address(), true);
            if (!party.name().isBlank()) {
                address.setPersonal(oneLine(party.name()), StandardCharsets.UTF_8.name());
            }
            return address;
        } catch (MessagingException e) {
            throw Refusal.malformed("e-mail address of the " + role, party.address(), "such as name@example.com");
        } catch (java.io.UnsupportedEncodingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A line break would start a header of its own. */
    private static String oneLine(String text) {
        return text.replaceAll("[\\r\\n]+", " ").strip();
    }

    /** A message whose identity and borders come from what it says, not from clock, chance or machine. */
    private static final class Draft extends MimeMessage {
        Draft(Letter letter) throws MessagingException {
            super(Session.getInstance(new Properties()));
            setFrom(address("sender", letter.from()));
            if (!letter.to().address().isBlank()) {
                setRecipient(RecipientType.TO, address("receiver", letter.to()));
            }
            setSubject(oneLine(letter.subject()), StandardCharsets.UTF_8.name());
            setSentDate(Date.from(letter.at().toInstant()));
            // Mail programs that know this mark open the message for writing instead of as received.
            setHeader("X-Unsent", "1");
            setContent(new Parts(letter));
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            // The program that sends the letter gives it one.
            removeHeader("Message-ID");
        }
    }

    /** Text first, then the files. */
    private static final class Parts extends MimeMultipart {
        Parts(Letter letter) throws MessagingException {
            super("mixed");
            contentType = "multipart/mixed; boundary=\"=_letter-of-a-shop\"";
            var text = new MimeBodyPart();
            text.setText(letter.text().replaceAll("\\R", "\r\n"), StandardCharsets.UTF_8.name());
            addBodyPart(text);
            for (var file : letter.attached()) {
                var part = new MimeBodyPart();
                part.setDataHandler(new DataHandler(new ByteArrayDataSource(file.pdf(), "application/pdf")));
                part.setFileName(encoded(file.name()));
                part.setHeader("Content-Transfer-Encoding", "base64");
                addBodyPart(part);
            }
        }

        private static String encoded(String name) {
            try {
                return MimeUtility.encodeText(oneLine(name), StandardCharsets.UTF_8.name(), null);
            } catch (java.io.UnsupportedEncodingException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
