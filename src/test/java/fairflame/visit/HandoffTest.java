package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.invoice.actual.ActualEntry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandoffTest {
    private static final Library LIBRARY = Library.load(Sources.samples());
    private static final Instant NOON = Instant.parse("2026-06-20T17:00:00Z");

    @TempDir
    private static Path truckFolder;

    @TempDir
    private Path office;

    private static Path packet;

    private static Workplace at(Path folder, Instant time) {
        return Workplace.open(folder, LIBRARY, Clock.fixed(time, ZoneOffset.ofHours(-5)), "Ida Quill");
    }

    @BeforeAll
    static void aTruckWithFourVisits() throws IOException {
        new Demo(truckFolder, line -> {}).run();
        try (var truck = at(truckFolder, NOON)) {
            var handoff = new Handoff(truck);
            handoff.name("truck-2", "QB");
            var photo = Files.write(truckFolder.resolve("wet switch.jpg"), new byte[] {(byte) 0xFF, (byte) 0xD8, 7});
            handoff.attach(visits(truck).get(0), photo);
            packet = truckFolder.resolve(handoff.export());
        }
    }

    private static List<String> visits(Workplace workplace) {
        return workplace
                .store()
                .reading(records ->
                        records.visits().all().stream().map(visit -> visit.id()).toList());
    }

    private static fairflame.store.StoredVisit visit(Workplace workplace, String id) {
        return workplace.store().reading(records -> records.visits().find(id).orElseThrow());
    }

    private String lines(Workplace workplace, String name) throws IOException {
        var file = office.resolve(name);
        workplace.store().export(file, NOON);
        return Files.readString(file);
    }

    @Test
    void theOfficeTakesInWhatTheTruckTookDownAndCanProveIt() throws IOException {
        try (var here = at(office, NOON)) {
            var taken = new Handoff(here).take(packet);
            assertThat(taken.origin()).isEqualTo("truck-2");
            assertThat(taken.conflicts()).isZero();
            assertThat(taken.added()).isGreaterThan(10);
            assertThat(visits(here)).hasSize(4);
            here.store().reading(records -> {
                assertThat(records.agreements().of("truck-2")).hasSize(3);
                assertThat(records.attachments().all()).hasSize(1);
                assertThat(records.payments().all()).isNotEmpty();
                return records;
            });
            for (var agreed : here.store().reading(records -> Signed.all(records))) {
                assertThat(new Proof(here).of(agreed.signed().quote().number()).holds())
                        .isTrue();
            }
            assertThat(here.store().faults()).isEmpty();
        }
    }

    @Test
    void takingAPacketInTwiceChangesNothing() throws IOException {
        try (var here = at(office, NOON)) {
            new Handoff(here).take(packet);
            var before = lines(here, "before.jsonl");
            var again = new Handoff(here).take(packet);
            assertThat(again.added()).isZero();
            assertThat(again.renewed()).isZero();
            assertThat(lines(here, "after.jsonl")).isEqualTo(before);
        }
    }

    /** Truck and office tell different things of the same work: both stay. */
    @Test
    void workAsTheTruckToldItIsTakenInAndNeverWrittenOver() throws IOException {
        var truckCopy = java.nio.file.Files.createDirectory(office.resolve("truck"));
        new Demo(truckCopy, line -> {}).run();
        var line = Map.of("L1", java.math.BigDecimal.ONE);
        try (var truck = at(truckCopy, NOON);
                var here = at(office, NOON)) {
            new Handoff(truck).name("truck-2", "QB");
            new JobActuals(truck).enter("Q-2026-0001", ActualEntry.of(line, ""));
            new Handoff(here).take(truckCopy.resolve(new Handoff(truck).export()));
            assertThat(new JobActuals(here).of("Q-2026-0001").latest())
                    .hasValueSatisfying(state -> assertThat(state.quantities()).isEqualTo(line));
            var other = Map.of("L1", java.math.BigDecimal.TEN);
            new JobActuals(here).enter("Q-2026-0001", ActualEntry.of(other, "counted in the office"));
            new JobActuals(truck).enter("Q-2026-0001", ActualEntry.of(Map.of("L2", java.math.BigDecimal.ONE), ""));
            var taken = new Handoff(here).take(truckCopy.resolve(new Handoff(truck).export()));
            assertThat(taken.conflicts()).isEqualTo(1);
            assertThat(new Handoff(here).conflicts()).singleElement().satisfies(conflict -> {
                assertThat(conflict.kind()).isEqualTo("actual");
                assertThat(conflict.ours()).contains("counted in the office");
                assertThat(conflict.theirs()).contains("L2");
            });
            assertThat(new JobActuals(here).of("Q-2026-0001").history()).hasSize(2);
        }
    }

    @Test
    void theOfficeGoesOnWithWhatATruckSigned() {
        try (var here = at(office, NOON)) {
            new Handoff(here).take(packet);
            var quote = here.store().reading(records -> Signed.all(records)).stream()
                    .map(agreed -> agreed.signed().quote().number())
                    .findFirst()
                    .orElseThrow();
            var terms = new Billing.Terms(here.today(), 14, false);
            var invoice = new Billing(here)
                    .invoice(quote, CompletionFile.NOTHING, terms)
                    .invoice();
            assertThat(invoice.number()).isEqualTo("I-2026-0001");
            assertThat(new Ledger(here).ageing().total()).isEqualTo(invoice.balance());
        }
    }

    @Test
    void bothSidesOfAConflictAreKeptAndOursStays() throws IOException {
        try (var here = at(office, NOON)) {
            new Handoff(here).take(packet);
            var id = visits(here).get(0);
            here.store().change(here.by(), records -> {
                var ours = records.visits().find(id).orElseThrow();
                records.visits()
                        .save(new fairflame.store.StoredVisit(
                                id, ours.state(), ours.customer(), ours.on(), ours.text() + " "));
            });
            var before = visit(here, id);
            var taken = new Handoff(here).take(packet);
            assertThat(taken.conflicts()).isEqualTo(1);
            assertThat(visit(here, id)).isEqualTo(before);
            var conflict = new Handoff(here).conflicts().get(0);
            assertThat(conflict.key()).isEqualTo(id);
            assertThat(conflict.ours()).isNotEqualTo(conflict.theirs()).contains(id);
            assertThat(conflict.theirs()).contains(id);
            new Handoff(here).settle(conflict.number(), "kept ours, told the truck");
            assertThat(new Handoff(here).conflicts().get(0).settled()).isEqualTo("kept ours, told the truck");
            new Handoff(here).take(packet);
            assertThat(new Handoff(here).conflicts()).hasSize(1);
        }
    }

    @Test
    void aLaterPacketCarriesAVisitOnAndAnEarlierOneChangesNothing(@TempDir Path copy) throws IOException {
        try (var files = Files.list(truckFolder)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        Path later;
        String id;
        try (var truck = at(copy, NOON.plusSeconds(3600))) {
            id = visits(truck).get(0);
            var moved = id;
            truck.store().change(truck.by(), records -> {
                var old = records.visits().find(moved).orElseThrow();
                records.visits()
                        .save(new fairflame.store.StoredVisit(
                                moved, old.state(), old.customer(), old.on(), old.text() + "\n"));
            });
            later = copy.resolve(new Handoff(truck).export());
        }
        try (var here = at(office, NOON)) {
            new Handoff(here).take(packet);
            var taken = new Handoff(here).take(later);
            assertThat(taken.renewed()).isEqualTo(1);
            assertThat(taken.conflicts()).isZero();
            var now = visit(here, id);
            assertThat(now.text()).endsWith("\n");
            assertThat(new Handoff(here).take(packet).conflicts()).isZero();
            assertThat(visit(here, id)).isEqualTo(now);
        }
    }

    /** Rewrites one entry of the packet, the manifest as it is. */
    private Path altered(String ending, UnaryOperator<byte[]> change) throws IOException {
        var contents = new LinkedHashMap<String, byte[]>();
        try (var zip = new ZipFile(packet.toFile())) {
            for (var entries = zip.entries(); entries.hasMoreElements(); ) {
                var entry = entries.nextElement();
                contents.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        var hit = contents.keySet().stream()
                .filter(name -> name.endsWith(ending))
                .findFirst()
                .orElseThrow();
        contents.put(hit, change.apply(contents.get(hit)));
        return written(contents);
    }

    private Path written(Map<String, byte[]> contents) throws IOException {
        var file = office.resolve("altered.zip");
        try (var zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (var entry : contents.entrySet()) {
                if (entry.getValue().length > 0) {
                    zip.putNextEntry(new ZipEntry(entry.getKey()));
                    zip.write(entry.getValue());
                    zip.closeEntry();
                }
            }
        }
        return file;
    }

    private void refused(Path file, String... words) {
        try (var here = at(office.resolve("here"), NOON)) {
            var refusal = assertThatThrownBy(() -> new Handoff(here).take(file)).isInstanceOf(Refusal.class);
            for (var word : words) {
                refusal.hasMessageContaining(word);
            }
            assertThat(visits(here)).isEmpty();
        }
    }

    @Test
    void anAlteredItemIsRefusedByName() throws IOException {
        refused(altered(".jpg", bytes -> new byte[] {1}), "wet-switch.jpg", "altered or damaged");
    }

    @Test
    void aMissingItemIsRefusedByName() throws IOException {
        refused(altered(".jpg", bytes -> new byte[0]), "wet-switch.jpg", "every item that the manifest names");
    }

    @Test
    void aPacketWithoutManifestOrWithAnotherFormatIsRefused() throws IOException {
        refused(altered("manifest.json", bytes -> new byte[0]), "manifest.json");
        refused(
                altered(
                        "manifest.json",
                        bytes -> new String(bytes, StandardCharsets.UTF_8)
                                .replace("fairflame packet", "other")
                                .getBytes(StandardCharsets.UTF_8)),
                "format");
    }

    /** Whoever alters a signed revision and mends the manifest is still found by the seal. */
    @Test
    void anAlteredRevisionIsFoundByItsSealThoughTheManifestAgrees() throws IOException {
        var contents = new LinkedHashMap<String, byte[]>();
        try (var zip = new ZipFile(packet.toFile())) {
            for (var entries = zip.entries(); entries.hasMoreElements(); ) {
                var entry = entries.nextElement();
                contents.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        var name = contents.keySet().stream()
                .filter(each -> each.startsWith("sealed/"))
                .findFirst()
                .orElseThrow();
        var before = contents.get(name);
        var after = new String(before, StandardCharsets.UTF_8)
                .replaceFirst("\"repair\":true", "\"repair\":false")
                .getBytes(StandardCharsets.UTF_8);
        assertThat(after).isNotEqualTo(before);
        var manifest = new String(contents.get("manifest.json"), StandardCharsets.UTF_8)
                .replace(fairflame.store.Packet.digest(before), fairflame.store.Packet.digest(after));
        contents.put("manifest.json", manifest.getBytes(StandardCharsets.UTF_8));
        contents.put(name, after);
        refused(written(contents), "signed Q-2026-", "/quote/repair");
    }

    @Test
    void noBitOfAPacketCanTurnWithoutBeingNoticedOrHarmless() throws IOException {
        var seed = 20260620L;
        var dice = new Random(seed);
        var sound = Files.readAllBytes(packet);
        for (int round = 0; round < 30; round++) {
            var bytes = sound.clone();
            bytes[dice.nextInt(bytes.length)] ^= (byte) (1 << dice.nextInt(8));
            var file = Files.write(office.resolve("flipped.zip"), bytes);
            try {
                var read = fairflame.store.PacketFile.read(file);
                PacketSeals.prove(read);
                // A bit that the zip format does not look at: then everything that counts is as it was.
                assertThat(fairflame.store.PacketFile.write(read))
                        .as("seed %d round %d", seed, round)
                        .isEqualTo(sound);
            } catch (Refusal expected) {
                assertThat(expected.getMessage())
                        .as("seed %d round %d", seed, round)
                        .contains("flipped.zip");
            }
        }
    }
}
