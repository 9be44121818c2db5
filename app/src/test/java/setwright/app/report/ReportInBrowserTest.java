package setwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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

    private static Playwright playwright;
    private static Browser browser;
    private static Path report;

    private final List<String> complaints = new ArrayList<>();
    private final List<String> requests = new ArrayList<>();
    private final List<BrowserContext> contexts = new ArrayList<>();

    @BeforeAll
    static void start() throws IOException {
        Optional<Path> chromium = chromium();
        if (!"true".equals(System.getenv("CI"))) {
            assumeTrue(chromium.isPresent(), "skipped: no 'chromium' on the PATH; install it to test the report");
        }
        report = folder.resolve("report.html");
        Files.writeString(report, Report.html(Example.answer(), Figures.forPage(UnitSystem.METRIC)));
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(
                                chromium.orElseThrow(() -> new AssertionError("CI needs 'chromium' on the PATH")))
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    @AfterAll
    static void stop() {
        if (playwright != null) {
            playwright.close();
        }
    }

    @AfterEach
    void nothingWasFetchedAndNothingComplained() {
        contexts.forEach(BrowserContext::close);
        assertThat(complaints).isEmpty();
        assertThat(requests).allMatch(url -> url.startsWith("file:") || url.startsWith("data:"));
    }

    @Test
    void choosingACornerChangesTheTracesAndEveryOtherPlace() {
        Page page = open(1280, 900, true);
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
        Page page = open(1280, 900, true);
        Locator label = page.locator(".map .label[data-corner='7']");
        label.scrollIntoViewIfNeeded();
        double before = ((Number) page.evaluate("scrollY")).doubleValue();
        label.click();
        assertThat(shown(page)).isEqualTo("corner-7");
        assertThat(((Number) page.evaluate("scrollY")).doubleValue()).isEqualTo(before);
    }

    @Test
    void arrowKeysWalkTheCorners() {
        Page page = open(1280, 900, true);
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
        Page page = open(1280, 900, true);
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
    void worksWithoutScript() {
        Page page = open(1280, 900, false);
        assertThat(shown(page)).isEqualTo("corner-4");
        page.locator(".place[data-corner='11']").click();
        assertThat(shown(page)).isEqualTo("corner-11");
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 768, 1024, 1280, 2560, 3840})
    void theMarginsHoldEverything(int width) {
        Page page = open(width, 900, true);
        assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .as("horizontal scroll at " + width)
                .isEqualTo(0);
    }

    @Test
    void paperShowsWhatIsFolded() {
        Page page = open(1280, 900, true);
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
        Page page = context(1280, 900, true).newPage();
        listen(page);
        page.navigate(hostile.toUri().toString());
        assertThat(page.title()).contains("<img src=x").isNotEqualTo("bad");
        assertThat(page.locator("img").count()).isZero();
    }

    private Page open(int width, int height, boolean script) {
        Page page = context(width, height, script).newPage();
        listen(page);
        page.navigate(report.toUri().toString());
        return page;
    }

    private BrowserContext context(int width, int height, boolean script) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setColorScheme(ColorScheme.LIGHT)
                .setJavaScriptEnabled(script));
        contexts.add(context);
        return context;
    }

    private void listen(Page page) {
        page.onConsoleMessage(message -> complaints.add(message.text()));
        page.onPageError(complaints::add);
        page.onRequest(request -> requests.add(request.url()));
    }

    private static String shown(Page page) {
        Locator visible = page.locator(".corner:visible");
        assertThat(visible.count()).isEqualTo(1);
        return visible.getAttribute("id");
    }

    private static Optional<Path> chromium() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
                .map(entry -> Path.of(entry, "chromium"))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
