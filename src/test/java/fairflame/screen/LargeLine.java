package fairflame.screen;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.screen.bench.Draft;

/** A gas line of many runs with an appliance at every second tee, the heater at its far end; invented. */
final class LargeLine {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private LargeLine() {}

    /** A draft whose gas line has this many runs. */
    static Draft on(Draft draft, int runs) {
        return draft.with("layout", text(runs));
    }

    static String text(int runs) {
        var top = MAPPER.createObjectNode();
        top.put("site", "large line");
        top.putObject("gas").put("fuel", "natural").put("heatingValue", "1030btu/ft3");
        top.putObject("source")
                .put("kind", "meter")
                .put("node", "meter")
                .put("pressure", "10 inwc")
                .put("firing", "9.8 inwc")
                .put("capacity", "3000cfh");
        var trunk = runs - runs / 3;
        for (int i = 1; i <= trunk; i++) {
            run(top, "trunk-" + i, i == 1 ? "meter" : "tee-" + (i - 1), "tee-" + i, i < 4 ? "2" : "1-1/4", "6 ft");
        }
        for (int i = 1; i <= runs - trunk; i++) {
            run(top, "branch-" + i, "tee-" + (i * 2 - 1), "end-" + i, "1/2", "8 ft");
            appliance(top, "burner-" + i, "end-" + i, "20000 btu/h", "4 inwc");
        }
        appliance(top, "heater", "tee-" + trunk, "400000 btu/h", "6 inwc");
        try {
            return MAPPER.writeValueAsString(top);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void run(ObjectNode top, String id, String from, String to, String size, String length) {
        var run = top.withArray("segments").addObject();
        run.put("id", id).put("from", from).put("to", to).put("material", "steel-schedule-40");
        run.put("size", size).put("length", length).put("place", "outdoors");
        run.putObject("fittings").put("tee-run", 1);
    }

    private static void appliance(ObjectNode top, String id, String node, String input, String minimum) {
        top.withArray("appliances")
                .addObject()
                .put("id", id)
                .put("node", node)
                .put("input", input)
                .put("minimum", minimum)
                .put("maximum", "10.5 inwc");
    }
}
