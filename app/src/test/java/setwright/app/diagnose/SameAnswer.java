package setwright.app.diagnose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import setwright.core.circuit.Corner;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Repeatability.AtCorner;

/** Holds two answers against each other. */
final class SameAnswer {
    /**
     * The same samples in another form differ by the rounding of fourteen digits and of the arithmetic; positions moved on the
     * earth by the change of scale of the projection too, which is below (3 km / earth radius)², 2e-7. Filters, splines and
     * robust fits stopped at 1e-6 or so may hand on ten times as much.
     */
    private static final double ROUNDING = 1.0e-5;
    /** Stations of a corner are nodes of the reference line, 1.5 m apart; a tie may fall to the next one. */
    private static final double NODE_M = 1.6;
    /** Standard error of a median over that of a mean of normal values. */
    private static final double MEDIAN = 1.2533;

    private SameAnswer() {}

    /** Samples that are the same but for rounding. */
    static void assertForm(String what, Diagnosis first, Diagnosis second, boolean mirrored) {
        assertWords(what, first, second, mirrored);
        for (int i = 0; i < first.findings().size(); i++) {
            assertFigures(what, first.findings().get(i), second.findings().get(i), ROUNDING);
            assertThat(second.findings().get(i).probability())
                    .as(what + ": probability")
                    .isCloseTo(first.findings().get(i).probability(), within(ROUNDING));
        }
    }

    /**
     * Other samples of the same drive: they carry other noise, so that a size, the median over some passes, may differ by its
     * own standard error. The spread of the passes gives that: a 95 % range is 3.92 standard deviations wide.
     */
    static void assertDrive(String what, Diagnosis first, Diagnosis second) {
        assertWords(what, first, second, false);
        int laps = first.stint().goodLaps().size();
        for (int i = 0; i < first.findings().size(); i++) {
            Finding finding = first.findings().get(i);
            double passes = finding.lapShare() * laps * finding.corners().size();
            double error = MEDIAN * (finding.sizeHighRad() - finding.sizeLowRad()) / 3.92 / Math.sqrt(passes);
            assertFigures(what, finding, second.findings().get(i), error / finding.sizeRad());
        }
    }

    private static void assertFigures(String what, Finding first, Finding second, double share) {
        assertThat(second.sizeRad()).as(what + ": size").isCloseTo(first.sizeRad(), within(share * first.sizeRad()));
        // a price comes from the same balance by way of a replay: in proportion to what is known of it
        double known = Math.max(
                Math.abs(first.price().seconds()),
                0.5 * (first.price().high() - first.price().low()));
        assertThat(second.price().seconds())
                .as(what + ": price")
                .isCloseTo(first.price().seconds(), within(share * known));
    }

    /** All that is told in words or counted. */
    private static void assertWords(String what, Diagnosis first, Diagnosis second, boolean mirrored) {
        assertThat(second.verdict()).as(what + ": verdict").isEqualTo(first.verdict());
        assertThat(second.stint().goodLaps().size())
                .as(what + ": laps")
                .isEqualTo(first.stint().goodLaps().size());
        assertThat(steady(second)).as(what + ": repeatable corners").isEqualTo(steady(first));
        assertCorners(
                what,
                first.stint().circuit().corners(),
                second.stint().circuit().corners(),
                mirrored);
        assertThat(second.findings().stream().map(SameAnswer::words))
                .as(what + ": findings")
                .containsExactlyElementsOf(
                        first.findings().stream().map(SameAnswer::words).toList());
    }

    private static void assertCorners(String what, List<Corner> first, List<Corner> second, boolean mirrored) {
        assertThat(second).as(what + ": corners").hasSameSizeAs(first);
        for (int i = 0; i < first.size(); i++) {
            assertThat(second.get(i).direction() == first.get(i).direction())
                    .as("%s: corner %d turns the same way", what, i + 1)
                    .isEqualTo(!mirrored);
            assertThat(second.get(i).apexM())
                    .as("%s: apex of corner %d", what, i + 1)
                    .isCloseTo(first.get(i).apexM(), within(2.0 * NODE_M));
        }
    }

    private static List<Integer> steady(Diagnosis diagnosis) {
        return diagnosis.repeatability().corners().stream()
                .filter(AtCorner::repeatable)
                .map(AtCorner::corner)
                .toList();
    }

    private static String words(Finding finding) {
        return String.join(
                " ",
                finding.phase().words(),
                finding.speed().toString(),
                finding.balance().words(),
                finding.trigger().words(),
                finding.cause().words(),
                finding.corners().toString());
    }
}
