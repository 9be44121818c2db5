package setwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Contrast of every text with what lies behind it, in the light and in the dark palette. Formula and limit: W3C, Web
 * Content Accessibility Guidelines 2.1, success criterion 1.4.3 and the definitions of contrast ratio and relative
 * luminance.
 */
final class PaletteTest {
    private static final double LEAST_CONTRAST = 4.5;
    private static final String[][] TEXT_ON = {
        {"ink", "page"},
        {"ink", "raised"},
        {"ink", "mark"},
        {"ink", "phase"},
        {"muted", "page"},
        {"muted", "raised"},
        {"muted", "mark"},
        {"muted", "phase"},
        {"accent", "page"},
        {"accent", "raised"},
        {"accent", "mark"},
        {"page", "accent"},
        {"even-ink", "even"},
        {"slide1-ink", "slide1"},
        {"slide2-ink", "slide2"},
        {"slide3-ink", "slide3"},
        {"push1-ink", "push1"},
        {"push2-ink", "push2"},
        {"push3-ink", "push3"}
    };

    static Stream<Arguments> pairs() throws IOException {
        Map<String, String> light = palette(0);
        Map<String, String> dark = new HashMap<>(light);
        dark.putAll(palette(1));
        return Stream.of(TEXT_ON)
                .flatMap(pair -> Stream.of(
                        Arguments.of("light", pair[0], pair[1], light.get(pair[0]), light.get(pair[1])),
                        Arguments.of("dark", pair[0], pair[1], dark.get(pair[0]), dark.get(pair[1]))));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void textCanBeReadOn(String palette, String text, String ground, String textColour, String groundColour) {
        assertThat(contrast(textColour, groundColour))
                .as("%s on %s, %s", text, ground, palette)
                .isGreaterThanOrEqualTo(LEAST_CONTRAST);
    }

    /** Black on white is 21 to 1 by definition: the formula is right. */
    @ParameterizedTest
    @MethodSource("known")
    void theFormulaGivesKnownRatios(String a, String b, double ratio) {
        assertThat(contrast(a, b)).isCloseTo(ratio, org.assertj.core.data.Offset.offset(0.005)); // half the last digit
    }

    static Stream<Arguments> known() {
        return Stream.of(
                Arguments.of("#000000", "#ffffff", 21.0),
                Arguments.of("#ffffff", "#ffffff", 1.0),
                // Commonly quoted as the lightest grey that passes on white; value from memory.
                Arguments.of("#767676", "#ffffff", 4.54));
    }

    private static Map<String, String> palette(int block) throws IOException {
        String css;
        try (InputStream in = Report.class.getResourceAsStream("report.css")) {
            css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        Matcher roots = Pattern.compile(":root \\{([^}]*)}").matcher(css);
        for (int i = 0; i <= block; i++) {
            assertThat(roots.find()).isTrue();
        }
        Map<String, String> colours = new HashMap<>();
        Matcher colour = Pattern.compile("--([a-z0-9-]+): (#[0-9a-f]{6});").matcher(roots.group(1));
        while (colour.find()) {
            colours.put(colour.group(1), colour.group(2));
        }
        return colours;
    }

    private static double contrast(String a, String b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
