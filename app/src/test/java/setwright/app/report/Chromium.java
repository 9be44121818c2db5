package setwright.app.report;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The browser that pages are tried in, with what they complained of and asked for. */
public final class Chromium implements AutoCloseable {
    private final Playwright playwright;
    private final Browser browser;
    private final List<String> complaints = new ArrayList<>();
    private final List<String> requests = new ArrayList<>();

    private Chromium(Path program) {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    /** Starts it. Without Chromium the test is skipped, unless CI=true, where it then fails. */
    public static Chromium start() {
        Optional<Path> program = Stream.of(
                        System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
                .map(entry -> Path.of(entry, "chromium"))
                .filter(Files::isExecutable)
                .findFirst();
        if (!"true".equals(System.getenv("CI"))) {
            assumeTrue(program.isPresent(), "skipped: no 'chromium' on the PATH; install it to test the report");
        }
        return new Chromium(program.orElseThrow(() -> new AssertionError("CI needs 'chromium' on the PATH")));
    }

    /** Opens a file in a window of its own, with or without scripts. */
    public Page open(Path file, int width, boolean script) {
        return open(file.toUri().toString(), width, script);
    }

    /** Opens an address in a window of its own. */
    public Page window(String address, int width) {
        return open(address, width, true);
    }

    private Page open(String address, int width, boolean script) {
        Page page = browser.newContext(new Browser.NewContextOptions()
                        .setViewportSize(width, 900)
                        .setColorScheme(ColorScheme.LIGHT)
                        .setJavaScriptEnabled(script))
                .newPage();
        page.onConsoleMessage(message -> complaints.add(message.text()));
        page.onPageError(complaints::add);
        page.onRequest(request -> requests.add(request.url()));
        page.navigate(address);
        return page;
    }

    /** Returns what pages complained of, and what they asked for from elsewhere than these servers. */
    public List<String> faultsBeside(List<String> servers) {
        return faults().stream()
                .filter(fault -> servers.stream().noneMatch(fault::startsWith))
                .filter(fault -> !fault.matches(
                        "Failed to load resource: .* status of 4[0-9]{2} .*")) // refusals, told on the page
                .toList();
    }

    /** Returns what pages complained of, and what they asked for from elsewhere. */
    public List<String> faults() {
        List<String> faults = new ArrayList<>(complaints);
        requests.stream()
                .filter(url -> !url.startsWith("file:") && !url.startsWith("data:"))
                .forEach(faults::add);
        return faults;
    }

    @Override
    public void close() {
        playwright.close();
    }
}
