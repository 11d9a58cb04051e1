package fairflame.agreement;

import static fairflame.agreement.DemoAgreements.AT;
import static fairflame.agreement.DemoAgreements.BOTH;
import static fairflame.agreement.DemoAgreements.CONSENT;
import static fairflame.agreement.DemoAgreements.FIRST;
import static fairflame.agreement.DemoAgreements.act;
import static fairflame.quote.DemoQuotes.SWITCHES;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.quote.DemoQuotes;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SigningTest {
    private static final Map<String, String> NOT_ONE = Map.of("one", "no, thank you");

    private static void refused(String words, SigningAct act) {
        refused(words, act, FIRST);
    }

    private static void refused(String words, SigningAct act, Standing standing) {
        assertThatThrownBy(() -> new Signing(CONSENT).sign(SWITCHES, "both", act, standing))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(words);
    }

    @Test
    void theSignatureKeepsNameRoleTimeAndTheExactWords() {
        assertThat(BOTH.signature().name()).isEqualTo("Ida Brandt");
        assertThat(BOTH.signature().at()).isEqualTo(AT);
        assertThat(BOTH.signature().consent())
                .startsWith(
                        "I have read this quote and authorise the work under \"Choice both\" for 389.86 USD, tax included.")
                .contains("sign on a screen");
        assertThat(BOTH.taken().totals().total()).isEqualTo(usd("389.86"));
    }

    @Test
    void theChoiceNotTakenIsKeptWithItsPriceAndTheCustomersWord() {
        assertThat(BOTH.declined()).singleElement().satisfies(declined -> {
            assertThat(declined.choice()).isEqualTo("one");
            assertThat(declined.total()).isEqualTo(usd("293.80"));
            assertThat(declined.acknowledgement()).isEqualTo("I do not want only one.");
        });
        assertThat(CONSENT.decline(SWITCHES, SWITCHES.choice("one"))).contains("\"Choice one\" for 293.80 USD");
    }

    @Test
    void aDiagnosisMayBeSignedToo() {
        var quote = DemoQuotes.quoting(DemoQuotes.request()).diagnosisOnly(DemoQuotes.UNSETTLED);
        var signed = DemoAgreements.sign(quote, "diagnosis", Map.of());
        assertThat(signed.signature().consent()).contains("authorise the diagnosis for 209.00 USD");
        assertThat(Sealing.verify(signed)).isEmpty();
    }

    @Test
    void anExpiredQuoteIsNotSigned() {
        // Made 20 November, valid for 30 days.
        var last = OffsetDateTime.parse("2026-12-20T23:59:59-05:00");
        assertThat(new Signing(CONSENT).sign(SWITCHES, "both", act(last, NOT_ONE), FIRST))
                .isNotNull();
        refused("expired on 2026-12-20", act(OffsetDateTime.parse("2026-12-21T00:00:00-05:00"), NOT_ONE));
        refused("time of signing", act(OffsetDateTime.parse("2026-11-19T23:59:59-05:00"), NOT_ONE));
    }

    @Test
    void anOldRevisionAndASecondSignatureAreRefused() {
        refused("revision 1 'an old revision'", act(NOT_ONE), new Standing(2, false, Sealing.START));
        refused("signed already", act(NOT_ONE), new Standing(1, true, Sealing.START));
    }

    @Test
    void consentIsGivenByActsOfItsOwn() {
        refused("consent to 'authorise'", accepted(SigningAct.ELECTRONIC));
        refused("consent to 'electronic'", accepted(SigningAct.AUTHORISE));
        refused("consent to 'authorise'", accepted());
    }

    private static SigningAct accepted(String... texts) {
        return new SigningAct("Ida Brandt", "owner", AT, Set.of(texts), NOT_ONE, List.of(), "");
    }

    private static SigningAct by(String name, String role, List<List<Integer>> strokes) {
        return new SigningAct(
                name, role, AT, Set.of(SigningAct.AUTHORISE, SigningAct.ELECTRONIC), NOT_ONE, strokes, "T. Ostrow");
    }

    @Test
    void nameRoleAndStrokesHaveToBeReal() {
        refused("typed name", by("  ", "owner", List.of()));
        refused("typed name", by("a\nb", "owner", List.of()));
        refused("typed name", by("x".repeat(121), "owner", List.of()));
        refused("agent, owner, tenant", by("Ida", "neighbour", List.of()));
        refused("stroke", by("Ida", "owner", List.of(List.of(1, 2, 3))));
        refused("stroke", by("Ida", "owner", List.of(List.of())));
        refused("stroke", by("Ida", "owner", List.of(List.of(1, -2))));
        refused("stroke", by("Ida", "owner", List.of(List.of(1, 10_001))));
        var typed =
                new Signing(CONSENT).sign(SWITCHES, "both", by(" Ida ", "tenant", List.of(List.of(0, 10_000))), FIRST);
        assertThat(typed.signature().name()).isEqualTo("Ida");
    }

    @Test
    void everyOtherChoiceHasToBeDeclinedInWords() {
        refused("the customer's word on choice 'one'", act(Map.of()));
        refused("the customer's word on choice 'one'", act(Map.of("one", " ")));
        refused("taken and declined", act(Map.of("one", "no", "both", "no")));
        refused("choice 'three'", act(Map.of("one", "no", "three", "no")));
        assertThatThrownBy(() -> new Signing(CONSENT).sign(SWITCHES, "three", act(NOT_ONE), FIRST))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("both, one");
    }

    @Test
    void theWordsOfConsentHaveToBeWhole() {
        var yaml = DemoQuotes.template("consent.yaml");
        assertThatThrownBy(() -> ConsentText.parse(yaml.replace("{total}", "{sum}")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("{sum}");
        assertThatThrownBy(() -> ConsentText.parse("authorise: x")).isInstanceOf(Refusal.class);
    }
}
