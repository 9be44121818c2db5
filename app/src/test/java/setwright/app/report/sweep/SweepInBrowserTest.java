package setwright.app.report.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.app.example.ExampleSweep;
import setwright.app.report.ExamplePages;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** The pages of sweeps as a person meets them. */
final class SweepInBrowserTest {
    private static final Figures METRIC = Figures.forPage(UnitSystem.METRIC);

    @RegisterExtension
    static final ExamplePages pages = new ExamplePages();

    @BeforeAll
    static void start() throws IOException {
        pages.keep("sweep-one", SweepReport.html(ExampleSweep.one(), METRIC));
        pages.keep("sweep-two", SweepReport.html(ExampleSweep.two(), METRIC));
        pages.keep("sweep-flat", SweepReport.html(ExampleSweep.flat(), METRIC));
    }

    static Stream<Arguments> pagesAndWidths() {
        return ExamplePages.atAllWidths("sweep-one", "sweep-two", "sweep-flat");
    }

    @ParameterizedTest
    @MethodSource("pagesAndWidths")
    void theMarginsHoldEverything(String name, int width) {
        pages.assertMarginsHold(name, width);
    }

    @Test
    void oneItemIsDrawnWithThePresentSetupMarked() {
        Page page = pages.open("sweep-one", 1280);
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
        Page page = pages.open("sweep-two", 1280);
        assertThat(page.locator("rect.setup").count()).isEqualTo(99);
        assertThat(page.locator("rect.setup.quickest").count()).isEqualTo(1);
        assertThat(page.locator("rect.setup.present").count()).isEqualTo(1);
        assertThat(page.locator(".setups .value").allTextContents()).hasSize(99).contains("0.00");
    }

    @Test
    void whatMakesNoDifferenceIsSaidToMakeNone() {
        assertThat(pages.open("sweep-flat", 1280).locator("h1").textContent())
                .contains("makes no difference to lap time that this calculation can tell");
    }

    @Test
    void hostileNamesStayText() throws IOException {
        pages.keep("sweep-hostile", SweepReport.html(ExampleSweep.at("<img src=x onerror=alert(1)>"), METRIC));
        Page page = pages.open("sweep-hostile", 1280);
        assertThat(page.locator("img").count()).isZero();
        assertThat(page.locator(".facts").textContent()).contains("<img src=x");
    }
}
