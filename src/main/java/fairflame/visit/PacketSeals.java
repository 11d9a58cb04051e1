package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.agreement.ChangeOrder;
import fairflame.agreement.Seal;
import fairflame.agreement.Sealing;
import fairflame.agreement.SignedRevision;
import fairflame.store.Packet;
import java.util.ArrayList;
import java.util.stream.Collectors;

/** Proves the seals of a packet before anything of it is stored. */
final class PacketSeals {
    private PacketSeals() {}

    /** Refuses the first thing that is not what was sealed, by its name, and seals that do not follow each other. */
    static void prove(Packet packet) {
        var seals = new ArrayList<Seal>();
        for (var item : packet.items()) {
            if (item.kind() == Packet.Kind.SIGNED || item.kind() == Packet.Kind.CHANGE) {
                seals.add(proved(item));
            }
        }
        var broken = Sealing.verifyChain(seals);
        if (!broken.isEmpty()) {
            throw Refusal.notAllowed(
                    "seals of the packet", broken.get(0).toString(), "seals that follow each other without gap");
        }
    }

    private static Seal proved(Packet.Item item) {
        var differences = Sealing.verify(item.bytes());
        if (!differences.isEmpty()) {
            throw Refusal.notAllowed(
                    item.kind().word() + " " + item.key(),
                    differences.stream().limit(3).map(Object::toString).collect(Collectors.joining("; ")),
                    "content as it was signed and sealed");
        }
        return item.kind() == Packet.Kind.SIGNED
                ? CanonicalForm.read(SignedRevision.class, item.bytes()).seal()
                : CanonicalForm.read(ChangeOrder.class, item.bytes()).seal();
    }
}
