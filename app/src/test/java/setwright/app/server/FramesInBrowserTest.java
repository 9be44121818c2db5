package setwright.app.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.report.Chromium;
import setwright.app.scoreboard.Home;

/**
 * Measures how many frames a second zooming leaves, on 12 laps of 100 s at 250 Hz; prints, and asserts no time. It runs only when asked for:
 * {@code -Dtest=FramesInBrowserTest -Dsetwright.frames=true}; docs/page.md has the figures.
 */
@EnabledIfSystemProperty(named = "setwright.frames", matches = "true")
final class FramesInBrowserTest {
    private static final Path CASE = Home.cases().resolve("practice-01");
    private static final String MANY_SAMPLES = """
            const real = window.fetch;
            const LAPS = 12, N = 25000;
            const COLUMNS = ["time", "station", "speed", "steering", "throttle", "brake", "balance", "lateral", "yaw", "offset", "frontUse", "rearUse"];
            window.fetch = async (url, options) => {
              if (/about$/.test(url)) {
                const about = await (await real(url, options)).json();
                const laps = Array.from({ length: LAPS }, (_, l) => ({ number: l + 1, timeS: 100, good: true, why: "", samples: N, from: l * N * COLUMNS.length }));
                return new Response(JSON.stringify({ ...about, columns: COLUMNS, lengthM: 5000, laps }));
              }
              if (!/samples$/.test(url)) return real(url, options);
              const all = new Float32Array(LAPS * N * COLUMNS.length);
              for (let l = 0; l < LAPS; l++) for (let c = 0; c < COLUMNS.length; c++) for (let i = 0; i < N; i++) {
                all[l * N * COLUMNS.length + c * N + i] = c === 0 ? i / 250 : c === 1 ? i * 0.2
                  : Math.abs(Math.sin(i * 0.0007 * (c + 1) + l * 0.02)) + 0.02 * Math.sin(i * 1.7 + l);
              }
              return new Response(all.buffer);
            };""";
    private static final String ZOOM = """
            async () => {
              const plots = document.querySelector(".plots");
              plots.scrollIntoView();
              document.querySelector("#whole-lap").click();
              const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
              await frame();
              const spans = [];
              let last = performance.now();
              for (let i = 0; i < 120; i++) {
                plots.dispatchEvent(new KeyboardEvent("keydown", { key: i % 16 < 8 ? "+" : "-", bubbles: true }));
                await frame();
                const now = performance.now();
                spans.push(now - last);
                last = now;
              }
              spans.sort((a, b) => a - b);
              const mean = spans.reduce((a, b) => a + b) / spans.length;
              return `${(1000 / mean).toFixed(0)} frames a second; median ${spans[60].toFixed(1)} ms, nine in ten below ${spans[108].toFixed(1)} ms`;
            }""";

    @TempDir
    private static Path folder;

    @Test
    void zoomingTwelveLapsOfEightTraces() throws IOException {
        try (Chromium chromium = Chromium.start();
                ServedLogbook served = ServedLogbook.in(folder.resolve("season"))) {
            served.add(CASE.resolve("stint1.csv.gz"), CASE.resolve("car.yaml"), "hill climber", "Ada", "Harbour");
            Page page = chromium.window(served.address(), 1280);
            page.addInitScript(MANY_SAMPLES);
            page.navigate(served.address() + "stints/1");
            page.waitForSelector("#live-traces[data-ready]", new Page.WaitForSelectorOptions().setTimeout(60_000));
            page.waitForSelector("text=Show the proposed change", new Page.WaitForSelectorOptions().setTimeout(60_000));
            assertThat(page.locator("#live-traces .uplot").count()).isEqualTo(8);
            System.out.println("typical lap, band and best lap: " + page.evaluate(ZOOM));
            page.check("text=each lap on its own");
            System.out.println("each lap on its own: " + page.evaluate(ZOOM));
        }
    }
}
