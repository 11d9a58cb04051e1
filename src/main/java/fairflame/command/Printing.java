package fairflame.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What every command prints with: text for people, or with {@code --json} one JSON document for programs. */
final class Printing {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--json", description = "Print one JSON document instead of text.")
    private boolean json;

    /** Prints one of the two forms. */
    void print(Supplier<JsonNode> data, Consumer<PrintWriter> text) {
        var out = spec.commandLine().getOut();
        if (json) {
            out.println(pretty(data.get()));
        } else {
            text.accept(out);
        }
        out.flush();
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static JsonNode texts(List<String> texts) {
        var array = JsonNodeFactory.instance.arrayNode();
        texts.forEach(array::add);
        return array;
    }

    /** A computed figure to so many decimals, so that no reader takes the rest for knowledge. */
    static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static String pretty(JsonNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a JSON tree could not be written", e);
        }
    }
}
