package setwright.app.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.report.Chromium;
import setwright.app.scoreboard.Home;
import setwright.app.watch.FolderWatch;

/** Work that takes long, as several tabs see it; and files that are dropped. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
final class JobsInBrowserTest {
    private static final Path CASE = Home.cases().resolve("practice-05");

    @TempDir
    private static Path folder;

    private Path incoming;
    private Chromium chromium;
    private ServedLogbook served;

    @BeforeAll
    void open() throws IOException {
        chromium = Chromium.start();
        incoming = Files.createDirectory(folder.resolve("incoming"));
        served = ServedLogbook.in(folder.resolve("season"), new FolderWatch(incoming, Duration.ofSeconds(1)));
        served.add(CASE.resolve("stint1.csv.gz"), CASE.resolve("car.yaml"), "tourer", "Ada", "Harbour");
    }

    @AfterAll
    void close() {
        chromium.close();
        served.close();
    }

    private Page tab(String path) {
        Page page = chromium.window(served.address() + path, 1280);
        page.setDefaultTimeout(60_000);
        return page;
    }

    @Test
    @Order(1)
    void anyTabSeesAJobAndCanStopItAndItGoesOnBehindAReload() {
        Page reading = tab("stints/1");
        reading.waitForSelector("[data-follow] progress");
        Page other = tab("");
        other.click(".jobs summary");
        other.waitForSelector(".job.running");
        assertThat(other.locator(".job").first().textContent()).contains("Reading stint 1");
        other.click(".job.running button");
        reading.waitForSelector(".follow .wrong");
        assertThat(reading.locator(".follow").textContent()).contains("Stopped.", "Try again");
        reading.click("text=Try again");
        reading.waitForSelector("[data-follow] progress");
        reading.reload();
        reading.waitForSelector("#live-traces[data-ready]");
        other.waitForSelector(".job a");
        assertThat(other.locator(".job a").first().getAttribute("href")).isEqualTo("/stints/1");
        // What is proposed comes into the page by itself.
        reading.waitForCondition(() ->
                reading.locator("#change-part .proposed .hint[role=status]").count() == 0);
        assertThat(reading.locator("#change-part .answer").first().textContent())
                .doesNotContain("Each item is being turned");
        assertThat(other.locator(".job").first().textContent()).contains("done");
    }

    @Test
    @Order(2)
    void dropsAreSortedByWhatTheyAre() {
        Page page = tab("");
        page.evaluate("""
                () => {
                  const files = new DataTransfer();
                  files.items.add(new File(["t;v\\n0;1\\n"], "laps.csv"));
                  files.items.add(new File(["wheelbase: 2.7\\n"], "car.yaml"));
                  document.getElementById("drop").dispatchEvent(new DragEvent("drop", { dataTransfer: files, bubbles: true, cancelable: true }));
                }""");
        assertThat(page.evaluate("document.getElementById('recordings').files[0].name"))
                .isEqualTo("laps.csv");
        assertThat(page.evaluate("document.querySelector('[name=sheet]').files[0].name"))
                .isEqualTo("car.yaml");
        page.click("button:has-text('Read them in')");
        page.waitForSelector("#sent .wrong");
        assertThat(page.locator("#sent").textContent()).contains("car.yaml");
    }

    @Test
    @Order(3)
    void aCornerOfTheAddressIsChosen() {
        Page page = tab("stints/1");
        page.waitForSelector("#live-traces[data-ready]");
        page.evaluate("location.hash = '#corner-3'");
        page.waitForSelector(".ribbon .place.chosen[data-corner='3']");
        page.waitForSelector("#live-traces[data-ready]");
        page.click(".ribbon .place[data-corner='5']");
        assertThat(page.evaluate("location.hash")).isEqualTo("#corner-5");
    }

    @Test
    @Order(9)
    void whatComesIntoTheWatchedFolderIsReadAndJudgedByItself() throws IOException {
        Page page = tab("");
        assertThat(page.locator("#drop").textContent())
                .contains("What comes into " + incoming + " is read in by itself.");
        page.waitForSelector("#jobs summary");
        int before = page.locator("#stints tbody tr").count();
        // One row less than the recording that is in: another file, of the same laps.
        Files.write(incoming.resolve("run.csv"), Recordings.withoutLastLine(CASE.resolve("stint1.csv.gz")));
        page.waitForCondition(() -> page.locator("#stints tbody tr").count() == before + 1);
        assertThat(page.locator("#stints tbody tr").first().textContent()).contains("run.csv", "Ada", "Harbour");
        page.click("#stints tbody tr a");
        page.waitForSelector("#live-traces[data-ready]");
        assertThat(page.title()).startsWith("Stint 2");
    }
}
