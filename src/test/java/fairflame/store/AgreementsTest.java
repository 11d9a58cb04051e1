package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.agreement.ChangeOrder;
import fairflame.agreement.Sealing;
import fairflame.agreement.SignedRevision;
import org.junit.jupiter.api.Test;

class AgreementsTest extends RecordsContract {
    @Test
    void aSignedRevisionComesBackAsItWasSigned() {
        var signed = signed();
        assertThat(seen().agreements().find("Q-2026-0001", 1)).contains(signed);
        assertThat(seen().agreements().latest("Q-2026-0001")).contains(signed);
        assertThat(seen().agreements().bytes("Q-2026-0001", 1))
                .hasValueSatisfying(bytes -> assertThat(bytes).isEqualTo(CanonicalForm.write(signed)));
        assertThat(seen().agreements().find("Q-2026-0001", 2)).isEmpty();
        assertThat(seen().agreements().latest("Q-2026-0002")).isEmpty();
    }

    @Test
    void sealsFollowEachOtherAcrossQuotesAndChangeOrders() {
        assertThat(seen().chain().last()).isEqualTo(Sealing.START).hasSize(64);
        var first = signed();
        var order = make(records -> {
            var made = Samples.changeOrder(
                    "Q-2026-0001", 1, first.seal().chain(), records.chain().last());
            records.changeOrders().add(made);
            return made;
        });
        var second = signed();

        assertThat(seen().chain().links())
                .containsExactly(
                        link(
                                1,
                                "Q-2026-0001 revision 1",
                                Sealing.START,
                                first.seal().chain()),
                        link(
                                2,
                                "Q-2026-0001-C1",
                                first.seal().chain(),
                                order.seal().chain()),
                        link(
                                3,
                                "Q-2026-0002 revision 1",
                                order.seal().chain(),
                                second.seal().chain()));
        assertThat(seen().agreements().all()).containsExactly(first, second);
        assertThat(seen().changeOrders().all()).containsExactly(order);
        assertThat(seen().changeOrders().find("Q-2026-0001-C1")).contains(order);
        assertThat(seen().changeOrders().of("Q-2026-0001", 1)).containsExactly(order);
        assertThat(seen().changeOrders().of("Q-2026-0002", 1)).isEmpty();
    }

    private static Chain.Link link(long position, String subject, String previous, String chain) {
        return new Chain.Link(position, subject, previous, chain, "");
    }

    @Test
    void signingTheSameAgainChangesNothing() {
        var signed = signed();
        change(records -> records.agreements().add(signed));
        assertThat(seen().chain().links()).hasSize(1);
        assertThat(seen().audit().about("Q-2026-0001 revision 1")).hasSize(2);
    }

    @Test
    void anotherSignatureUnderASignedRevisionIsRefused() {
        var signed = signed();
        var other = new SignedRevision(signed.quote(), "one", signed.declined(), signed.signature(), signed.seal());
        refused(other, "signed revision 'Q-2026-0001 revision 1 with other content'");
    }

    @Test
    void aQuoteThatIsNotStoredCannotBeSigned() {
        quoted();
        refused(Samples.signed(Samples.quote("Q-2026-0001", 2), Sealing.START), "a stored revision");
    }

    @Test
    void aQuoteThatWasChangedBeforeSigningIsRefused() {
        quoted();
        refused(
                Samples.signed(Samples.quote("Q-2026-0001", 1, "quietly altered"), Sealing.START),
                "the revision as it is stored");
    }

    @Test
    void aSealThatDoesNotFollowTheLastOneIsRefused() {
        signed();
        var second = quoted();
        refused(Samples.signed(second, Sealing.START), "a seal that follows the last one");
        assertThat(seen().agreements().all()).hasSize(1);
    }

    private void refused(SignedRevision signed, String reason) {
        assertThatThrownBy(() -> change(records -> records.agreements().add(signed)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(reason);
    }

    @Test
    void aChangeOrderNeedsASignedRevisionAndIsStoredOnce() {
        quoted();
        refused(order(1, Sealing.START), "a revision that is signed and stored");
        var signed = signed();
        assertThat(signed.quote().number()).isEqualTo("Q-2026-0002");
    }

    @Test
    void theSameChangeOrderAgainChangesNothingAndAnotherIsRefused() {
        var chain = signed().seal().chain();
        change(records -> records.changeOrders().add(order(1, chain)));
        change(records -> records.changeOrders().add(order(1, chain)));
        assertThat(seen().chain().links()).hasSize(2);
        refused(order(1, order(1, chain).seal().chain()), "change order 'Q-2026-0001-C1 with other content'");
        refused(order(2, chain), "a seal that follows the last one");
    }

    private static ChangeOrder order(int order, String previous) {
        return Samples.changeOrder("Q-2026-0001", order, previous, previous);
    }

    private void refused(ChangeOrder order, String reason) {
        assertThatThrownBy(() -> change(records -> records.changeOrders().add(order)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(reason);
    }

    @Test
    void bytesAlteredPastTheProgramAreRefusedAsAThingAndKeptAsProof() {
        signed();
        RawDatabase.run(
                store.file(),
                "drop trigger agreement_stays",
                "update agreement set body = cast(replace(cast(body as text), '103.71', '203.71') as blob)");
        assertThatThrownBy(() -> seen().agreements().find("Q-2026-0001", 1))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("stored SignedRevision");
        var bytes = seen().agreements().bytes("Q-2026-0001", 1).orElseThrow();
        assertThat(Sealing.verify(bytes)).isNotEmpty();
        assertThat(store.faults()).containsExactly("signed Q-2026-0001 revision 1: the content is not what was stored");
    }
}
