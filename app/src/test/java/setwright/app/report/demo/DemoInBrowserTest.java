package setwright.app.report.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.example.ExampleDemo;
import setwright.app.report.Chromium;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** The demo's story as a person meets it. */
final class DemoInBrowserTest {
    private static final Path FOLDER = Path.of("target", "example-pages");
    private static Path story;
    private static Chromium chromium;

    @BeforeAll
    static void start() throws IOException {
        chromium = Chromium.start();
        String html = DemoReport.html(ExampleDemo.whole(), "evidence.html", Figures.forPage(UnitSystem.METRIC));
        assertThat(html).doesNotContain("NaN", "Infinity", "Optional");
        story = Files.writeString(Files.createDirectories(FOLDER).resolve("demo.html"), html);
    }

    @AfterAll
    static void stop() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 768, 1280, 2560})
    void theMarginsHoldEverything(int width) {
        Page page = chromium.open(story, width, true);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(FOLDER.resolve("demo-" + width + ".png"))
                .setFullPage(true));
        assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .isEqualTo(0);
        assertThat(chromium.faults()).isEmpty();
    }

    @Test
    void theActsStandInTheirOrderAndEveryStintIsDrawn() {
        Page page = chromium.open(story, 1280, true);
        assertThat(page.locator(".act h2").allTextContents())
                .containsExactly(
                        "As the driver came",
                        "The same driver, coached",
                        "What repeats",
                        "Technique first, it is free",
                        "The one change",
                        "Back to back",
                        "Verdict",
                        "The brief for the driver",
                        "What is true");
        assertThat(page.locator("h1").textContent()).startsWith("Keep the change");
        assertThat(page.locator(".stints").first().locator(".mean").count()).isEqualTo(5);
        assertThat(page.locator("a[href='evidence.html']").count()).isEqualTo(1);
        assertThat(page.locator("body").textContent()).contains("qualified person");
    }
}
