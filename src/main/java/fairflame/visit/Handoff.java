package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.store.Attachment;
import fairflame.store.Chain;
import fairflame.store.Packet;
import fairflame.store.Packet.Kind;
import fairflame.store.PacketFile;
import fairflame.store.Records;
import fairflame.store.Registers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Hands what a truck laptop took down to the office: one file, taken in as often as one likes. Nothing that is here is
 * ever overwritten by something that disagrees; both sides are kept for a person to look at.
 */
public final class Handoff {
    private static final String LAPTOP = "laptop";

    private final Workplace workplace;

    public Handoff(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * What a packet did.
     *
     * @param added things that were not here
     * @param renewed visits that went on since the last packet
     * @param same things that were here already
     * @param conflicts things that disagree with what is here
     */
    public record Taken(String origin, String made, int added, int renewed, int same, int conflicts) {}

    /**
     * Two sides that disagree.
     *
     * @param ours what is here; empty when nothing is, because it stands on something that disagrees
     * @param settled what a person did about it; empty while open
     */
    public record Conflict(
            int number,
            String origin,
            String kind,
            String key,
            String ours,
            String theirs,
            String reason,
            String settled) {}

    /**
     * Names this laptop. Name and series have to differ from laptop to laptop.
     *
     * @param laptop stands in every packet
     * @param series of the quote numbers given here, such as {@code QB}
     */
    public void name(String laptop, String series) {
        Packet.named(laptop);
        if (!series.matches("[A-Z][A-Z0-9]{0,11}")) {
            throw Refusal.malformed(
                    "series of quotes", series, "a capital letter, then capitals or digits, such as QB");
        }
        workplace.store().change(workplace.by(), records -> {
            records.settings().put(LAPTOP, laptop);
            records.settings().put(Offer.SERIES_SETTING, series);
        });
    }

    /** Name of this laptop; absent until it was told. */
    public Optional<String> laptop() {
        return workplace.store().reading(records -> records.settings().find(LAPTOP));
    }

    /** Keeps a photograph or another file with a visit. */
    public void attach(String visit, Path file) {
        try {
            var bytes = Files.readAllBytes(file);
            var attachment = new Attachment(visit, String.valueOf(file.getFileName()), bytes);
            workplace.store().change(workplace.by(), records -> {
                if (records.visits().find(visit).isEmpty()) {
                    throw Refusal.unknown("visit", visit, "the id of a visit in this folder");
                }
                records.attachments().add(attachment);
            });
        } catch (IOException e) {
            throw Refusal.unusable("file", file, "a file that can be read (" + e.getMessage() + ")");
        }
    }

    /** Writes everything that was taken down and sealed here into one file of the folder; its name. */
    public String export() {
        var packet = workplace.store().reading(records -> {
            var laptop = records.settings()
                    .find(LAPTOP)
                    .orElseThrow(() -> Refusal.missing("name of this laptop", "packet name NAME, told once"));
            return packet(records).from(laptop, workplace.now().toInstant());
        });
        var name = "packet-" + packet.origin() + "-" + packet.made().replaceAll("[^0-9TZ]", "") + ".zip";
        workplace.folder().write(Map.of(name, PacketFile.write(packet)));
        return name;
    }

    private static Packet.Builder packet(Records records) {
        var packet = new Packet.Builder();
        records.visits().all().forEach(visit -> packet.add(Kind.VISIT, visit.id(), CanonicalForm.write(visit)));
        records.attachments()
                .all()
                .forEach(photo -> packet.add(Kind.PHOTO, photo.visit() + "/" + photo.name(), photo.bytes()));
        for (var row : records.quotes().rows()) {
            for (var quote : records.quotes().revisions(row.number())) {
                packet.add(Kind.QUOTE, Registers.key(quote.number(), quote.revision()), CanonicalForm.write(quote));
            }
        }
        seals(records, packet);
        for (var signed : records.agreements().of("")) {
            var key = Signed.key(signed);
            var states = records.completionRecords()
                    .history(signed.quote().number(), signed.quote().revision());
            for (int i = 0; i < states.size(); i++) {
                packet.add(Kind.COMPLETION, key + " state " + (i + 1), CanonicalForm.write(states.get(i)));
            }
            var told = records.registers().actuals().history(key);
            for (int i = 0; i < told.size(); i++) {
                packet.add(Kind.ACTUAL, key + " state " + (i + 1), CanonicalForm.write(told.get(i)));
            }
        }
        records.payments().all().stream()
                .filter(receipt -> receipt.invoice().isEmpty())
                .forEach(receipt -> packet.add(Kind.PAYMENT, receipt.payment().id(), CanonicalForm.write(receipt)));
        return packet;
    }

    /** Revisions and change orders in the order in which they were sealed here. */
    private static void seals(Records records, Packet.Builder packet) {
        var signed = records.agreements().of("").iterator();
        var changes = records.changeOrders().from("").iterator();
        for (Chain.Link link : records.chain().links()) {
            if (!link.origin().isEmpty()) {
                continue;
            }
            if (link.subject().contains(" revision ")) {
                var next = signed.next();
                packet.add(Kind.SIGNED, Signed.key(next), CanonicalForm.write(next));
            } else {
                var next = changes.next();
                packet.add(Kind.CHANGE, next.number(), CanonicalForm.write(next));
            }
        }
    }

    /** Takes a packet in, all of it or, when it is damaged or altered, nothing. */
    public Taken take(Path file) {
        return take(file, Progress.UNWATCHED);
    }

    /** As {@link #take(Path)}; while it is watched it can be stopped, and then nothing was taken in. */
    public Taken take(Path file, Progress progress) {
        var packet = PacketFile.read(file);
        try {
            PacketSeals.prove(packet);
            return workplace
                    .store()
                    .inTransaction(workplace.by(), records -> new PacketTaking(records, packet).all(progress));
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
    }

    /** Everything that disagreed, the first one first. */
    public List<Conflict> conflicts() {
        return workplace
                .store()
                .reading(records -> records.packets().conflicts().stream()
                        .map(conflict -> new Conflict(
                                conflict.position(),
                                conflict.origin(),
                                conflict.kind(),
                                conflict.key(),
                                PacketTaking.ours(records, conflict.kind(), conflict.key()),
                                conflict.theirs(),
                                conflict.reason(),
                                conflict.settled().orElse("")))
                        .toList());
    }

    /** A person has looked at both sides and dealt with it. */
    public void settle(int number, String words) {
        workplace.store().change(workplace.by(), records -> records.packets().settle(number, words));
    }
}
