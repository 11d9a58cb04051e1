package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Random;
import org.apache.james.mime4j.dom.BinaryBody;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.dom.address.Mailbox;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.junit.jupiter.api.Test;

/** Drafts read back by Apache James Mime4j, which had no part in writing them (RFC 5322, RFC 2045 to 2047, RFC 2231). */
class MailDraftTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-04-14T10:30:00-05:00");
    private static final MailDraft.Party SHOP = new MailDraft.Party("Dune Heater Service", "office@dune.example");

    @Test
    void anotherLibraryReadsWhatWasWritten() throws IOException {
        var pdf = bytes(7, 70_000);
        var message = read(letter(
                new MailDraft.Party("Ñusta Peña, \"Owner\"", "nusta@example.com"),
                "Presupuesto Q-2026-0001 · límite de gas",
                "Señora Peña:\nLe enviamos su copia.\n",
                List.of(new MailDraft.Attached("Q-2026-0001-copia-señora.pdf", pdf))));

        assertThat(message.getFrom().get(0).getAddress()).isEqualTo("office@dune.example");
        var to = (Mailbox) message.getTo().get(0);
        assertThat(to.getName()).isEqualTo("Ñusta Peña, \"Owner\"");
        assertThat(to.getAddress()).isEqualTo("nusta@example.com");
        assertThat(message.getSubject()).isEqualTo("Presupuesto Q-2026-0001 · límite de gas");
        assertThat(message.getDate().toInstant()).isEqualTo(AT.toInstant());
        assertThat(message.getHeader().getField("X-Unsent").getBody()).isEqualTo("1");
        assertThat(message.getHeader().getField("Message-ID")).isNull();

        var parts = ((Multipart) message.getBody()).getBodyParts();
        assertThat(parts).hasSize(2);
        assertThat(text(parts.get(0))).isEqualToNormalizingNewlines("Señora Peña:\nLe enviamos su copia.\n");
        assertThat(parts.get(1).getMimeType()).isEqualTo("application/pdf");
        assertThat(parts.get(1).getDispositionType()).isEqualTo("attachment");
        assertThat(content(parts.get(1))).isEqualTo(pdf);
    }

    @Test
    void aLineBreakInANameStartsNoHeader() throws IOException {
        var message = read(letter(
                new MailDraft.Party("Ada\r\nBcc: thief@example.com", "ada@example.com"),
                "One\r\nBcc: thief@example.com",
                "text",
                List.of()));

        assertThat(message.getBcc()).isNull();
        assertThat(message.getSubject()).isEqualTo("One Bcc: thief@example.com");
        assertThat(message.getTo()).hasSize(1);
    }

    @Test
    void aReceiverWithoutAnAddressIsLeftToTheSender() throws IOException {
        assertThat(read(letter(new MailDraft.Party("Ada", ""), "One", "text", List.of()))
                        .getTo())
                .isNull();
    }

    @Test
    void anAddressThatIsNoneIsRefused() {
        for (var wrong : List.of("ada", "ada@", "@example.com", "a b@example.com", "ada@example.com\r\nBcc: x@y.z")) {
            assertThatThrownBy(() -> letter(new MailDraft.Party("Ada", wrong), "One", "text", List.of()))
                    .as(wrong)
                    .isInstanceOf(Refusal.Malformed.class)
                    .hasMessageContaining("e-mail address of the receiver");
        }
    }

    @Test
    void theSameLetterIsTheSameBytes() {
        var attached = List.of(new MailDraft.Attached("copy.pdf", bytes(3, 1000)));
        var to = new MailDraft.Party("Ada", "ada@example.com");
        assertThat(letter(to, "One", "text", attached)).isEqualTo(letter(to, "One", "text", attached));
    }

    @Test
    void everyLineEndsAsTheStandardAsks() {
        var text = new String(
                letter(
                        new MailDraft.Party("Ada", "ada@example.com"),
                        "One",
                        "a\nb\n",
                        List.of(new MailDraft.Attached("copy.pdf", bytes(5, 3000)))),
                StandardCharsets.US_ASCII);
        assertThat(text.replace("\r\n", "").matches("(?s).*[\r\n].*"))
                .as("a bare line end in the draft")
                .isFalse();
        // RFC 5322, 2.1.1: a line is at most 998 characters.
        assertThat(text.split("\r\n")).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(998));
    }

    private static byte[] letter(MailDraft.Party to, String subject, String text, List<MailDraft.Attached> attached) {
        return MailDraft.write(new MailDraft.Letter(SHOP, to, subject, text, AT, attached));
    }

    private static byte[] bytes(long seed, int size) {
        var bytes = new byte[size];
        new Random(seed).nextBytes(bytes);
        return bytes;
    }

    private static Message read(byte[] draft) throws IOException {
        return new DefaultMessageBuilder().parseMessage(new ByteArrayInputStream(draft));
    }

    private static String text(Entity part) throws IOException {
        var out = new ByteArrayOutputStream();
        ((TextBody) part.getBody()).getInputStream().transferTo(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static byte[] content(Entity part) throws IOException {
        var out = new ByteArrayOutputStream();
        ((BinaryBody) part.getBody()).getInputStream().transferTo(out);
        return out.toByteArray();
    }
}
