package fairflame.repair;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fairflame.catalog.SampleFolder;
import fairflame.catalog.Shop;
import fairflame.catalog.ShopFiles;
import fairflame.diagnosis.Knowledge;
import fairflame.diagnosis.KnowledgeCheck;
import fairflame.diagnosis.KnowledgeProblem;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sample book against the shipped knowledge. */
class BookCheckTest {
    private static final Knowledge KNOWLEDGE = Knowledge.shipped();

    private final Shop shop = SampleFolder.shop();

    @Test
    void theSampleBookFitsTheShippedKnowledge() {
        assertThat(BookCheck.problems(KNOWLEDGE, shop)).isEmpty();
    }

    @Test
    void everyRepairThatACauseNamesHasAStandardTime() {
        var tasks = shop.tasks().stream().map(task -> task.id()).collect(Collectors.toSet());

        assertThat(KnowledgeCheck.problems(KNOWLEDGE, tasks).stream()
                        .filter(problem -> problem.kind() == KnowledgeProblem.Kind.REPAIR_WITHOUT_TIME))
                .isEmpty();
    }

    @Test
    void everyDeviceThatTheBookAsksForIsNamedBySomeCause() throws IOException {
        var named = new HashSet<String>();
        var yaml = new YAMLMapper();
        for (var file : Knowledge.shippedFiles().entrySet()) {
            if (file.getKey().startsWith("causes-")) {
                devices(yaml.readTree(file.getValue()), named);
            }
        }
        var asked = Pattern.compile("device:([a-z-]+)")
                .matcher(SampleFolder.files().get("scopes.yaml"))
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toSet());

        assertThat(named).isNotEmpty();
        assertThat(asked).isNotEmpty().isSubsetOf(named);
    }

    @Test
    void everyCauseOfTheTasksIsInTheKnowledge() {
        assertThat(shop.tasks().stream()
                        .flatMap(task -> task.rules().notForCauses().stream())
                        .filter(cause -> KNOWLEDGE.cause(cause).isEmpty()))
                .isEmpty();
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "scopes.yaml | cause: LD05 | cause: LD99 | cause LD05 (",
                "scopes.yaml | cause: LD05 | cause: LD99 | the remedy for LD99 belongs to no cause",
                "scopes.yaml | {task: R06, | {task: R32, | cause LD05 names R06, R07, but its remedy offers only R32",
                "scopes.yaml | not cause:SR02 | not cause:ZZ01 | the remedy for SR06 asks for cause ZZ01",
                "scopes.yaml | check: cock-handle | check: cock-colour | fact cock-half-shut asks for check cock-colour",
                "scopes.yaml | readings: [angled] | readings: [crooked] | fact cock-half-shut waits for 'crooked'",
                "scopes.yaml | check: cock-handle | check: gas-static | which check gas-static cannot answer",
                "pairs.yaml | [leak-outlet] | [leak-nowhere] | pair water-side-switches asks for check leak-nowhere",
                "pairs.yaml | [leak-outlet] | [cock-handle] | needs a figure from check cock-handle"
            })
    void whatDoesNotFitIsTold(String file, String from, String to, String told) {
        var files = SampleFolder.files();
        files.computeIfPresent(file, (name, text) -> text.replaceFirst(Pattern.quote(from), to));

        assertThat(BookCheck.problems(KNOWLEDGE, ShopFiles.parse(files))).anyMatch(problem -> problem.contains(told));
    }

    @Test
    void adviceWhereTheKnowledgeNamesARepairIsTold() {
        var files = SampleFolder.files();
        files.computeIfPresent(
                "scopes.yaml",
                (name, text) -> text.replaceFirst(
                        "(?s)(cause: LD05\n    source: [^\n]*\n).*?(?=\n  - cause)", "$1    advice: wait\n"));

        assertThat(BookCheck.problems(KNOWLEDGE, ShopFiles.parse(files)))
                .containsExactly("cause LD05 names R06, R07, its remedy offers no repair");
    }

    private static void devices(JsonNode node, Set<String> into) {
        node.path("devices").forEach(device -> into.add(device.asText()));
        for (var child : node) {
            devices(child, into);
        }
    }
}
