package setwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.Verdict;

final class ReportTest {
    private static final Set<String> VOID = Set.of("meta", "link", "br");
    private static final Pattern TAG = Pattern.compile("<(/?)([a-zA-Z][a-zA-Z0-9]*+)((?:[^<>\"]++|\"[^\"<>]*+\")*+)>");
    private static final int LARGEST_BYTES = 3_000_000;

    private static final Figures METRIC = Figures.forPage(UnitSystem.METRIC);

    @Test
    void everyLinkOfTheChainIsThereInOrderWithTheVerdictFirst() {
        String html = Report.html(Example.answer(), METRIC);
        List<Integer> places = Stream.of(
                        "id=\"verdict\"",
                        "id=\"laps\"",
                        "id=\"driving\"",
                        "id=\"balance\"",
                        "id=\"cause\"",
                        "id=\"pattern\"")
                .map(html::indexOf)
                .toList();
        assertThat(places).isSorted().doesNotContain(-1);
    }

    @Test
    void everyCornerHasItsRowLabelAndTraces() {
        String html = Report.html(Example.answer(), METRIC);
        for (int corner = 1; corner <= 13; corner++) {
            assertThat(html)
                    .contains("id=\"corner-" + corner + "\"")
                    .contains("<option value=\"" + corner + "\"")
                    .contains("aria-label=\"Corner " + corner + ": ");
        }
        assertThat(html).containsOnlyOnce("class=\"corner chosen\"");
    }

    /** What is claimed links to the traces of the corner that shows it. */
    @Test
    void everyFindingSaysWhyAndWhereToSeeIt() {
        String html = Report.html(Example.answer(), METRIC);
        assertThat(html)
                .contains("id=\"why-1\"", "id=\"why-2\"", "href=\"#why-1\"", "Which laps", "What else it could be");
        Matcher proof = Pattern.compile("href=\"#(corner-\\d+)\" data-corner=\"\\d+\">See it")
                .matcher(html);
        assertThat(proof.find()).isTrue();
        assertThat(html).contains("id=\"" + proof.group(1) + "\"");
    }

    @Test
    void aVerdictWithoutAFindingSaysWhyToo() {
        assertThat(Report.html(Example.without(Verdict.NOTHING_TO_CHANGE, "balanced"), METRIC))
                .contains("id=\"why-0\"", "What was looked at");
    }

    @Test
    void tagsAreBalanced() {
        assertThat(unbalanced(Report.html(Example.answer(), METRIC))).isEmpty();
    }

    @Test
    void namesFromOutsideAreShownAsTextOnly() {
        Answer answer = Example.answer(
                "<script>alert(1)</script>.csv",
                "\"><img src=x onerror=alert(2)>",
                "car</title><script>alert(3)</script>");
        String html = Report.html(answer, METRIC);
        assertThat(html)
                .doesNotContain("<script>alert", "<img", "onerror=alert(2)>\"")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;.csv");
        assertThat(Pattern.compile("<script").matcher(html).results().count()).isEqualTo(1);
        assertThat(unbalanced(html)).isEmpty();
    }

    @Test
    void nothingIsFetchedFromAnywhere() {
        assertThat(Report.html(Example.answer(), METRIC))
                .doesNotContainPattern("(?i)(src|href)=\"(https?:)?//")
                .doesNotContainPattern("(?i)url\\((?!#)")
                .doesNotContain("@import");
    }

    @Test
    void theFileStaysSmallEnoughToSend() throws Exception {
        String html = Report.html(Example.answer(), METRIC);
        // Kept where a person can look at it.
        Files.writeString(Files.createDirectories(Path.of("target")).resolve("example-report.html"), html);
        assertThat(html.getBytes(StandardCharsets.UTF_8).length).isLessThan(LARGEST_BYTES);
    }

    @Test
    void unknownValuesAreNeverPrintedAsNumbers() {
        assertThat(Report.html(Example.answer(), METRIC)).doesNotContain("NaN", "Infinity", "Optional");
    }

    @Test
    void imperialUnitsReachEveryFigure() {
        String html = Report.html(Example.answer(), Figures.forPage(UnitSystem.IMPERIAL));
        // Units of the file's own columns stay as they are in the file.
        assertThat(html).contains("\u00a0mph", "\u00a0ft").doesNotContainPattern("speed, [0-9.]+.km/h|[0-9].m<");
    }

    @ParameterizedTest
    @EnumSource(Verdict.class)
    void everyVerdictSaysWhatToDoNext(Verdict verdict) {
        String html = Report.html(Example.without(verdict, "six laps are too few to tell 0.3 deg from chance"), METRIC);
        assertThat(unbalanced(html)).isEmpty();
        assertThat(html).contains("class=\"next\"", "Six laps are too few");
    }

    private static List<String> unbalanced(String html) {
        String markup = html.replaceAll("(?s)<style>.*?</style>", "").replaceAll("(?s)<script>.*?</script>", "");
        Deque<String> open = new ArrayDeque<>();
        List<String> faults = new ArrayList<>();
        Matcher tag = TAG.matcher(markup);
        while (tag.find()) {
            String name = tag.group(2);
            if (VOID.contains(name) || tag.group(3).endsWith("/")) {
                continue;
            }
            if (tag.group(1).isEmpty()) {
                open.push(name);
            } else if (open.isEmpty() || !open.pop().equals(name)) {
                faults.add("</" + name + "> at " + tag.start());
            }
        }
        open.forEach(name -> faults.add("<" + name + "> never closed"));
        return faults;
    }
}
