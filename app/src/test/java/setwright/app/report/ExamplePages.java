package setwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Pages made of examples, opened in a browser and kept where a person can look at them. */
public final class ExamplePages implements AutoCloseable {
    private static final Path FOLDER = Path.of("target", "example-pages");

    private final Map<String, Path> pages = new LinkedHashMap<>();
    private final Chromium chromium = Chromium.start();

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
        Page page = chromium.open(pages.getOrDefault(name, FOLDER), width, true);
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

    /** Returns what pages fetched or complained of. */
    public List<String> faults() {
        return chromium.faults();
    }

    @Override
    public void close() {
        chromium.close();
    }
}
