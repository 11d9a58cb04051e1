package fairflame.document.sheet;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The text of a cell, taken apart: words, placeholders, and instructions for its row or column.
 *
 * @param pieces words and placeholders in order
 */
record CellText(List<Piece> pieces, List<Instruction> instructions) {
    private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)}");
    private static final Pattern INSTRUCTION =
            Pattern.compile("(row|column) (for each|only if|hidden unless) ([a-z][a-z, -]*)");

    /** @param name of a placeholder; empty for words */
    record Piece(Optional<String> name, String words) {}

    record Instruction(boolean row, Kind kind, List<String> words) {
        enum Kind {
            EACH,
            ONLY,
            HIDDEN
        }
    }

    static CellText parse(String text) {
        var pieces = new ArrayList<Piece>();
        var instructions = new ArrayList<Instruction>();
        var matcher = BRACES.matcher(text);
        int at = 0;
        while (matcher.find()) {
            words(text.substring(at, matcher.start()), pieces);
            var inside = matcher.group(1).strip();
            var instruction = INSTRUCTION.matcher(inside);
            if (instruction.matches()) {
                instructions.add(new Instruction(
                        instruction.group(1).equals("row"),
                        kind(instruction.group(2)),
                        List.of(instruction.group(3).strip().split(",\\s*"))));
            } else {
                pieces.add(new Piece(Optional.of(inside), ""));
            }
            at = matcher.end();
        }
        words(text.substring(at), pieces);
        return new CellText(List.copyOf(pieces), List.copyOf(instructions));
    }

    private static Instruction.Kind kind(String word) {
        return switch (word) {
            case "for each" -> Instruction.Kind.EACH;
            case "only if" -> Instruction.Kind.ONLY;
            default -> Instruction.Kind.HIDDEN;
        };
    }

    private static void words(String words, List<Piece> pieces) {
        if (words.contains("{") || words.contains("}")) {
            throw Refusal.malformed("brace", words.strip(), "placeholders of the form {name}");
        }
        if (!words.isEmpty()) {
            pieces.add(new Piece(Optional.empty(), words));
        }
    }

    List<String> names() {
        return pieces.stream().flatMap(piece -> piece.name().stream()).toList();
    }

    /** True when there is nothing to fill in or to obey: the cell may stay as it is. */
    boolean plain() {
        return instructions.isEmpty() && names().isEmpty();
    }

    /** The name of the placeholder that is all the cell holds. */
    Optional<String> alone() {
        return pieces.size() == 1 ? pieces.get(0).name() : Optional.empty();
    }

    String filled(Function<String, Value> values) {
        var text = new StringBuilder();
        for (var piece : pieces) {
            text.append(piece.name().map(name -> values.apply(name).shown()).orElse(piece.words()));
        }
        return text.toString();
    }
}
