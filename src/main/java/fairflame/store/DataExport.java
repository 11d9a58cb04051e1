package fairflame.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.Refusal;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;

/**
 * Everything a database holds as JSON lines, for another program or another database. The format stands in
 * docs/formats/export.md.
 */
final class DataExport {
    private static final JsonMapper JSON = new JsonMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final BufferedWriter out;
    private final MessageDigest digest;
    private long rows;

    private DataExport(BufferedWriter out) throws NoSuchAlgorithmException {
        this.out = out;
        this.digest = MessageDigest.getInstance("SHA-256");
    }

    /** Writes a new file; gives the number of rows. */
    static long write(Connection database, Path file, Instant made) throws SQLException {
        try (var out = Files.newBufferedWriter(file, StandardOpenOption.CREATE_NEW)) {
            var export = new DataExport(out);
            export.all(database, made);
            return export.rows;
        } catch (java.nio.file.FileAlreadyExistsException e) {
            throw Refusal.unusable("export file", file, "a file that does not exist yet");
        } catch (IOException e) {
            throw Refusal.unusable("export file", file, "a place that can be written to (" + e.getMessage() + ")");
        } catch (NoSuchAlgorithmException e) {
            throw new StoreException("every Java platform has SHA-256", e);
        }
    }

    private void all(Connection database, Instant made) throws SQLException, IOException {
        line(NODES.objectNode()
                .put("format", DataTables.FORMAT)
                .put("version", Migrations.NEWEST)
                .put("made", made.toString()));
        try (var statement = database.createStatement()) {
            // One state of the database throughout, whatever other programs write meanwhile.
            statement.execute("begin deferred");
            try {
                for (var table : DataTables.all()) {
                    if (table.name().equals("agreement")) {
                        seals(database);
                    } else if (!DataTables.sealed(table.name())) {
                        each(database, table.name(), "select * from " + table.name() + " order by " + table.order());
                    }
                }
            } finally {
                statement.execute("rollback");
            }
        }
        var sum = HexFormat.of().formatHex(digest.digest());
        out.write(JSON.writeValueAsString(NODES.objectNode().put("rows", rows).put("sha256", sum)));
        out.write('\n');
    }

    private void seals(Connection database) throws SQLException, IOException {
        try (var statement = database.createStatement();
                var links = statement.executeQuery("select position, origin from chain_link order by position")) {
            while (links.next()) {
                var position = links.getLong(1);
                each(database, "agreement", "select * from agreement where position = " + position);
                each(database, "change_order", "select * from change_order where position = " + position);
            }
        }
    }

    private void each(Connection database, String table, String sql) throws SQLException, IOException {
        try (var statement = database.createStatement();
                var row = statement.executeQuery(sql)) {
            while (row.next()) {
                line(NODES.objectNode().put("table", table).set("row", row(row)));
                rows++;
            }
        }
    }

    private static ObjectNode row(ResultSet row) throws SQLException {
        var node = NODES.objectNode();
        var columns = row.getMetaData();
        for (int i = 1; i <= columns.getColumnCount(); i++) {
            var name = columns.getColumnName(i);
            var value = row.getObject(i);
            if (value == null) {
                node.putNull(name);
            } else if (value instanceof byte[] bytes) {
                node.set(name, bytes(bytes));
            } else if (value instanceof Number number) {
                node.put(name, number.longValue());
            } else {
                node.put(name, value.toString());
            }
        }
        return node;
    }

    /** Bytes that are text are written as text, so that a reader sees them; others in Base64. */
    private static ObjectNode bytes(byte[] bytes) {
        try {
            var text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return NODES.objectNode().put("utf8", text);
        } catch (CharacterCodingException notText) {
            return NODES.objectNode().put("base64", Base64.getEncoder().encodeToString(bytes));
        }
    }

    private void line(com.fasterxml.jackson.databind.JsonNode node) throws IOException {
        var text = text(node) + "\n";
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        out.write(text);
    }

    private static String text(com.fasterxml.jackson.databind.JsonNode node) {
        try {
            return JSON.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new StoreException("a JSON tree could not be written", e);
        }
    }
}
