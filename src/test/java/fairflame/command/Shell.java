package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Runs commands as a person at a terminal would, in a folder of its own. */
final class Shell {
    static final String JUNE = "2026-06-10T10:00:00-05:00";
    /** When the days are over in which what was signed in June may be cancelled. */
    static final String LATER = "2026-06-20T10:00:00-05:00";

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Path folder;

    Shell(Path folder) {
        this.folder = folder;
    }

    /** What a command left on the terminal. */
    record Said(int code, String out, String err) {
        JsonNode json() {
            try {
                return MAPPER.readTree(out);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /** Refused in one line that names all of these, and never a stack trace. */
        Said refused(String... words) {
            assertThat(code).as("exit code; said: %s %s", out, err).isEqualTo(1);
            assertThat(err.strip().lines()).as(err).hasSize(1);
            assertThat(err).contains(words).contains("allowed:");
            return this;
        }

        Said done() {
            assertThat(code).as(err).isZero();
            return this;
        }
    }

    static Said run(String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        int code = CommandFace.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new Said(code, out.toString(), err.toString());
    }

    /** A command that works in the shop's folder, at a time. */
    Said at(String time, String... arguments) {
        var all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--out", out().toString(), "--at", time));
        return run(all.toArray(String[]::new));
    }

    Said june(String... arguments) {
        return at(JUNE, arguments);
    }

    Said later(String... arguments) {
        return at(LATER, arguments);
    }

    Path out() {
        return folder.resolve("shop");
    }

    Path file(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A demo visit with a change. */
    Path visit(int number, Consumer<ObjectNode> change) {
        var visit = (ObjectNode) demo("visit-" + number + ".json");
        change.accept(visit);
        return file("visit-" + number + ".json", visit.toString());
    }

    Path visit(int number) {
        return visit(number, visit -> {});
    }

    static JsonNode demo(String name) {
        try (var stream = Shell.class.getResourceAsStream("/fairflame/demo/" + name)) {
            return MAPPER.readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path completion(int number) {
        return file("completion.json", demo("completion-" + number + ".json").toString());
    }

    /** Everything in the shop's folder, to see that nothing was half stored. */
    List<String> left() {
        if (!Files.exists(out())) {
            return List.of();
        }
        try (var files = Files.list(out())) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
