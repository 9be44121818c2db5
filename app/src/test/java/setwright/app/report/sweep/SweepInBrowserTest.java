package setwright.app.report.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
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
import setwright.app.example.ExampleSweep;
import setwright.app.report.Chromium;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** The pages of sweeps as a person meets them. */
final class SweepInBrowserTest {
    private static final Figures METRIC = Figures.forPage(UnitSystem.METRIC);
    /** Kept where a person can look at them. */
    private static final Path FOLDER = Path.of("target", "example-pages");

    private static final Map<String, Path> PAGES = new LinkedHashMap<>();
    private static Chromium chromium;

    @BeforeAll
    static void start() throws IOException {
        chromium = Chromium.start();
        keep("sweep-one", SweepReport.html(ExampleSweep.one(), METRIC));
        keep("sweep-two", SweepReport.html(ExampleSweep.two(), METRIC));
        keep("sweep-flat", SweepReport.html(ExampleSweep.flat(), METRIC));
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
        return Stream.of("sweep-one", "sweep-two", "sweep-flat")
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
    void oneItemIsDrawnWithThePresentSetupMarked() {
        Page page = open("sweep-one", 1280);
        assertThat(page.locator("h1").textContent()).startsWith("Quickest with front_bar 3");
        assertThat(page.locator("figcaption b").allTextContents())
                .containsExactly("Lap time", "Balance at the limit", "Lowest speed in corners");
        assertThat(page.locator("figure").first().locator("circle").count()).isEqualTo(1);
        assertThat(page.locator(".swept tbody tr").count()).isEqualTo(11);
        assertThat(page.locator(".swept tr.chosen th").textContent())
                .startsWith("5")
                .contains("present");
    }

    @Test
    void twoItemsAreAMapWithItsFiguresWrittenIn() {
        Page page = open("sweep-two", 1280);
        assertThat(page.locator("rect.setup").count()).isEqualTo(99);
        assertThat(page.locator("rect.setup.quickest").count()).isEqualTo(1);
        assertThat(page.locator("rect.setup.present").count()).isEqualTo(1);
        assertThat(page.locator(".setups .value").allTextContents()).hasSize(99).contains("0.00");
    }

    @Test
    void whatMakesNoDifferenceIsSaidToMakeNone() {
        assertThat(open("sweep-flat", 1280).locator("h1").textContent())
                .contains("makes no difference to lap time that this calculation can tell");
    }

    @Test
    void hostileNamesStayText() throws IOException {
        keep("sweep-hostile", SweepReport.html(ExampleSweep.at("<img src=x onerror=alert(1)>"), METRIC));
        Page page = open("sweep-hostile", 1280);
        assertThat(page.locator("img").count()).isZero();
        assertThat(page.locator(".facts").textContent()).contains("<img src=x");
    }

    private static void keep(String name, String html) throws IOException {
        assertThat(html).doesNotContain("NaN", "Infinity", "Optional").doesNotContain("@import");
        Files.createDirectories(FOLDER);
        PAGES.put(name, Files.writeString(FOLDER.resolve(name + ".html"), html));
    }

    private static Page open(String name, int width) {
        Page page = chromium.open(PAGES.getOrDefault(name, FOLDER), width, true);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(FOLDER.resolve(name + "-" + width + ".png"))
                .setFullPage(true));
        return page;
    }
}
