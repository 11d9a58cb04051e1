package fairflame.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fairflame.Refusal;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/** Fills an empty database from a data export; everything in the file or nothing. */
final class DataImport {
    /** A photograph of 24 MiB in Base64. */
    private static final int LONGEST_TEXT = 40 * 1024 * 1024;

    private static final JsonMapper JSON = new JsonMapper(JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxStringLength(LONGEST_TEXT)
                    .build())
            .build());

    private final Connection database;
    private final Map<String, List<String>> columns = new HashMap<>();
    private final Map<String, PreparedStatement> inserts = new HashMap<>();
    private final MessageDigest digest;
    private long rows;
    private boolean ended;

    private DataImport(Connection database) throws NoSuchAlgorithmException {
        this.database = database;
        this.digest = MessageDigest.getInstance("SHA-256");
    }

    /** Reads the file into a database without rows, in one transaction; gives the number of rows. */
    static long read(Path file, Connection database) throws SQLException {
        try (var lines = Files.newBufferedReader(file);
                var statement = database.createStatement()) {
            var reader = new DataImport(database);
            statement.execute("begin immediate");
            try {
                reader.all(lines);
            } finally {
                reader.close();
            }
            statement.execute("commit");
            return reader.rows;
        } catch (CharacterCodingException e) {
            throw Refusal.malformed("data export", file.getFileName(), "UTF-8 text")
                    .at(file.toString());
        } catch (IOException e) {
            throw Refusal.unusable("data export", file, "a file that can be read (" + e.getMessage() + ")");
        } catch (NoSuchAlgorithmException e) {
            throw new StoreException("every Java platform has SHA-256", e);
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
    }

    /** A statement left open would keep the file in use after the connection is closed. */
    private void close() throws SQLException {
        for (var insert : inserts.values()) {
            insert.close();
        }
    }

    private void all(BufferedReader lines) throws IOException, SQLException {
        var number = 0;
        for (var text = lines.readLine(); text != null; text = lines.readLine()) {
            number++;
            try {
                line(text, number);
            } catch (JsonProcessingException e) {
                throw Refusal.malformed("line", e.getOriginalMessage(), "one JSON object")
                        .at("line " + number);
            } catch (SQLException e) {
                throw Refusal.malformed("row", String.valueOf(e.getMessage()), "rows as they were exported")
                        .at("line " + number);
            } catch (Refusal refusal) {
                throw refusal.at("line " + number);
            }
        }
        if (!ended) {
            throw Refusal.missing("last line", "a whole export; this one is cut off")
                    .at("line " + number);
        }
    }

    private void line(String text, int number) throws JsonProcessingException, SQLException {
        if (ended) {
            throw Refusal.notAllowed("line after the last one", text.length() + " characters", "nothing");
        }
        var node = JSON.readTree(text);
        if (number == 1) {
            head(node);
        } else if (node.has("sha256")) {
            end(node);
            return;
        } else {
            row(node);
        }
        digest.update((text + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static void head(JsonNode node) {
        if (!node.path("format").asText().equals(DataTables.FORMAT)) {
            throw Refusal.malformed("format", node.path("format").asText(), DataTables.FORMAT);
        }
        var version = node.path("version").asInt();
        if (version != Migrations.NEWEST) {
            throw Refusal.notAllowed(
                    "version of the export",
                    version,
                    "version " + Migrations.NEWEST
                            + "; open the old database with this program once, then export again");
        }
    }

    private void end(JsonNode node) {
        ended = true;
        if (node.path("rows").asLong() != rows) {
            throw Refusal.notAllowed("number of rows", rows, node.path("rows").asLong() + ", as the last line says");
        }
        if (!node.path("sha256").asText().equals(HexFormat.of().formatHex(digest.digest()))) {
            throw Refusal.notAllowed("content", "altered", "lines as they were exported: the digest does not agree");
        }
    }

    private void row(JsonNode node) throws SQLException {
        var name = node.path("table").asText();
        if (DataTables.named(name).isEmpty()) {
            throw Refusal.unknown(
                    "table",
                    name,
                    String.join(
                            ", ",
                            DataTables.all().stream()
                                    .map(DataTables.Table::name)
                                    .toList()));
        }
        var names = columns(name);
        var row = node.path("row");
        var met = new ArrayList<String>();
        row.fieldNames().forEachRemaining(met::add);
        if (!met.equals(names)) {
            throw Refusal.malformed("columns of " + name, met, String.valueOf(names));
        }
        var insert = insert(name, names);
        for (int i = 0; i < names.size(); i++) {
            bind(insert, i + 1, row.get(names.get(i)));
        }
        insert.executeUpdate();
        rows++;
    }

    private List<String> columns(String table) throws SQLException {
        var known = columns.get(table);
        if (known != null) {
            return known;
        }
        var names = new ArrayList<String>();
        try (var statement = database.createStatement();
                var row = statement.executeQuery("pragma table_info(" + table + ")")) {
            while (row.next()) {
                names.add(row.getString("name"));
            }
        }
        columns.put(table, names);
        return names;
    }

    private PreparedStatement insert(String table, List<String> names) throws SQLException {
        var known = inserts.get(table);
        if (known == null) {
            var marks = String.join(", ", names.stream().map(name -> "?").toList());
            // Column names such as "after" are words of SQL.
            var quoted = String.join(
                    ", ", names.stream().map(name -> '"' + name + '"').toList());
            known = database.prepareStatement("insert into " + table + " (" + quoted + ") values (" + marks + ")");
            inserts.put(table, known);
        }
        return known;
    }

    private static void bind(PreparedStatement insert, int place, JsonNode value) throws SQLException {
        if (value.isNull()) {
            insert.setObject(place, null);
        } else if (value.isIntegralNumber()) {
            insert.setLong(place, value.longValue());
        } else if (value.isTextual()) {
            insert.setString(place, value.textValue());
        } else if (value.path("utf8").isTextual()) {
            insert.setBytes(place, value.path("utf8").textValue().getBytes(StandardCharsets.UTF_8));
        } else if (value.path("base64").isTextual()) {
            try {
                insert.setBytes(
                        place, Base64.getDecoder().decode(value.path("base64").textValue()));
            } catch (IllegalArgumentException e) {
                throw Refusal.malformed("bytes", String.valueOf(e.getMessage()), "Base64 (RFC 4648)");
            }
        } else {
            throw Refusal.malformed("value", value, "null, a whole number, text, utf8 or base64");
        }
    }
}
