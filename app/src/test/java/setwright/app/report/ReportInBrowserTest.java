package setwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.example.Example;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** The report as a person meets it. Needs Chromium: skipped without it, unless CI=true, where it then fails. */
final class ReportInBrowserTest {
    @TempDir
    private static Path folder;

    private static Chromium chromium;
    private static Path report;

    @BeforeAll
    static void start() throws IOException {
        chromium = Chromium.start();
        report = folder.resolve("report.html");
        Files.writeString(report, Report.html(Example.answer(), Figures.forPage(UnitSystem.METRIC)));
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

    @Test
    void choosingACornerChangesTheTracesAndEveryOtherPlace() {
        Page page = open(1280, true);
        assertThat(shown(page)).isEqualTo("corner-4");
        page.selectOption("#corner-choice", "9");
        assertThat(shown(page)).isEqualTo("corner-9");
        assertThat(page.locator(".place.chosen").getAttribute("data-corner")).isEqualTo("9");
        assertThat(page.locator(".balance tr.chosen").getAttribute("data-corner"))
                .isEqualTo("9");
        assertThat(page.locator(".driving tr.chosen").getAttribute("data-corner"))
                .isEqualTo("9");
        assertThat(page.locator(".map .label.chosen").getAttribute("data-corner"))
                .isEqualTo("9");
        assertThat(page.locator(".status .now:visible").textContent()).startsWith("Corner 9:");
    }

    @Test
    void pointingAtTheMapChoosesWithoutAJump() {
        Page page = open(1280, true);
        Locator label = page.locator(".map .label[data-corner='7']");
        label.scrollIntoViewIfNeeded();
        double before = ((Number) page.evaluate("scrollY")).doubleValue();
        label.click();
        assertThat(shown(page)).isEqualTo("corner-7");
        assertThat(((Number) page.evaluate("scrollY")).doubleValue()).isEqualTo(before);
    }

    @Test
    void arrowKeysWalkTheCorners() {
        Page page = open(1280, true);
        page.locator(".place.chosen").focus();
        page.keyboard().press("ArrowRight");
        assertThat(shown(page)).isEqualTo("corner-5");
        assertThat(page.evaluate("document.activeElement.dataset.corner")).isEqualTo("5");
        page.keyboard().press("ArrowLeft");
        page.keyboard().press("ArrowLeft");
        assertThat(shown(page)).isEqualTo("corner-3");
    }

    @Test
    void everythingThatActsIsReachedWithTheTabKey() {
        Page page = open(1280, true);
        List<String> reached = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            page.keyboard().press("Tab");
            if (i > 0 && (boolean) page.evaluate("document.activeElement.matches('.skip, body')")) {
                break; // once round
            }
            reached.add(
                    (String)
                            page.evaluate(
                                    "(e => e.tagName + '.' + (e.className.baseVal ?? e.className).split(' ')[0] + '#' + e.id)(document.activeElement)"));
        }
        assertThat(reached)
                .contains("A.skip#", "A.place#", "SELECT.#corner-choice", "BUTTON.step#", "SUMMARY.#", "A.label#");
        assertThat(reached.stream().filter("A.place#"::equals))
                .as("one stop for the whole ribbon")
                .hasSize(1);
    }

    @Test
    void bothGripCurvesAreDrawnWithTheirPointsInsideTheDrawing() {
        Page page = open(1280, true);
        Locator plot = page.locator("#axles svg.axles");
        assertThat(plot.locator("path.axle-curve").count()).isEqualTo(2);
        assertThat(plot.locator("circle.axle-point.front").count()).isEqualTo(9);
        assertThat(plot.locator("circle.axle-point.rear").count()).isEqualTo(12);
        var box = plot.boundingBox();
        for (Locator point : plot.locator("circle.axle-point").all()) {
            var place = point.boundingBox();
            assertThat(place.x).isBetween(box.x - 4.0, box.x + box.width);
            assertThat(place.y).isBetween(box.y, box.y + box.height);
        }
        assertThat(page.locator("#balance").textContent()).contains("above 0.95 of its peak force");
    }

    @Test
    void worksWithoutScript() {
        Page page = open(1280, false);
        assertThat(shown(page)).isEqualTo("corner-4");
        page.locator(".place[data-corner='11']").click();
        assertThat(shown(page)).isEqualTo("corner-11");
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 768, 1024, 1280, 2560, 3840})
    void theMarginsHoldEverything(int width) {
        Page page = open(width, true);
        assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .as("horizontal scroll at " + width)
                .isEqualTo(0);
    }

    @Test
    void paperShowsWhatIsFolded() {
        Page page = open(1280, true);
        page.evaluate("dispatchEvent(new Event('beforeprint'))");
        assertThat(page.locator("details:not([open])").count()).isZero();
        page.evaluate("dispatchEvent(new Event('afterprint'))");
        assertThat(page.locator("details[open]").count()).isZero();
    }

    @Test
    void hostileNamesStayText() throws IOException {
        Path hostile = folder.resolve("hostile.html");
        Files.writeString(
                hostile,
                Report.html(
                        Example.answer(
                                "<img src=x onerror=\"document.title='bad'\">",
                                "</script><b>",
                                "'><svg onload=alert(1)>"),
                        Figures.forPage(UnitSystem.METRIC)));
        Page page = chromium.open(hostile, 1280, true);
        assertThat(page.title()).contains("<img src=x").isNotEqualTo("bad");
        assertThat(page.locator("img").count()).isZero();
    }

    private static Page open(int width, boolean script) {
        return chromium.open(report, width, script);
    }

    private static String shown(Page page) {
        Locator visible = page.locator(".corner:visible");
        assertThat(visible.count()).isEqualTo(1);
        return visible.getAttribute("id");
    }
}
