package setwright.app.report.pooled;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import setwright.app.evidence.PooledAnswer;
import setwright.app.report.Page;
import setwright.app.story.PooledWords;
import setwright.app.units.Figures;
import setwright.core.pooling.PooledDiagnosis;
import setwright.core.pooling.PooledFinding;

/** Writes the page of several stints. */
public final class PooledReport {
    private PooledReport() {}

    /** Returns the document. */
    public static String html(PooledAnswer answer, Figures figures) {
        PooledDiagnosis pooled = answer.pooled();
        return Page.render(
                "pooled.jte",
                new PooledView(
                        "Several stints of one car \u2013 Setwright",
                        List.of(
                                pooled.stints().size() + " stints",
                                answer.answers().get(0).car().description()),
                        PooledWords.headline(pooled),
                        pooled.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        pooled.reason(),
                        PooledWords.next(pooled),
                        pooled.drivers(),
                        pooled.findings().stream()
                                .map(finding -> row(pooled, finding, figures))
                                .toList(),
                        IntStream.range(0, pooled.stints().size())
                                .mapToObj(i -> stint(answer, i))
                                .toList(),
                        Page.style()));
    }

    private static PooledView.Row row(PooledDiagnosis pooled, PooledFinding finding, Figures figures) {
        return new PooledView.Row(
                Figures.capital(PooledWords.name(finding)),
                finding.driver().isEmpty() ? finding.belongsTo().words() : finding.driver(),
                figures.probability(finding.common()),
                pooled.drivers().stream()
                        .map(driver -> finding.drivers().stream()
                                .filter(part -> part.driver().equals(driver))
                                .findFirst()
                                .map(part -> PooledWords.part(finding, part, figures))
                                .orElse("too uneven"))
                        .toList(),
                finding.why());
    }

    private static PooledView.StintRow stint(PooledAnswer answer, int i) {
        var stint = answer.pooled().stints().get(i);
        return new PooledView.StintRow(
                stint.driver(),
                stint.diagnosis().stint().recording().name(),
                stint.diagnosis().stint().goodLaps().size() + " of "
                        + stint.diagnosis().stint().laps().size(),
                PooledWords.stint(answer, i),
                Figures.sentence(stint.diagnosis().reason()));
    }
}
