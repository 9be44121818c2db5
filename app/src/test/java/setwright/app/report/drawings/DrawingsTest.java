package setwright.app.report.drawings;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.app.example.ExampleProposal;
import setwright.app.report.Chromium;
import setwright.app.report.Report;
import setwright.app.report.change.ProposalReport;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.Verdict;

/** Every drawing as a file of its own. Pictures of them lie in app/target/drawings. */
final class DrawingsTest {
    private static final Figures FIGURES = Figures.forPage(UnitSystem.METRIC);

    /**
     * Texts that reach out of the paper, and lines and areas without colour: black areas are what a lost style looks like.
     */
    private static final String FAULTS = """
            () => {
              const faults = [], paper = document.documentElement.getBoundingClientRect();
              for (const text of document.querySelectorAll('text')) {
                const box = text.getBoundingClientRect();
                if (box.left < paper.left || box.right > paper.right || box.top < paper.top || box.bottom > paper.bottom) {
                  faults.push('outside: ' + text.textContent);
                }
              }
              for (const path of document.querySelectorAll('.panel path, .map path')) {
                const style = getComputedStyle(path);
                if (style.fill !== 'none' && style.fill === 'rgb(0, 0, 0)') faults.push('black: ' + path.getAttribute('class'));
                if (style.fill === 'none' && style.stroke === 'none' && path.getAttribute('class') !== 'halo') {
                  faults.push('unseen: ' + path.getAttribute('class'));
                }
              }
              return faults;
            }
            """;

    @TempDir
    private Path folder;

    static Stream<Drawing> drawings() {
        return of(Example.answer()).stream();
    }

    private static List<Drawing> of(Answer answer) {
        return Drawings.of(
                Report.view(answer, FIGURES),
                Optional.ofNullable(
                        ProposalReport.view(ExampleProposal.answer(), FIGURES).chosen()));
    }

    @Test
    void everythingThatTheReportDrawsIsThere() {
        assertThat(of(Example.answer()))
                .extracting(Drawing::name)
                .contains("laps", "ribbon", "map", "driving", "axles", "corner-01", "corner-13", "findings", "change")
                .doesNotHaveDuplicates()
                .hasSize(7 + 13);
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void eachIsADocumentOfItsOwn(Drawing drawing) throws Exception {
        Document document = parsed(drawing);
        assertThat(document.getDocumentElement().getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
        assertThat(document.getDocumentElement().getAttribute("aria-labelledby"))
                .isEqualTo("title words");
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isNotBlank();
        assertThat(document.getElementsByTagName("desc").item(0).getTextContent())
                .isNotBlank();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < document.getElementsByTagName("*").getLength(); i++) {
            names.add(document.getElementsByTagName("*").item(i).getNodeName());
        }
        assertThat(names)
                .as("elements of SVG 1.1 alone")
                .isSubsetOf(Set.of("svg", "title", "desc", "style", "g", "rect", "circle", "line", "path", "text"));
        assertThat(drawing.text())
                .as("what other programs than browsers do not know")
                .doesNotContain("var(", "rem;", "href", "url(", "@media");
    }

    @Test
    void namesStayNames() throws Exception {
        String hostile = "</title><script>alert(1)</script>&\"'\u0007";
        for (Drawing drawing : of(Example.answer(hostile, hostile, hostile))) {
            assertThat(parsed(drawing).getElementsByTagName("script").getLength())
                    .isZero();
        }
    }

    @Test
    void withoutFindingsTheLapsAreDrawnStill() {
        assertThat(Drawings.of(
                        Report.view(Example.without(Verdict.NOTHING_TO_CHANGE, "because"), FIGURES), Optional.empty()))
                .extracting(Drawing::name)
                .contains("laps", "ribbon", "map")
                .doesNotContain("findings", "change", "axles");
    }

    @Test
    void theyLookRightInABrowser() throws IOException {
        Path pictures = Files.createDirectories(Path.of("target", "drawings"));
        try (Chromium chromium = Chromium.start()) {
            for (Drawing drawing : of(Example.answer())) {
                Path file = Files.writeString(folder.resolve(drawing.name() + ".svg"), drawing.text());
                Page page = chromium.open(file, 1250, true);
                assertThat((List<?>) page.evaluate(FAULTS)).as(drawing.name()).isEmpty();
                page.screenshot(new Page.ScreenshotOptions().setPath(pictures.resolve(drawing.name() + ".png")));
                page.context().close();
            }
            assertThat(chromium.faults()).isEmpty();
        }
    }

    private static Document parsed(Drawing drawing) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(drawing.text())));
    }
}
