package setwright.app.json;

import static setwright.app.json.Numbers.degrees;
import static setwright.app.json.Numbers.known;

import java.util.stream.IntStream;
import setwright.app.evidence.PooledAnswer;
import setwright.app.story.PooledWords;
import setwright.core.pooling.PooledDiagnosis;
import setwright.core.pooling.PooledFinding;

/** Writes the answer for several recordings as JSON of version 1. */
public final class PooledJsonWriter {
    private static final int VERSION = 1;

    private PooledJsonWriter() {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(PooledAnswer answer) {
        PooledDiagnosis pooled = answer.pooled();
        return Numbers.text(new PooledJson(
                VERSION,
                IntStream.range(0, answer.answers().size())
                        .mapToObj(i -> new PooledJson.Stint(
                                pooled.stints().get(i).driver(),
                                DiagnosisJsonWriter.of(answer.answers().get(i))))
                        .toList(),
                new PooledJson.Pooled(
                        pooled.drivers(),
                        pooled.findings().stream()
                                .map(PooledJsonWriter::finding)
                                .toList(),
                        pooled.verdict().words(),
                        pooled.reason(),
                        PooledWords.next(pooled))));
    }

    private static PooledJson.Finding finding(PooledFinding finding) {
        return new PooledJson.Finding(
                finding.phase().words(),
                finding.speed().words(),
                finding.balance().words(),
                finding.level() ? "level" : "slide",
                finding.belongsTo().words(),
                finding.driver(),
                known(finding.common()),
                degrees(finding.spreadRad()),
                finding.drivers().stream()
                        .map(part -> new PooledJson.Part(
                                part.driver(),
                                degrees(part.sizeRad()),
                                degrees(part.deviationRad()),
                                part.seen(),
                                part.of(),
                                known(part.alone())))
                        .toList(),
                finding.why());
    }
}
