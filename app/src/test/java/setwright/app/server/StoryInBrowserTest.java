package setwright.app.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.report.Chromium;
import setwright.app.scoreboard.Home;

/**
 * A day on the page, in order: laps come in, are looked at from every side, a change is turned, tried and judged, and noted. Two runs of one car from
 * another simulation. Pictures of each view lie in the build folder.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
final class StoryInBrowserTest {
    private static final Path CASE = Home.cases().resolve("practice-08");
    private static final Path PICTURES = Path.of("target", "live-pages");
    private static final String HOSTILE = "<img src=x onerror=alert(1)>";
    /** Bytes of scripts and styles that a page may ask for (the figure). */
    private static final int MOST_BYTES = 400_000;

    @TempDir
    private static Path folder;

    private Chromium chromium;
    private ServedLogbook served;
    /** Of the server, each time that it was started. */
    private final List<String> addresses = new ArrayList<>();

    private Page page;

    @BeforeAll
    void open() throws IOException {
        Files.createDirectories(PICTURES);
        chromium = Chromium.start();
        serve();
        page = chromium.window(served.address(), 1280);
        page.setDefaultTimeout(60_000);
    }

    private void serve() {
        served = ServedLogbook.in(folder.resolve("season"));
        addresses.add(served.address());
    }

    @AfterAll
    void close() {
        chromium.close();
        served.close();
    }

    @AfterEach
    void nothingIsComplainedOfOrFetchedFromElsewhere() {
        assertThat(chromium.faultsBeside(addresses)).isEmpty();
    }

    private void go(String path) {
        page.navigate(served.address() + path);
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    /** Presses a button that stands there, once the page it stands on does what its buttons say. */
    private void press(String name) {
        button(name).waitFor();
        page.waitForLoadState();
        button(name).click();
    }

    private void picture(String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve(name + ".png"))
                .setFullPage(true));
    }

    /** Rules of WCAG 2.2 up to AA, as the axe engine checks them. */
    private void assertAccessible() {
        assertThat(new AxeBuilder(page)
                                .withTags(List.of(
                                        "wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                                .analyze()
                                .getViolations()
                                .stream()
                                .map(rule -> rule.getId() + ": " + rule.getHelp() + " "
                                        + rule.getNodes().stream()
                                                .map(node -> node.getHtml())
                                                .limit(3)
                                                .toList()))
                .isEmpty();
    }

    @Test
    @Order(1)
    void anEmptyLogbookSaysWhatToDo() {
        go("");
        assertThat(page.locator(".empty").textContent()).contains("Bring a recording");
        press("Read them in");
        assertThat(page.locator("#sent").textContent()).contains("Choose a recording first.");
        assertAccessible();
        picture("empty");
    }

    @Test
    @Order(2)
    void aRecordingWithoutItsCarIsRefusedInWordsWhereItHappened() {
        go("");
        page.setInputFiles("#recordings", CASE.resolve("stint1.csv.gz"));
        press("Read them in");
        page.waitForSelector("#sent .wrong");
        assertThat(page.locator("#sent").textContent()).contains("Which car?");
        go("");
        assertThat(page.locator(".stints").count()).isZero();
    }

    @Test
    @Order(3)
    void howARecordingIsUnderstoodIsShownAndCorrectedAgainstItsPhysics() {
        go("");
        page.setInputFiles("#recordings", CASE.resolve("stint1.csv.gz"));
        page.setInputFiles("input[name=sheet]", CASE.resolve("car_stint1.yaml"));
        press("See how it is understood");
        page.waitForSelector(".understood");
        String all = page.locator(".understood").textContent();
        assertThat(all).contains("its header reads like speed", "correlation");
        assertAccessible();
        picture("understood");
        page.locator("tr:has(th:text-is('yaw rate')) input[type=checkbox]").click();
        page.waitForSelector("#understood .wrong");
        assertThat(page.locator("#understood .wrong").textContent()).contains("yaw rate");
        page.locator("button[aria-label='Leave out gear']").click();
        page.waitForSelector("text=Corrected, and tested against the data");
        assertThat(page.locator(".understood th:text-is('gear')").count()).isZero();
    }

    @Test
    @Order(4)
    void lapsComeInThroughTheBrowser() {
        go("");
        page.setInputFiles("#recordings", CASE.resolve("stint1.csv.gz"));
        page.setInputFiles("input[name=sheet]", CASE.resolve("car_stint1.yaml"));
        page.fill("input[name=car]", "club racer");
        page.fill("input[name=driver]", HOSTILE);
        page.fill("input[name=circuit]", "The Old Quarry");
        press("Read them in");
        page.waitForSelector("#sent a");
        assertThat(page.locator("#sent").textContent()).contains("Stint 1 is in.");
        page.waitForSelector(".stints tbody tr");
        assertThat(page.locator(".stints tbody tr").count()).isEqualTo(1);
        assertThat(page.locator(".stints tbody").textContent()).contains(HOSTILE, "The Old Quarry");
        assertThat(page.locator("img").count()).isZero();
        assertAccessible();
        picture("stints");
    }

    @Test
    @Order(5)
    void theSameRecordingIsKnown() {
        go("");
        page.setInputFiles("#recordings", CASE.resolve("stint1.csv.gz"));
        press("Read them in");
        page.waitForSelector("#sent a");
        assertThat(page.locator("#sent").textContent()).contains("Stint 1 is this recording already.");
    }

    @Test
    @Order(6)
    void aStintIsReadWhileThePageWaitsThenArgues() {
        go("");
        page.click(".stints a");
        page.waitForSelector("[data-follow] progress");
        assertThat(page.locator("main").textContent()).contains("Stint 1 is being read.", "Stint 1 from stint1.csv.gz");
        page.waitForSelector("#live-traces[data-ready]");
        for (String link : List.of(
                "Laps", "Driving", "Balance", "Cause", "Pattern", "Besides", "Change", "Back to back", "Logbook")) {
            assertThat(page.locator("main h2").allTextContents()).contains(link);
        }
        assertThat(page.locator(".ribbon .place").count()).isGreaterThan(5);
        page.waitForCondition(
                () -> page.locator("#change-part .answer").first().textContent().startsWith("Nothing to change"));
        assertAccessible();
        picture("stint");
    }

    @Test
    @Order(7)
    void onePlaceIsTheSameEverywhere() {
        Locator second = page.locator(".ribbon .place").nth(1);
        String corner = second.getAttribute("data-corner");
        second.click();
        assertThat(page.locator("#corner-choice").inputValue()).isEqualTo(corner);
        for (String part : List.of(".ribbon .place", ".driving tr", ".balance tr", ".map .label")) {
            assertThat(page.locator(part + ".chosen").getAttribute("data-corner"))
                    .as(part)
                    .isEqualTo(corner);
        }
        double from = Double.parseDouble(page.getAttribute("#live-traces", "data-from"));
        double to = Double.parseDouble(page.getAttribute("#live-traces", "data-to"));
        assertThat(to - from).isBetween(20.0, 2_000.0);
        page.keyboard().press("ArrowRight");
        assertThat(page.locator(".ribbon .place.chosen").getAttribute("data-corner"))
                .isNotEqualTo(corner);
        assertThat(Double.parseDouble(page.getAttribute("#live-traces", "data-from")))
                .isGreaterThan(from);
        page.reload();
        page.waitForSelector("#live-traces[data-ready]");
        assertThat(page.locator(".ribbon .place.chosen").getAttribute("data-corner"))
                .isNotEqualTo(corner);
    }

    @Test
    @Order(8)
    void tracesZoomMoveAndTellTheFigureUnderTheCursor() {
        page.click("#whole-lap");
        double whole = width();
        assertThat(page.locator("#live-traces .uplot").count()).isEqualTo(8);
        press("Nearer");
        assertThat(width()).isLessThan(0.7 * whole);
        press("Further");
        assertThat(width()).isGreaterThan(0.9 * whole);
        page.click("#whole-lap");
        page.locator(".plots").focus();
        page.keyboard().press("+");
        page.keyboard().press("+");
        assertThat(width()).isLessThan(0.7 * whole);
        double from = Double.parseDouble(page.getAttribute("#live-traces", "data-from"));
        page.keyboard().press("ArrowRight");
        assertThat(Double.parseDouble(page.getAttribute("#live-traces", "data-from")))
                .isGreaterThan(from);
        page.keyboard().press("0");
        assertThat(width()).isEqualTo(whole);
        page.keyboard().press("Shift+ArrowRight");
        assertThat(page.locator(".trace output").first().textContent()).contains("typical");
        assertThat(page.locator(".ribbon .place.under").count()).isLessThanOrEqualTo(1);
        Locator plot = page.locator("#live-traces .u-over").first();
        plot.scrollIntoViewIfNeeded();
        plot.hover();
        assertThat(page.locator(".trace output").first().textContent())
                .matches(Pattern.compile("typical \\d+, lap \\d+ \\d+ km/h"));
        assertThat(page.locator(".map .here.seen").count()).isEqualTo(1);
        double left = plot.boundingBox().x;
        double top = plot.boundingBox().y;
        page.mouse().move(left + 100, top + 40);
        page.mouse().down();
        page.mouse().move(left + 300, top + 40);
        page.mouse().up();
        assertThat(width()).isLessThan(0.4 * whole);
        page.locator("#over").selectOption("time");
        page.click("#whole-lap");
        assertThat(width()).isBetween(30.0, 300.0);
        page.locator("#over").selectOption("station");
    }

    private double width() {
        return Double.parseDouble(page.getAttribute("#live-traces", "data-to"))
                - Double.parseDouble(page.getAttribute("#live-traces", "data-from"));
    }

    @Test
    @Order(9)
    void aLapIsOneClickAway() {
        page.locator(".lap").nth(2).click();
        assertThat(page.locator(".lap[aria-pressed=true]").count()).isEqualTo(1);
        assertThat(page.locator(".keys .key-chosen").count()).isEqualTo(1);
        page.check("text=each lap on its own");
        page.locator("#traces").screenshot(new Locator.ScreenshotOptions().setPath(PICTURES.resolve("traces.png")));
        page.uncheck("text=each lap on its own");
    }

    /** Turns an item by so many steps with the keyboard. */
    private void turn(String item, int steps) {
        page.waitForLoadState();
        page.locator("#turn-" + item).focus();
        for (int i = 0; i < Math.abs(steps); i++) {
            page.keyboard().press(steps < 0 ? "ArrowLeft" : "ArrowRight");
        }
    }

    @Test
    @Order(10)
    void whatProvesAClaimIsOneClickAway() {
        page.locator(".laps .details a[data-lap], #laps a[data-lap], #driving a[data-lap]")
                .first()
                .click();
        String lap = page.locator(".lap[aria-pressed=true]").textContent();
        assertThat(lap).isNotEmpty();
        page.click("#whole-lap");
        page.waitForCondition(() -> page.locator(".marks .mark").count() > 50);
        assertThat(page.locator(".marks .chosen-lap").count()).isPositive();
        Locator mark = page.locator(".marks .mark:not(.chosen-lap)").first();
        String other = mark.getAttribute("data-lap");
        mark.dispatchEvent("click"); // marks of several laps may lie on each other
        assertThat(page.locator(".lap[aria-pressed=true]").textContent()).startsWith(other);
    }

    @Test
    @Order(11)
    void theMapShowsMoreThanBalance() {
        page.locator("#map-shows").selectOption("speed");
        assertThat(page.locator("#map-words").textContent()).contains("Speed of the typical lap", "km/h");
        assertThat(page.locator(".map .shade").count()).isGreaterThan(5);
        page.locator("#map-shows").selectOption("offset");
        assertThat(page.locator("#map-words").textContent()).contains("lines of all laps");
        page.locator("#map-shows").selectOption("hands");
        assertThat(page.locator("#map-words").textContent()).contains("gestures of the hands");
        page.locator("#map-shows").selectOption("balance");
        assertThat(page.locator(".map .shade, .map .hands-dot").count()).isZero();
    }

    @Test
    @Order(12)
    void anItemIsTurnedAndItsEffectIsDrawn() {
        turn("front_bar", -5);
        page.waitForSelector("#turned[data-full-ms]");
        page.waitForCondition(
                () -> page.locator("#turned .answer").textContent().startsWith("front_bar 9 → 4"));
        assertThat(page.locator("#turn-front_bar").getAttribute("aria-valuetext"))
                .isEqualTo("4 position");
        assertThat(page.locator(".turned-corners tbody tr").count())
                .isEqualTo(page.locator(".ribbon .place").count());
        assertThat(page.locator(".ribbon .would.line").count()).isPositive();
        assertThat(page.locator(".ribbon .would.time").count())
                .isEqualTo(page.locator(".ribbon .place").count());
        assertAccessible();
        picture("turned");
        press("As driven");
        page.waitForCondition(() -> page.locator(".ribbon .would").count() == 0);
        assertThat(page.locator("#turned").textContent()).contains("As driven.");
        assertThat(page.locator("#turn-front_bar").getAttribute("aria-valuetext"))
                .isEqualTo("9 position");
    }

    @Test
    @Order(13)
    void severalItemsNeedAReasonAndOneIsTriedWithAClick() {
        turn("front_bar", -1);
        button("Try this back to back").waitFor();
        turn("rear_bar", 1);
        page.waitForSelector("#together");
        press("Try this back to back");
        page.waitForCondition(() -> !page.locator("#tried-came").textContent().isEmpty());
        assertThat(page.locator("#tried-came").textContent()).contains("rear_bar", "--together");
        press("As driven");
        turn("front_bar", -5);
        press("Try this back to back");
        page.waitForSelector("#trial-acts");
        assertThat(page.locator("#trial .answer").textContent()).startsWith("Trial 1: front_bar");
        assertThat(page.locator(".run.driven").count()).isEqualTo(1);
        assertThat(page.locator(".run").count()).isGreaterThanOrEqualTo(2);
        assertThat(page.locator("[data-act=judge]").isDisabled()).isTrue();
        turn("rear_bar", 1);
        page.waitForSelector(".locked");
        assertThat(page.locator(".locked").textContent()).contains("Trial 1", "under way");
        assertThat(button("Try this back to back").count()).isZero();
        press("As driven");
        picture("trial");
    }

    @Test
    @Order(14)
    void theSecondRunComesInAndTheTrialIsJudged() {
        go("");
        page.setInputFiles("#recordings", CASE.resolve("stint2.csv.gz"));
        page.setInputFiles("input[name=sheet]", CASE.resolve("car_stint2.yaml"));
        page.fill("input[name=car]", "club racer");
        press("Read them in");
        page.waitForSelector("#sent a");
        page.click("#sent a");
        page.waitForSelector("#live-traces[data-ready]");
        assertThat(page.locator(".run.driven").allTextContents().toString()).contains("A stint 1", "B stint 2");
        press("Judge it now");
        page.waitForSelector("text=See the verdict");
        page.click("text=See the verdict");
        assertThat(page.locator("h1").textContent()).isEqualTo("Keep the change.");
        assertThat(page.locator("svg.stints").count()).isEqualTo(1);
        picture("verdict");
        go("stints/2");
        page.waitForSelector("#live-traces[data-ready]");
        assertThat(page.locator("#trial .answer").textContent()).isEqualTo("No trial is under way.");
    }

    @Test
    @Order(15)
    void whatIsProposedIsShownWithAClickAndATrialCanBeGivenUp() throws IOException {
        Path other = Home.cases().resolve("practice-01");
        served.add(other.resolve("stint1.csv.gz"), other.resolve("car.yaml"), "hill climber", "Ada", "Harbour");
        go("stints/3");
        page.waitForSelector("#live-traces[data-ready]");
        press("Show the proposed change");
        page.waitForSelector("#turned[data-full-ms]");
        assertThat(page.locator("#turned .answer").textContent()).contains("→", " a lap");
        page.click("text=All that was weighed");
        assertThat(page.locator(".candidates tbody tr").count()).isGreaterThan(3);
        assertAccessible();
        picture("proposed");
        press("Try this back to back");
        page.waitForSelector("#trial-acts");
        press("Give it up");
        press("Really give it up");
        page.waitForSelector("text=No trial is under way.");
        page.waitForSelector("#live-traces[data-ready]");
        go("stints/1");
        page.waitForSelector("#live-traces[data-ready]");
    }

    @Test
    @Order(16)
    void notesAreTakenAndFound() {
        page.fill("#logbook input[name=words]", HOSTILE + " felt a gust in corner 3");
        page.click("#logbook button");
        page.waitForSelector("text=Noted.");
        go("story");
        assertThat(page.locator(".story").allTextContents().toString()).contains(HOSTILE, "Trial 1 is planned");
        page.fill("input[name=search]", "gust");
        press("Find");
        assertThat(page.locator(".story li").count()).isEqualTo(1);
        assertThat(page.locator("img").count()).isZero();
        assertAccessible();
        picture("story");
        go("tried");
        assertThat(page.locator(".tried h2").allTextContents().toString())
                .contains("Trial 1, club racer: front_bar", "keep", "not judged");
        assertThat(page.locator(".tried tbody tr").first().textContent()).contains("lap time, s");
        assertAccessible();
        picture("tried");
    }

    @Test
    @Order(17)
    void theSheetsOpen() {
        go("stints/1/brief");
        assertThat(page.locator("h1").first().textContent()).isNotEmpty();
        assertThat(page.evaluate("getComputedStyle(document.body).fontFamily").toString())
                .as("its own style sheet is let in")
                .contains("sans-serif");
        picture("brief");
    }

    @ParameterizedTest
    @Order(18)
    @ValueSource(ints = {360, 768, 1280, 2560, 3840})
    void theMarginsHoldEverything(int width) {
        page.setViewportSize(width, 900);
        for (String path : List.of("", "stints/3", "story", "tried")) {
            go(path);
            if (path.startsWith("stints")) {
                page.waitForSelector("#live-traces[data-ready]");
                turn("rear_wing", 1);
                page.waitForSelector(".turned-corners");
            }
            assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                    .as(path + " at " + width)
                    .isEqualTo(0);
            if (width == 360 || width == 2560) {
                picture((path.isEmpty() ? "first" : path.replace('/', '-')) + "-" + width);
            }
        }
        page.setViewportSize(1280, 900);
    }

    @Test
    @Order(19)
    void nightAndUnitsAreKept() {
        go("stints/1");
        page.waitForSelector("#live-traces[data-ready]");
        page.locator("#light").selectOption("night");
        page.waitForResponse("**/stints/1/about", () -> page.locator("#units").selectOption("imperial"));
        page.waitForSelector("#live-traces[data-ready]");
        assertThat(page.locator("html").getAttribute("data-light")).isEqualTo("night");
        assertThat(page.locator(".trace figcaption").first().textContent()).contains("mph");
        assertThat(page.locator(".ribbon .status").textContent()).contains("mph");
        assertThat(page.locator("main").textContent()).doesNotContain("km/h");
        assertAccessible();
        picture("night");
        page.locator("#light").selectOption("device");
        page.waitForResponse("**/stints/1/about", () -> page.locator("#units").selectOption("metric"));
        page.waitForSelector("#live-traces[data-ready]");
    }

    @Test
    @Order(20)
    void scriptsAndStylesAreSmall() {
        go("stints/1");
        page.waitForSelector("#live-traces[data-ready]");
        Object bytes = page.evaluate("""
                async () => {
                  const names = performance.getEntriesByType("resource").map((entry) => entry.name);
                  const wanted = names.filter((name) => /\\.(js|css)$/.test(name));
                  const texts = await Promise.all(wanted.map((name) => fetch(name, { cache: "reload" }).then((one) => one.blob())));
                  return texts.reduce((sum, text) => sum + text.size, 0);
                }""");
        assertThat(((Number) bytes).intValue()).isBetween(100_000, MOST_BYTES);
    }

    @Test
    @Order(21)
    void aVerdictIsThereWithAllItsLapsAfterTheProgramWasStartedAnew() {
        page.navigate("about:blank");
        served.close();
        serve();
        go("tried");
        page.locator(".tried", new Page.LocatorOptions().setHasText("Trial 1,"))
                .locator("text=Every lap of it")
                .click();
        page.waitForSelector("[data-follow] progress");
        assertThat(page.locator("main").textContent()).contains("Trial 1 is being read.", "keep");
        page.waitForSelector("svg.stints");
        assertThat(page.locator("h1").textContent()).isEqualTo("Keep the change.");
        go("trials/2");
        assertThat(page.locator("main").textContent()).contains("Trial 2 was not judged yet.");
    }

    @Test
    @Order(22)
    void aStintInGoodOrderIsWhatOthersAreHeldAgainst() {
        go("stints/1");
        page.waitForSelector("#live-traces[data-ready]");
        assertThat(page.locator("#order").textContent()).contains("Held against a reckoned car", "club racer at ");
        go("stints/2");
        page.waitForSelector("#live-traces[data-ready]");
        press("The car was in good order here");
        button("Take that back").waitFor();
        page.waitForSelector("#live-traces[data-ready]");
        assertThat(page.locator("#order").textContent()).contains("are held against this one");
        go("");
        assertThat(page.locator(".stints tr", new Page.LocatorOptions().setHasText("in good order"))
                        .locator("th")
                        .allTextContents())
                .containsExactly("2");
        go("stints/1");
        page.waitForSelector("#live-traces[data-ready]");
        assertThat(page.locator("#order").textContent()).contains("Held against stint 2");
        assertThat(page.locator("#balance").textContent()).contains("compared with");
        assertAccessible();
        picture("held");
        page.click("#order a");
        page.waitForURL("**/stints/2");
        page.waitForSelector("#live-traces[data-ready]");
        press("Take that back");
        button("The car was in good order here").waitFor();
    }
}
