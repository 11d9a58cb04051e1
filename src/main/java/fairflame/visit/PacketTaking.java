package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.agreement.ChangeOrder;
import fairflame.agreement.SignedRevision;
import fairflame.invoice.Completion;
import fairflame.invoice.actual.Actuals;
import fairflame.quote.Quote;
import fairflame.store.Attachment;
import fairflame.store.Packet;
import fairflame.store.PacketLog;
import fairflame.store.Receipt;
import fairflame.store.Records;
import fairflame.store.StoredVisit;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/** Takes the things of one packet in, one after the other, in one transaction. */
final class PacketTaking {
    private final Records records;
    private final Packet packet;
    private int added;
    private int renewed;
    private int same;
    private int conflicts;

    PacketTaking(Records records, Packet packet) {
        this.records = records;
        this.packet = packet;
    }

    Handoff.Taken all(Progress progress) {
        var all = packet.items().size();
        for (int i = 0; i < all; i++) {
            progress.at(i, all);
            take(packet.items().get(i));
        }
        progress.at(all, all);
        return new Handoff.Taken(packet.origin(), packet.made(), added, renewed, same, conflicts);
    }

    private void take(Packet.Item item) {
        var here = bytes(records, item.kind(), item.key());
        if (here.isPresent()
                && Arrays.equals(comparable(item.kind(), here.get()), comparable(item.kind(), item.bytes()))) {
            same++;
            note(item);
        } else if (here.isEmpty()) {
            add(item);
        } else if (item.kind() == Packet.Kind.VISIT && untouchedSinceLastPacket(item, here.get())) {
            renew(item, here.get());
        } else {
            conflict(item, here.get(), "other content under the same name");
        }
    }

    /** The state of a visit moves on in the office; only what was taken down is compared. */
    private static byte[] comparable(Packet.Kind kind, byte[] bytes) {
        return kind == Packet.Kind.VISIT
                ? CanonicalForm.read(StoredVisit.class, bytes).text().getBytes(StandardCharsets.UTF_8)
                : bytes;
    }

    private void add(Packet.Item item) {
        try {
            store(item);
            added++;
            note(item);
        } catch (Refusal refusal) {
            conflict(item, new byte[0], String.valueOf(refusal.getMessage()));
        }
    }

    private void store(Packet.Item item) {
        var bytes = item.bytes();
        switch (item.kind()) {
            case VISIT -> records.visits().save(CanonicalForm.read(StoredVisit.class, bytes));
            case PHOTO -> records.attachments().add(photo(item));
            case QUOTE -> records.quotes().add(CanonicalForm.read(Quote.class, bytes));
            case SIGNED ->
                records.agreements().receive(packet.origin(), CanonicalForm.read(SignedRevision.class, bytes));
            case CHANGE ->
                records.changeOrders().receive(packet.origin(), CanonicalForm.read(ChangeOrder.class, bytes));
            case COMPLETION -> {
                var key = RevisionName.of(item.key());
                records.completionRecords()
                        .put(key.quote(), key.revision(), CanonicalForm.read(Completion.class, bytes));
            }
            case ACTUAL -> {
                var key = RevisionName.of(item.key());
                JobActuals.receive(records, key, CanonicalForm.read(Actuals.class, bytes));
            }
            case PAYMENT -> records.payments().add(CanonicalForm.read(Receipt.class, bytes));
        }
    }

    private static Attachment photo(Packet.Item item) {
        var at = item.key().indexOf('/');
        return new Attachment(
                item.key().substring(0, Math.max(0, at)), item.key().substring(at + 1), item.bytes());
    }

    private boolean untouchedSinceLastPacket(Packet.Item item, byte[] here) {
        var text = comparable(item.kind(), here);
        return records.packets()
                .last(packet.origin(), item.kind().word(), item.key())
                .filter(last -> last.digest().equals(Packet.digest(text)))
                .isPresent();
    }

    /** A later packet of the same laptop carries a visit on; an earlier one, taken in late, changes nothing. */
    private void renew(Packet.Item item, byte[] here) {
        var last = records.packets()
                .last(packet.origin(), item.kind().word(), item.key())
                .orElseThrow();
        if (packet.made().compareTo(last.made()) <= 0) {
            same++;
            return;
        }
        var theirs = CanonicalForm.read(StoredVisit.class, item.bytes());
        var ours = CanonicalForm.read(StoredVisit.class, here);
        records.visits()
                .save(new StoredVisit(
                        ours.id(),
                        furthest(ours.state(), theirs.state()),
                        theirs.customer(),
                        theirs.on(),
                        theirs.text()));
        renewed++;
        note(item);
    }

    private static String furthest(String ours, String theirs) {
        return order(ours) >= order(theirs) ? ours : theirs;
    }

    private static int order(String state) {
        return Arrays.stream(State.values()).map(State::word).toList().indexOf(state);
    }

    private void note(Packet.Item item) {
        var digest = Packet.digest(comparable(item.kind(), item.bytes()));
        records.packets()
                .note(packet.origin(), item.kind().word(), item.key(), new PacketLog.Received(digest, packet.made()));
    }

    private void conflict(Packet.Item item, byte[] here, String reason) {
        conflicts++;
        records.packets()
                .conflict(new PacketLog.Conflict(
                        0,
                        packet.origin(),
                        item.kind().word(),
                        item.key(),
                        here.length == 0 ? "" : Packet.digest(here),
                        readable(item.kind(), item.bytes()),
                        reason,
                        Optional.empty()));
    }

    private static String readable(Packet.Kind kind, byte[] bytes) {
        return kind == Packet.Kind.PHOTO
                ? Base64.getEncoder().encodeToString(bytes)
                : new String(bytes, StandardCharsets.UTF_8);
    }

    /** What is here under a name, as text; empty when nothing is. */
    static String ours(Records records, String kind, String key) {
        var parsed = Packet.Kind.valueOf(kind.toUpperCase(java.util.Locale.ROOT));
        return bytes(records, parsed, key).map(bytes -> readable(parsed, bytes)).orElse("");
    }

    private static Optional<byte[]> bytes(Records records, Packet.Kind kind, String key) {
        return switch (kind) {
            case VISIT -> records.visits().find(key).map(CanonicalForm::write);
            case PHOTO -> {
                var at = key.indexOf('/');
                yield records.attachments()
                        .find(key.substring(0, Math.max(0, at)), key.substring(at + 1))
                        .map(Attachment::bytes);
            }
            case QUOTE -> {
                var named = RevisionName.of(key);
                yield records.quotes().bytes(named.quote(), named.revision());
            }
            case SIGNED -> {
                var named = RevisionName.of(key);
                yield records.agreements().bytes(named.quote(), named.revision());
            }
            case CHANGE -> records.changeOrders().find(key).map(CanonicalForm::write);
            case COMPLETION -> completion(records, RevisionName.of(key));
            case ACTUAL -> {
                var named = RevisionName.of(key);
                yield JobActuals.state(records, named).map(CanonicalForm::write);
            }
            case PAYMENT ->
                records.payments().all().stream()
                        .filter(receipt -> receipt.payment().id().equals(key))
                        .findFirst()
                        .map(CanonicalForm::write);
        };
    }

    /** A state of completion is here when the history holds it; the office may have gone on since. */
    private static Optional<byte[]> completion(Records records, RevisionName key) {
        var states = records.completionRecords().history(key.quote(), key.revision());
        return states.size() < key.state()
                ? Optional.empty()
                : Optional.of(CanonicalForm.write(states.get(key.state() - 1)));
    }
}
