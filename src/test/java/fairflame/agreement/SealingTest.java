package fairflame.agreement;

import static fairflame.agreement.DemoAgreements.BOTH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.Refusal;
import fairflame.quote.DemoQuotes;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SealingTest {
    private static byte[] sealed() {
        return CanonicalForm.write(BOTH);
    }

    private static ObjectNode tree() {
        return (ObjectNode) CanonicalText.read(sealed());
    }

    private static List<String> verified(JsonNode tree) {
        return Sealing.verify(CanonicalText.write(tree)).stream()
                .map(Difference::toString)
                .toList();
    }

    @Test
    void whatWasSealedIsIntact() {
        assertThat(Sealing.verify(BOTH)).isEmpty();
        assertThat(Sealing.verify(sealed())).isEmpty();
        assertThat(CanonicalForm.read(SignedRevision.class, sealed())).isEqualTo(BOTH);
    }

    /** FIPS 180-4 example: SHA-256 of "abc". */
    @Test
    void theDigestIsSha256() {
        assertThat(FieldDigests.sha256("abc"))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void theSealIsTheDigestOfTheCanonicalBytesChainedToTheOneBefore() {
        var rest = tree();
        rest.remove("seal");
        var content = FieldDigests.sha256(CanonicalText.write(rest));
        assertThat(BOTH.seal().content()).isEqualTo(content);
        assertThat(BOTH.seal().chain()).isEqualTo(FieldDigests.sha256("0".repeat(64) + content));
        assertThat(BOTH.seal().brief()).hasSize(12);
    }

    @Test
    void theSealIsTheSameEveryTime() {
        var again = DemoAgreements.sign(DemoQuotes.SWITCHES, "both", Map.of("one", "I do not want only one."));
        assertThat(again.seal()).isEqualTo(BOTH.seal());
    }

    @Test
    void everySingleFieldIsNamedWhenItIsAltered() {
        var small = DemoAgreements.sign(
                DemoQuotes.quoting(DemoQuotes.request()).diagnosisOnly(DemoQuotes.UNSETTLED), "diagnosis", Map.of());
        var whole = (ObjectNode) CanonicalText.read(CanonicalForm.write(small));
        var paths = FieldDigests.of(whole).keySet().stream()
                .filter(path -> !path.startsWith("/seal/"))
                .toList();
        assertThat(paths).hasSizeGreaterThan(100);
        for (var path : paths) {
            var tree = whole.deepCopy();
            alter(tree, path);
            assertThat(verified(tree)).as(path).containsExactly(path + ": altered since it was sealed");
        }
    }

    private static void alter(ObjectNode tree, String path) {
        var cut = path.lastIndexOf('/');
        var parent = tree.at(path.substring(0, cut));
        var name = path.substring(cut + 1).replace("~1", "/").replace("~0", "~");
        var node = tree.at(path);
        if (parent instanceof ArrayNode array) {
            array.set(Integer.parseInt(name), array.textNode(node.asText() + "x"));
        } else if (node.isArray()) {
            ((ObjectNode) parent).putObject(name);
        } else if (node.isBoolean()) {
            ((ObjectNode) parent).put(name, !node.booleanValue());
        } else if (node.isNumber()) {
            ((ObjectNode) parent).put(name, node.intValue() + 1);
        } else {
            ((ObjectNode) parent).put(name, node.asText() + "x");
        }
    }

    @Test
    void aFieldTakenAwayOrAddedIsNamed() {
        var without = tree();
        ((ObjectNode) without.at("/quote")).remove("heater");
        assertThat(verified(without)).containsExactly("/quote/heater: sealed and now missing");
        var with = tree();
        ((ObjectNode) with.at("/quote")).put("colour", "red");
        assertThat(verified(with)).containsExactly("/quote/colour: not there when it was sealed");
        var line = tree();
        ((ArrayNode) line.at("/quote/choices/0/lines")).remove(4);
        assertThat(verified(line))
                .allMatch(words -> words.startsWith("/quote/choices/0/lines/4/"))
                .isNotEmpty();
    }

    @Test
    void everyPartOfTheSealIsNamedWhenItIsAltered() {
        for (var part : List.of("chain", "content", "previous")) {
            var tree = tree();
            ((ObjectNode) tree.at("/seal")).put(part, "f".repeat(64));
            assertThat(verified(tree)).as(part).containsExactly("/seal/" + part + ": altered since it was sealed");
        }
        var digest = tree();
        ((ObjectNode) digest.at("/seal/fields")).put("/choice", "0".repeat(64));
        assertThat(verified(digest)).containsExactly("/seal/fields/~1choice: altered since it was sealed");
        var removed = tree();
        ((ObjectNode) removed.at("/seal/fields")).remove("/choice");
        assertThat(verified(removed)).containsExactly("/seal/fields/~1choice: sealed and now missing");
        var added = tree();
        ((ObjectNode) added.at("/seal/fields")).put("/colour", "0".repeat(64));
        assertThat(verified(added)).containsExactly("/seal/fields/~1colour: not there when it was sealed");
        var before = tree();
        ((ObjectNode) before.at("/seal/fields")).put("/seal/previous", "0".repeat(64));
        assertThat(verified(before)).containsExactly("/seal/fields/~1seal~1previous: altered since it was sealed");
    }

    @Test
    void aSealThatIsNotWholeIsNamed() {
        var none = tree();
        none.remove("seal");
        assertThat(verified(none)).containsExactly("/seal: sealed and now missing");
        var part = tree();
        ((ObjectNode) part.at("/seal")).remove("chain");
        ((ObjectNode) part.at("/seal")).put("content", 7);
        ((ObjectNode) part.at("/seal")).put("stamp", "x");
        assertThat(verified(part))
                .containsExactly(
                        "/seal/chain: sealed and now missing",
                        "/seal/content: altered since it was sealed",
                        "/seal/stamp: not there when it was sealed");
    }

    @Test
    void rewritingAFieldAndItsDigestIsStillSeen() {
        var tree = tree();
        ((ObjectNode) tree.at("/signature")).put("name", "Someone Else");
        ((ObjectNode) tree.at("/seal/fields")).put("/signature/name", FieldDigests.sha256("\"Someone Else\""));
        assertThat(verified(tree)).containsExactly("/seal/content: altered since it was sealed");
        var rest = tree.deepCopy();
        rest.remove("seal");
        ((ObjectNode) tree.at("/seal")).put("content", Sealing.content(rest));
        assertThat(verified(tree)).containsExactly("/seal/chain: altered since it was sealed");
    }

    @Test
    void everySingleByteMatters() {
        var seed = 256L;
        var random = new Random(seed);
        var sealed = sealed();
        for (int i = 0; i < 300; i++) {
            var altered = sealed.clone();
            var at = random.nextInt(altered.length);
            altered[at] ^= (byte) (1 << random.nextInt(8));
            assertThat(Sealing.verify(altered))
                    .as("seed %d case %d byte %d", seed, i, at)
                    .isNotEmpty();
        }
    }

    @Test
    void theSameContentInOtherBytesIsToldApart() {
        var spaced = new String(sealed(), StandardCharsets.UTF_8).replaceFirst(":", ": ");
        assertThat(Sealing.verify(spaced.getBytes(StandardCharsets.UTF_8)))
                .extracting(Difference::toString)
                .containsExactly("the whole: same content, other bytes than were sealed");
        assertThat(Sealing.verify("[]".getBytes(StandardCharsets.UTF_8)))
                .extracting(Difference::kind)
                .containsExactly(Difference.Kind.UNREADABLE);
        assertThat(Sealing.verify(new byte[] {(byte) 0xff}))
                .extracting(Difference::kind)
                .containsExactly(Difference.Kind.UNREADABLE);
    }

    @Test
    void sealsFollowEachOther() {
        var seals = new ArrayList<Seal>();
        var previous = Sealing.START;
        for (int i = 0; i < 4; i++) {
            var signed = Sealing.seal(BOTH.quote(), "both", BOTH.declined(), BOTH.signature(), previous);
            seals.add(signed.seal());
            previous = signed.seal().chain();
        }
        assertThat(Sealing.verifyChain(seals)).isEmpty();
        assertThat(Sealing.verifyChain(List.of())).isEmpty();
        seals.remove(2);
        assertThat(Sealing.verifyChain(seals))
                .extracting(Difference::toString)
                .containsExactly("/2/seal/previous: does not follow the seal before it");
        seals.remove(0);
        assertThat(Sealing.verifyChain(seals)).extracting(Difference::path).contains("/0/seal/previous");
    }

    @Test
    void aChainValueHasSixtyFourDigits() {
        assertThatThrownBy(() -> Sealing.seal(BOTH.quote(), "both", List.of(), BOTH.signature(), "none"))
                .isInstanceOf(Refusal.Malformed.class);
    }
}
