package setwright.app.report.change;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.app.example.Example;
import setwright.app.example.ExampleCarFit;
import setwright.app.example.ExamplePrediction;
import setwright.app.report.Chromium;
import setwright.app.report.fit.CarFitReport;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** The pages of a predicted change and of an identified car as a person meets them. */
final class PredictionInBrowserTest {
    private static final Figures METRIC = Figures.forPage(UnitSystem.METRIC);
    /** Kept where a person can look at them. */
    private static final Path FOLDER = Path.of("target", "example-pages");

    private static final Map<String, Path> PAGES = new LinkedHashMap<>();
    private static Chromium chromium;

    @BeforeAll
    static void start() throws IOException {
        chromium = Chromium.start();
        keep("predict", PredictionReport.html(ExamplePrediction.one(), METRIC));
        keep("predict-all", PredictionReport.html(ExamplePrediction.all(), METRIC));
        keep("car-fit", CarFitReport.html(ExampleCarFit.answer(), METRIC));
    }

    @AfterAll
    static void stop() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @AfterEach
    void nothingWasFetchedAndNothingComplained() {
        assertThat(chromium.faults()).isEmpty();
    }

    static Stream<Arguments> pagesAndWidths() {
        return Stream.of("predict", "predict-all", "car-fit")
                .flatMap(name -> Stream.of(360, 768, 1280, 2560).map(width -> Arguments.of(name, width)));
    }

    @ParameterizedTest
    @MethodSource("pagesAndWidths")
    void theMarginsHoldEverything(String name, int width) {
        Page page = open(name, width);
        assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .isEqualTo(0);
    }

    @Test
    void thePlotsShareTheirDistanceAxisAndStandInTheirOrder() {
        Page page = open("predict", 1280);
        assertThat(page.locator(".panel.lap figcaption").allTextContents())
                .hasSize(3)
                .satisfies(titles -> {
                    assertThat(titles.get(0)).startsWith("Change of balance");
                    assertThat(titles.get(1)).startsWith("Time against the lap as driven");
                });
        assertThat(page.locator(".panel.lap svg.plot").evaluateAll("all => new Set(all.map(e => e.clientWidth)).size"))
                .as("one width")
                .isEqualTo(1);
        assertThat(page.locator(".corner-number").allTextContents())
                .containsExactly("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13");
    }

    /** Colour for the direction, the sign beside it, and neither colour nor doubt hidden where the sign is not sure. */
    @Test
    void directionHasColourAndSign() {
        Page page = open("predict", 1280);
        assertThat(page.locator(".phases td.slide2 .value, .phases td.slide1 .value")
                        .allTextContents())
                .isNotEmpty()
                .allMatch(text -> text.startsWith("\u2212"));
        assertThat(page.locator(".phases td.pale").first().getAttribute("title"))
                .contains("the track decides");
        assertThat(page.locator("h1").textContent()).startsWith("front_bar 5 \u2192 4: quicker by");
    }

    @Test
    void hostileNamesStayText() throws IOException {
        keep(
                "hostile",
                PredictionReport.html(
                        ExamplePrediction.one(Example.answer(
                                "<img src=x onerror=\"document.title='bad'\">", "circuit", "'><svg onload=alert(1)>")),
                        METRIC));
        Page page = open("hostile", 1280);
        assertThat(page.locator("img").count()).isZero();
        assertThat(page.locator(".facts").textContent()).contains("<img src=x");
    }

    private static void keep(String name, String html) throws IOException {
        assertThat(html).doesNotContain("NaN", "Infinity", "Optional").doesNotContain("@import");
        PAGES.put(name, Files.writeString(Files.createDirectories(FOLDER).resolve(name + ".html"), html));
    }

    private static Page open(String name, int width) {
        Page page = chromium.open(PAGES.getOrDefault(name, FOLDER), width, ColorScheme.LIGHT);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(FOLDER.resolve(name + "-" + width + ".png"))
                .setFullPage(true));
        return page;
    }
}
