package setwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.diagnose.BaselineFile;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.scoreboard.Home;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.Diagnostician;

/** Laps held against a baseline, as a person meets them: what each corner takes more stands beside its balance. */
final class TimeSinceInBrowserTest {
    private static final Path CASE = Home.cases().resolve("practice-08");

    @TempDir
    private static Path folder;

    private static Chromium chromium;

    @BeforeAll
    static void start() throws IOException {
        chromium = Chromium.start();
        DiagnoseRequest alone = DiagnoseRequest.of(
                CASE.resolve("stint1.csv.gz"),
                Optional.of(CASE.resolve("car_stint1.yaml")),
                Optional.empty(),
                Optional.empty());
        BaselineFile good =
                new BaselineFile(CASE.resolve("stint2.csv.gz"), Optional.of(CASE.resolve("car_stint2.yaml")));
        write("held.html", alone.against(Optional.of(good)));
        write("alone.html", alone);
    }

    private static void write(String name, DiagnoseRequest request) throws IOException {
        Answer answer = new FileDiagnoser(Diagnostician::diagnose).diagnose(request, Progress.silent());
        Files.writeString(folder.resolve(name), Report.html(answer, Figures.forPage(UnitSystem.METRIC)));
    }

    @AfterAll
    static void stop() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 500})
    void aCornerThatLosesTimeIsSeenAtOnce(int width) {
        Page page = chromium.open(folder.resolve("held.html"), width, true);
        assertThat(page.locator("table.balance thead").first().textContent()).contains("Time");
        assertThat(page.locator("table.balance tr[data-corner='4'] .since").textContent())
                .startsWith("+0.6");
        assertThat(page.locator("table.balance tr[data-corner='4'] .since").isVisible())
                .isTrue();
        assertThat(page.locator("table.balance tr[data-corner='4'] .since").getAttribute("title"))
                .contains("against the baseline, 95 % interval");
        assertThat(page.locator("table.balance tr[data-corner='6'] .since.unclear")
                        .count())
                .isEqualTo(1);
        assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                .isEqualTo(true);
        assertThat(page.locator("body").textContent()).contains("What it costs", " s lost in corner 4");
        assertThat(chromium.faults()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280})
    void withoutABaselineThereIsNothingToTell(int width) {
        Page page = chromium.open(folder.resolve("alone.html"), width, true);
        assertThat(page.locator(".since").count()).isZero();
    }
}
