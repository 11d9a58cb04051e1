package fairflame.screen.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class WordsTest {
    private static final Pattern SAID = Pattern.compile("words\\.say\\(\\s*\"([a-zA-Z0-9.-]+)\"\\s*[,)]");

    @Test
    void everyLanguageHasTheSameKeys() {
        assertThat(Words.in("es").keys()).isEqualTo(Words.in("en").keys());
        assertThat(Words.in("en").keys()).hasSizeGreaterThan(150);
    }

    @Test
    void everyKeyThatAScreenSaysHasItsWords() throws IOException {
        var keys = new TreeSet<String>();
        try (var files = Files.walk(Path.of("src/main/java/fairflame/screen"))) {
            for (var file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                var match = SAID.matcher(Files.readString(file));
                while (match.find()) {
                    keys.add(match.group(1));
                }
            }
        }
        assertThat(keys).hasSizeGreaterThan(100);
        assertThat(Words.in("en").keys()).containsAll(keys);
    }

    @Test
    void valuesStandInTheSamePlacesInEveryLanguage() {
        var english = Words.in("en");
        var spanish = Words.in("es");
        for (var key : english.keys()) {
            for (int i = 0; i < 5; i++) {
                var mark = "VALUE" + i;
                var values = new Object[] {"VALUE0", "VALUE1", "VALUE2", "VALUE3", "VALUE4"};
                assertThat(spanish.say(key, values).contains(mark))
                        .as("%s, value %s", key, i)
                        .isEqualTo(english.say(key, values).contains(mark));
            }
        }
    }

    @Test
    void moneyAndDaysAreWrittenAsTheLanguageDoes() {
        var amount = Money.parse("USD 1389.86");
        assertThat(Words.in("en").money(amount)).isEqualTo("$1,389.86");
        assertThat(Words.in("en").amount(amount)).isEqualTo("1,389.86");
        assertThat(Words.in("es").day(java.time.LocalDate.of(2026, 6, 3))).contains("junio");
    }
}
