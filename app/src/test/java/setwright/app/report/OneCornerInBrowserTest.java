package setwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.example.Example;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** A rear that lets go in one corner alone, as a person meets it: told where the balance is, and no problem of the car. */
final class OneCornerInBrowserTest {
    @TempDir
    private static Path folder;

    private static Chromium chromium;

    @BeforeAll
    static void start() throws IOException {
        chromium = Chromium.start();
        Files.writeString(
                folder.resolve("seen.html"),
                Report.html(Example.seenInOneCorner(), Figures.forPage(UnitSystem.METRIC)));
    }

    @AfterAll
    static void stop() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 500})
    void itIsSeenButNotBlamedOnTheCar(int width) {
        Page page = chromium.open(folder.resolve("seen.html"), width, true);
        assertThat(page.locator("h1").first().textContent()).contains("no problem of the car repeats");
        assertThat(page.getByText("In corner 5 alone the rear lets go on entry").isVisible())
                .isTrue();
        assertThat(page.getByText("the rear lets go in corner 5 alone").isVisible())
                .isTrue();
        assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                .isEqualTo(true);
        assertThat(chromium.faults()).isEmpty();
    }
}
