package setwright.app.report.trial;

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
import setwright.app.example.ExampleTrial;
import setwright.app.report.ExamplePages;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** The page of a trial as a person meets it. */
final class TrialInBrowserTest {
    @RegisterExtension
    static final ExamplePages pages = new ExamplePages();

    @BeforeAll
    static void start() throws IOException {
        pages.keep("trial", TrialReport.html(ExampleTrial.answer(), Figures.forPage(UnitSystem.METRIC)));
    }

    static Stream<Arguments> pagesAndWidths() {
        return ExamplePages.atAllWidths("trial");
    }

    @ParameterizedTest
    @MethodSource("pagesAndWidths")
    void theMarginsHoldEverything(String name, int width) {
        pages.assertMarginsHold(name, width);
    }

    @Test
    void everyLapStandsInItsRunAndTheDayIsDrawn() {
        Page page = pages.open("trial", 1280);
        assertThat(page.locator("h1").textContent()).isEqualTo("Keep the change.");
        assertThat(page.locator("svg.stints").count()).isEqualTo(2);
        assertThat(page.locator("svg.stints >> nth=0").locator("circle.ring").count())
                .as("laps without the change")
                .isEqualTo(14);
        assertThat(page.locator("svg.stints >> nth=0").locator("path.lap").count())
                .as("laps with it")
                .isEqualTo(7);
        assertThat(page.locator("svg.stints .day").count()).isEqualTo(2);
        assertThat(page.locator("svg.stints >> nth=0").textContent()).contains("<b>stint 5</b>");
    }

    @Test
    void predictedStandsBesideMeasured() {
        Page page = pages.open("trial", 1280);
        assertThat(page.locator(".effects tbody tr").count()).isEqualTo(3);
        assertThat(page.locator(".effects tbody tr >> nth=1").textContent())
                .contains("Mid, low speed")
                .contains("clear");
        assertThat(page.locator(".effects tbody tr >> nth=0 >> td >> nth=0").textContent())
                .matches("[+\u2212]?\\d\\.\\d\\d");
    }
}
