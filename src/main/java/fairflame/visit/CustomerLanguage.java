package fairflame.visit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.Refusal;
import fairflame.wording.Language;

/** Records another language for the customer of a visit than its file names. */
public final class CustomerLanguage {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private CustomerLanguage() {}

    /**
     * The visit with its customer reading this language; the stored text says so as well.
     *
     * @throws Refusal when the visit has no customer yet
     */
    public static VisitRecord of(VisitRecord visit, Language language, Library library) {
        return visit.language() == language ? visit : library.visits().read(text(visit.json(), language));
    }

    /** The text of a visit file with this language for its customer; everything else stays. */
    static String text(String json, Language language) {
        try {
            if (JSON.readTree(json) instanceof ObjectNode visit
                    && visit.get("customer") instanceof ObjectNode customer) {
                customer.put(VisitFile.LANGUAGE, language.code());
                return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(visit);
            }
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("JSON", e.getOriginalMessage(), "well-formed JSON");
        }
        throw Refusal.missing("customer", "name and address, before a language is chosen");
    }
}
