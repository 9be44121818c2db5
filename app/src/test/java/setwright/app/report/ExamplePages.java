package setwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;

/**
 * Pages made of examples, opened in a browser and kept where a person can look at them. Registered with a test class, it starts the browser before
 * the first test and ends it after the last; after each, nothing must have been fetched and nothing complained.
 */
public final class ExamplePages implements BeforeAllCallback, AfterEachCallback, AfterAllCallback {
    private static final Path FOLDER = Path.of("target", "example-pages");

    private final Map<String, Path> pages = new LinkedHashMap<>();
    private Optional<Chromium> chromium = Optional.empty();

    @Override
    public void beforeAll(ExtensionContext context) {
        chromium = Optional.of(Chromium.start());
    }

    @Override
    public void afterEach(ExtensionContext context) {
        assertThat(chromium.orElseThrow().faults()).isEmpty();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        chromium.ifPresent(Chromium::close);
    }

    /** Returns each name with each width from a telephone to a large screen. */
    public static Stream<Arguments> atAllWidths(String... names) {
        return Stream.of(names)
                .flatMap(name -> Stream.of(360, 768, 1280, 2560).map(width -> Arguments.of(name, width)));
    }

    /** Keeps a page under a name. */
    public void keep(String name, String html) throws IOException {
        assertThat(html).doesNotContain("NaN", "Infinity", "Optional").doesNotContain("@import");
        pages.put(name, Files.writeString(Files.createDirectories(FOLDER).resolve(name + ".html"), html));
    }

    /** Opens a page and keeps its picture. */
    public Page open(String name, int width) {
        Page page = chromium.orElseThrow().open(pages.getOrDefault(name, FOLDER), width, true);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(FOLDER.resolve(name + "-" + width + ".png"))
                .setFullPage(true));
        return page;
    }

    /** Checks that nothing is wider than the window. */
    public void assertMarginsHold(String name, int width) {
        assertThat(open(name, width)
                        .evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .isEqualTo(0);
    }
}
