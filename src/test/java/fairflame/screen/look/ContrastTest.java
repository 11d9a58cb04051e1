package fairflame.screen.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContrastTest {
    private static final double TEXT = 4.5;
    private static final double SHAPE = 3;

    // WCAG 2.2, understanding 1.4.3: black on white is 21 to 1, #777777 on white is 4.48, #767676 is 4.54 (the grey
    // that
    // the W3C's own guidance names as the lightest to pass).
    @ParameterizedTest
    @CsvSource({"#000000, #FFFFFF, 21.00", "#777777, #FFFFFF, 4.48", "#767676, #FFFFFF, 4.54", "#FFFFFF, #FFFFFF, 1.00"
    })
    void agreesWithPublishedRatios(String one, String other, double published) {
        assertThat(Contrast.ratio(Color.web(one), Color.web(other))).isCloseTo(published, within(0.005));
        assertThat(Contrast.ratio(Color.web(other), Color.web(one))).isCloseTo(published, within(0.005));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            ink, paper
            ink, card
            ink, desk
            ink, amber-pale
            ink, water-pale
            ink, rule
            slate, paper
            slate, card
            slate, desk
            slate, water-pale
            on-copper, copper
            on-copper, copper-deep
            on-lagoon, lagoon
            on-oxide, oxide
            lagoon, paper
            lagoon, card
            lagoon, desk
            moss, paper
            moss, card
            moss, desk
            moss, moss-pale
            amber, paper
            amber, card
            amber, desk
            amber, amber-pale
            oxide, paper
            oxide, card
            oxide, desk
            oxide, oxide-pale
            ink, moss-pale
            ink, oxide-pale
            paper, ink
            paper, moss
            on-rail, rail
            rail-quiet, rail
            """)
    void wordsCanBeReadInBothThemes(String ink, String ground) throws IOException {
        for (var theme : Theme.values()) {
            var palette = palette(theme);
            assertThat(Contrast.ratio(colour(palette, ink), colour(palette, ground)))
                    .as("%s: %s on %s", theme, ink, ground)
                    .isGreaterThanOrEqualTo(TEXT);
        }
    }

    // WCAG 2.2, 1.4.11: parts of a picture that carry meaning, edges of controls
    @ParameterizedTest
    @CsvSource({
        "etch, paper",
        "etch, card",
        "etch, desk",
        "water, paper",
        "lagoon, water-pale",
        "moss, paper",
        "copper, paper",
        "copper, desk",
        "copper, card",
        "oxide, paper",
        "water, rail",
        "rail-quiet, rail"
    })
    void shapesCanBeSeenInBothThemes(String shape, String ground) throws IOException {
        for (var theme : Theme.values()) {
            var palette = palette(theme);
            assertThat(Contrast.ratio(colour(palette, shape), colour(palette, ground)))
                    .as("%s: %s on %s", theme, shape, ground)
                    .isGreaterThanOrEqualTo(SHAPE);
        }
    }

    @Test
    void bothThemesGiveEveryColour() throws IOException {
        assertThat(palette(Theme.BRIGHT).keySet()).isEqualTo(palette(Theme.DIM).keySet());
        assertThat(palette(Theme.BRIGHT)).hasSizeGreaterThan(20);
    }

    private static Color colour(Map<String, Color> palette, String name) {
        return Objects.requireNonNull(palette.get(name), name);
    }

    static Map<String, Color> palette(Theme theme) throws IOException {
        var file = theme == Theme.BRIGHT ? "bright.css" : "dim.css";
        try (var stream = Objects.requireNonNull(Theme.class.getResourceAsStream("/fairflame/screen/" + file))) {
            var css = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            var palette = new HashMap<String, Color>();
            var line = Pattern.compile("-([a-z-]+):\\s*(#[0-9A-Fa-f]{6}|rgba\\([^)]*\\))")
                    .matcher(css);
            while (line.find()) {
                palette.put(line.group(1), Color.web(line.group(2)));
            }
            return palette;
        }
    }
}
