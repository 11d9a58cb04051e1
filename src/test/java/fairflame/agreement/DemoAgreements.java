package fairflame.agreement;

import fairflame.quote.DemoQuotes;
import fairflame.quote.Quote;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Signatures of the demo by hand. People are invented for the demo. */
public final class DemoAgreements {
    public static final ConsentText CONSENT = ConsentText.parse(DemoQuotes.template("consent.yaml"));
    public static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-20T10:15:00-05:00");
    public static final Standing FIRST = new Standing(1, false, Sealing.START);

    private DemoAgreements() {}

    public static SigningAct act(Map<String, String> declined) {
        return act(AT, declined);
    }

    public static SigningAct act(OffsetDateTime at, Map<String, String> declined) {
        return new SigningAct(
                "Ida Brandt",
                "owner",
                at,
                Set.of(SigningAct.AUTHORISE, SigningAct.ELECTRONIC),
                declined,
                List.of(List.of(10, 20, 30, 40)),
                "T. Ostrow");
    }

    public static SignedRevision sign(Quote quote, String choice, Map<String, String> declined) {
        return new Signing(CONSENT).sign(quote, choice, act(declined), FIRST);
    }

    public static final SignedRevision BOTH =
            sign(DemoQuotes.SWITCHES, "both", Map.of("one", "I do not want only one."));
}
