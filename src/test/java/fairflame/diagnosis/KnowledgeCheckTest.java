package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class KnowledgeCheckTest {
    private static final Pattern TASK = Pattern.compile("(?m)^ {2}- id: (R\\w+)$");

    /** Tasks that the sample shop has a standard time for. */
    private static Set<String> sampleTasks() {
        try {
            return TASK.matcher(Files.readString(Path.of("catalog-sample/tasks.yaml")))
                    .results()
                    .map(match -> match.group(1))
                    .collect(Collectors.toSet());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void theShippedKnowledgeIsClean() {
        assertThat(KnowledgeCheck.problems(Knowledge.shippedFiles(), sampleTasks()))
                .extracting(Object::toString)
                .isEmpty();
    }
}
