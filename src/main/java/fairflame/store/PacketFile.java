package fairflame.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import fairflame.Refusal;
import fairflame.store.Packet.Item;
import fairflame.store.Packet.Kind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * A packet as a zip file: {@code manifest.json} first, then one file for each item. The manifest names every file with
 * its SHA-256; the format stands in docs/formats/packet.md.
 */
public final class PacketFile {
    static final String FORMAT = "fairflame packet";
    static final int VERSION = 1;
    private static final String MANIFEST = "manifest.json";
    private static final int MOST_ITEMS = 20_000;
    private static final long MOST_BYTES = 512L * 1024 * 1024;
    private static final JsonMapper JSON = new JsonMapper();
    /** One time for all entries, so that the same packet has the same bytes. */
    private static final LocalDateTime TIME = LocalDateTime.of(2026, 1, 1, 0, 0);

    private PacketFile() {}

    /** The bytes of the file: the same for the same packet. */
    public static byte[] write(Packet packet) {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            put(zip, MANIFEST, manifest(packet));
            for (var item : packet.items()) {
                put(zip, item.path(), item.bytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a packet in memory could not be written", e);
        }
        return bytes.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        var entry = new ZipEntry(name);
        entry.setTimeLocal(TIME);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    private static byte[] manifest(Packet packet) throws JsonProcessingException {
        var root = JsonNodeFactory.instance.objectNode();
        root.put("format", FORMAT).put("version", VERSION);
        root.put("origin", packet.origin()).put("made", packet.made());
        var items = root.putArray("items");
        for (var item : packet.items()) {
            items.addObject()
                    .put("kind", item.kind().word())
                    .put("key", item.key())
                    .put("path", item.path())
                    .put("size", item.bytes().length)
                    .put("sha256", item.digest());
        }
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(root);
    }

    /** Reads and checks a packet. A damaged or altered one is refused by the name of what does not agree. */
    public static Packet read(Path file) {
        if (!Files.isRegularFile(file)) {
            throw Refusal.unusable("packet", file, "an existing packet file");
        }
        try (var zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
            return packet(contents(zip));
        } catch (ZipException | IllegalArgumentException e) {
            throw Refusal.malformed("packet", String.valueOf(e.getMessage()), "an undamaged zip file")
                    .at(file.toString());
        } catch (IOException e) {
            throw Refusal.unusable("packet", file, "a file that can be read (" + e.getMessage() + ")");
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
    }

    private static Map<String, byte[]> contents(ZipFile zip) throws IOException {
        var contents = new HashMap<String, byte[]>();
        var left = MOST_BYTES;
        for (var entries = zip.entries(); entries.hasMoreElements(); ) {
            var entry = entries.nextElement();
            byte[] bytes;
            try (var in = zip.getInputStream(entry)) {
                // Read one byte beyond the limit: the size that an entry states may be a lie.
                bytes = in.readNBytes((int) Math.min(Attachment.MOST_BYTES, left) + 1);
            } catch (ZipException e) {
                throw Refusal.malformed("item " + entry.getName(), String.valueOf(e.getMessage()), "undamaged data");
            }
            left -= bytes.length;
            if (bytes.length > Attachment.MOST_BYTES || left < 0 || contents.size() > MOST_ITEMS) {
                throw Refusal.outOfRange("size of item", entry.getName(), "at most 24 MiB each, 512 MiB in all");
            }
            if (contents.put(entry.getName(), bytes) != null) {
                throw Refusal.notAllowed("item", entry.getName(), "each item once");
            }
        }
        return contents;
    }

    private static Packet packet(Map<String, byte[]> contents) {
        var manifest = contents.remove(MANIFEST);
        if (manifest == null) {
            throw Refusal.missing(MANIFEST, "a packet with its manifest");
        }
        var root = tree(manifest);
        if (!root.path("format").asText().equals(FORMAT) || root.path("version").asInt() != VERSION) {
            throw Refusal.malformed(
                            "format", root.path("format").asText() + " " + root.path("version"), FORMAT + " " + VERSION)
                    .at(MANIFEST);
        }
        var items = new ArrayList<Item>();
        var named = new HashSet<String>();
        for (var node : root.path("items")) {
            var item = item(node, contents);
            named.add(item.path());
            items.add(item);
        }
        for (var name : contents.keySet()) {
            if (!named.contains(name)) {
                throw Refusal.notAllowed("item " + name, "not in the manifest", "only items that the manifest names");
            }
        }
        return new Packet(root.path("origin").asText(), root.path("made").asText(), items);
    }

    private static JsonNode tree(byte[] manifest) {
        try {
            return JSON.readTree(manifest);
        } catch (IOException e) {
            throw Refusal.malformed(MANIFEST, String.valueOf(e.getMessage()), "one JSON object");
        }
    }

    private static Item item(JsonNode node, Map<String, byte[]> contents) {
        var path = node.path("path").asText();
        var bytes = contents.get(path);
        if (bytes == null) {
            throw Refusal.missing("item " + path, "every item that the manifest names");
        }
        var item = new Item(
                Kind.parse(node.path("kind").asText()), node.path("key").asText(), bytes);
        if (!item.digest().equals(node.path("sha256").asText())) {
            throw Refusal.notAllowed("item " + path, "altered or damaged", "content with the digest of the manifest");
        }
        if (!item.path().equals(path)) {
            throw Refusal.notAllowed("path of item " + item.key(), path, item.path());
        }
        return item;
    }
}
