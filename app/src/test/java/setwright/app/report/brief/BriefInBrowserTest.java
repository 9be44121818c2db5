package setwright.app.report.brief;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.app.example.ExampleProposal;
import setwright.app.pdf.PdfFile;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.ExamplePages;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** The brief as a driver and an engineer meet it: on a screen and on paper. */
final class BriefInBrowserTest {
    private static final String STRANGE = "<script>alert(1)</script> & \u0416\u0443\u043a\u043e\u0432\u0430";

    @RegisterExtension
    static final ExamplePages pages = new ExamplePages();

    private static String brief(ProposalAnswer answer, String driver) {
        return BriefReport.html(
                new BriefRequest("stint 3", driver, "Lakeside", "Heron, setup 2", answer),
                Figures.forPage(UnitSystem.METRIC));
    }

    @BeforeAll
    static void start() throws IOException {
        pages.keep("brief", brief(ExampleProposal.answer(), "Ines"));
        pages.keep("brief-none", brief(ExampleProposal.none(), STRANGE));
    }

    static Stream<Arguments> pagesAndWidths() {
        return ExamplePages.atAllWidths("brief", "brief-none");
    }

    @ParameterizedTest
    @MethodSource("pagesAndWidths")
    void theMarginsHoldEverything(String name, int width) {
        pages.assertMarginsHold(name, width);
    }

    @Test
    void theDriverReadsPlainWordsAndTheEngineerTheChange() {
        Page page = pages.open("brief", 1280);
        assertThat(page.locator("#driver .place").count()).isBetween(0, 3);
        assertThat(page.locator("#driver").textContent())
                .contains("For the next run one thing is changed on the car")
                .doesNotContain("_", "deg", "probability");
        assertThat(page.locator("#engineer").textContent()).contains("The change", "What the next run should show");
        assertThat(page.locator("#engineer .caution").isVisible()).isTrue();
        assertThat(pages.open("brief-none", 1280).locator("#driver").textContent())
                .contains("The car stays as it is", "<script>alert(1)</script>");
    }

    @Test
    void isWellFormedAndFitsOnTwoSheetsOfPaper() throws Exception {
        String page = brief(ExampleProposal.answer(), STRANGE);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        assertThat(factory.newDocumentBuilder()
                        .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)))
                        .getElementsByTagName("div")
                        .getLength())
                .isPositive();
        try (PDDocument pdf = Loader.loadPDF(PdfFile.of(page))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("The car", "The change", "\u0416\u0443\u043a\u043e\u0432\u0430", "<script>alert(1)");
        }
    }
}
