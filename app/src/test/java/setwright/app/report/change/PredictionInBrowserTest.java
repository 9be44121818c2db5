package setwright.app.report.change;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.app.example.Example;
import setwright.app.example.ExampleCarFit;
import setwright.app.example.ExamplePrediction;
import setwright.app.example.ExampleProposal;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.ExamplePages;
import setwright.app.report.fit.CarFitReport;
import setwright.app.story.AdviceWords;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.advice.Adviser;
import setwright.core.technique.TechniqueFinder;

/** The pages of a predicted change and of an identified car as a person meets them. */
final class PredictionInBrowserTest {
    private static final Figures METRIC = Figures.forPage(UnitSystem.METRIC);

    @RegisterExtension
    static final ExamplePages pages = new ExamplePages();

    @BeforeAll
    static void start() throws IOException {
        pages.keep("predict", PredictionReport.html(ExamplePrediction.one(), METRIC));
        pages.keep("predict-all", PredictionReport.html(ExamplePrediction.all(), METRIC));
        pages.keep("propose", ProposalReport.html(ExampleProposal.answer(), METRIC));
        pages.keep("propose-none", ProposalReport.html(ExampleProposal.none(), METRIC));
        pages.keep("car-fit", CarFitReport.html(ExampleCarFit.answer(), METRIC));
    }

    static Stream<Arguments> pagesAndWidths() {
        return ExamplePages.atAllWidths("predict", "predict-all", "propose", "propose-none", "car-fit");
    }

    @ParameterizedTest
    @MethodSource("pagesAndWidths")
    void theMarginsHoldEverything(String name, int width) {
        pages.assertMarginsHold(name, width);
    }

    @Test
    void thePlotsShareTheirDistanceAxisAndStandInTheirOrder() {
        Page page = pages.open("predict", 1280);
        assertThat(page.locator(".panel.lap figcaption").allTextContents())
                .hasSize(3)
                .satisfies(titles -> {
                    assertThat(titles.get(0)).startsWith("Change of balance");
                    assertThat(titles.get(1)).startsWith("Time against the lap as driven");
                });
        assertThat(page.locator(".panel.lap svg.plot").evaluateAll("all => new Set(all.map(e => e.clientWidth)).size"))
                .as("one width")
                .isEqualTo(1);
        assertThat(page.locator(".corner-number").allTextContents())
                .containsExactly("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13");
    }

    @Test
    void aProposalShowsWhatTheDriverCanDoFirstAndWhatElseAsksForAttention() {
        ProposalAnswer answer = ExampleProposal.answer();
        long levers = TechniqueFinder.find(
                        answer.answer().diagnosis(), answer.answer().car().drivenAxle())
                .size();
        List<String> given = AdviceWords.given(
                Adviser.review(answer.answer().diagnosis(), answer.answer().car()), METRIC);
        Page page = pages.open("propose", 1280);
        assertThat(page.locator("#technique tbody tr").count()).isEqualTo((int) levers);
        assertThat(page.locator("#besides li").allTextContents()).isEqualTo(given);
        assertThat(levers + given.size())
                .as("the example has something to show")
                .isPositive();
    }

    @Test
    void aProposalShowsWhatWasWeighedAndWhyNotThat() {
        Page page = pages.open("propose", 1280);
        assertThat(page.locator("h1").textContent()).contains("urn front_bar 5 to 4 (softer)");
        assertThat(page.locator("#weighed tbody th .tag").allTextContents())
                .containsExactly("chosen", "weighed", "refused");
        assertThat(page.locator("#weighed .refused li").allTextContents())
                .singleElement()
                .satisfies(text -> {
                    assertThat(text).contains("front_spring", "ride frequency");
                });
        assertThat(page.locator(".verdict .next").first().textContent()).contains("If it is right");
        assertThat(page.locator(".corner-number").count()).isEqualTo(13);
    }

    @Test
    void withoutAChangeThePageSaysSoAndShowsWhatWasRefused() {
        Page page = pages.open("propose-none", 1280);
        assertThat(page.locator("h1").textContent()).isEqualTo("No change of the setup");
        assertThat(page.locator("#weighed tbody th .tag").allTextContents()).containsExactly("refused");
        assertThat(page.locator("#phases").count()).isZero();
    }

    @ParameterizedTest
    @MethodSource("pagesAndWidths")
    void everyCellHoldsWhatIsWrittenInIt(String name, int width) {
        assertThat(pages.open(name, width)
                        .locator("td.cell")
                        .evaluateAll("all => all.filter(cell => [...cell.children].some(part =>"
                                + " part.getClientRects().length && (part.getBoundingClientRect().left < cell.getBoundingClientRect().left - 1"
                                + " || part.getBoundingClientRect().right > cell.getBoundingClientRect().right + 1)))"
                                + ".map(cell => cell.textContent)"))
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .isEmpty();
    }

    /** Colour for the direction, the sign beside it, and neither colour nor doubt hidden where the sign is not sure. */
    @Test
    void directionHasColourAndSign() {
        Page page = pages.open("predict", 1280);
        assertThat(page.locator(".phases td.slide3 .value, .phases td.slide2 .value, .phases td.slide1 .value")
                        .allTextContents())
                .isNotEmpty()
                .allMatch(text -> text.startsWith("\u2212"));
        assertThat(page.locator(".phases td.pale").first().getAttribute("title"))
                .contains("the track decides");
        assertThat(page.locator("h1").textContent()).startsWith("front_bar 5 \u2192 4: quicker by");
    }

    @Test
    void hostileNamesStayText() throws IOException {
        pages.keep(
                "hostile",
                PredictionReport.html(
                        ExamplePrediction.one(Example.answer(
                                "<img src=x onerror=\"document.title='bad'\">", "circuit", "'><svg onload=alert(1)>")),
                        METRIC));
        Page page = pages.open("hostile", 1280);
        assertThat(page.locator("img").count()).isZero();
        assertThat(page.locator(".facts").textContent()).contains("<img src=x");
    }
}
