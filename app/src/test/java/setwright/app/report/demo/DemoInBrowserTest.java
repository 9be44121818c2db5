package setwright.app.report.demo;

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
import setwright.app.example.ExampleDemo;
import setwright.app.report.ExamplePages;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** The demo's story as a person meets it. */
final class DemoInBrowserTest {
    @RegisterExtension
    static final ExamplePages pages = new ExamplePages();

    @BeforeAll
    static void start() throws IOException {
        pages.keep("demo", DemoReport.html(ExampleDemo.whole(), "evidence.html", Figures.forPage(UnitSystem.METRIC)));
    }

    static Stream<Arguments> pagesAndWidths() {
        return ExamplePages.atAllWidths("demo");
    }

    @ParameterizedTest
    @MethodSource("pagesAndWidths")
    void theMarginsHoldEverything(String name, int width) {
        pages.assertMarginsHold(name, width);
    }

    @Test
    void theActsStandInTheirOrderAndEveryStintIsDrawn() {
        Page page = pages.open("demo", 1280);
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
        assertThat(page.locator("h1").textContent()).matches("Keep the change: [a-z_]+ from \\S+ to \\S+\\.");
        assertThat(page.locator(".stints").first().locator(".mean").count()).isEqualTo(5);
        assertThat(page.locator("a[href='evidence.html']").count()).isEqualTo(1);
        assertThat(page.locator("body").textContent()).contains("qualified person");
    }

    /** A drawing shrinks on a phone; its words must not. */
    @Test
    void theDrawingsCanBeReadOnAPhone() {
        Page page = pages.open("demo", 390);
        assertThat(page.locator("svg.stints").first().boundingBox().width).isLessThan(390.0);
        for (var mark : page.locator("svg.stints .mark").all()) {
            assertThat(mark.boundingBox().height).as(mark.textContent()).isGreaterThan(10.0);
        }
    }
}
