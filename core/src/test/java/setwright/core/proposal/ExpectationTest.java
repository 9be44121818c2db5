package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.Sheets;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Findings;
import setwright.core.judgement.SmallestEffect;
import setwright.core.judgement.SpeedRange;
import setwright.core.replay.Effect;

/** What the next stint should show, by invented laps of a driver with a known scatter. */
final class ExpectationTest {
    private static final Finding UNDERSTEER = Findings.mid(BalanceSign.UNDERSTEER, SpeedRange.ALL);
    private static final int DRIVEN = 10;

    /** Toward oversteer by 0.2 deg, between -0.1 and 0.6. */
    private static final Effect OPEN = new Effect(deg(-0.2), deg(-0.6), deg(0.1), 0.1);

    private static final Effect SURE = new Effect(deg(-0.4), deg(-0.6), deg(-0.3), 0.01);

    private static double deg(double value) {
        return Math.toRadians(value);
    }

    private static Expectation of(Effect target, double scatterDeg) {
        Candidate bar = Promising.of(Sheets.adjustable(), "front_bar", -2, 0.1);
        Candidate chosen = new Candidate(bar.turn(), bar.prediction(), target, 0.9, List.of(), bar.score(), List.of());
        return Expectation.of(chosen, UNDERSTEER, DRIVEN, deg(scatterDeg) * SmallestEffect.inDeviations(DRIVEN));
    }

    @Test
    void aMeasuredChangeWithinThePredictedIntervalRefutesNothing() {
        Refutation refutation = of(OPEN, 0.1).refutation().orElseThrow();
        assertThat(refutation.refutes(OPEN.low())).isFalse();
        assertThat(refutation.refutes(OPEN.central())).isFalse();
        assertThat(refutation.refutes(OPEN.high()))
                .as("a little the wrong way was foreseen")
                .isFalse();
    }

    /** A second way to the width: two means of n laps each, 1.28 standard errors. */
    @Test
    void theIntervalIsWidenedByWhatSoManyLapsLeaveOpen() {
        Expectation expectation = of(OPEN, 0.1);
        double error = deg(0.1) * Math.sqrt(1.0 / expectation.laps() + 1.0 / expectation.laps());
        Refutation refutation = expectation.refutation().orElseThrow();
        assertThat(refutation.laps()).isEqualTo(expectation.laps());
        assertThat(refutation.belowRad()).isCloseTo(OPEN.low() - 1.28 * error, within(1e-12));
        assertThat(refutation.aboveRad()).isCloseTo(OPEN.high() + 1.28 * error, within(1e-12));
        assertThat(refutation.refutes(OPEN.high() + 1.3 * error)).isTrue();
        assertThat(refutation.refutes(OPEN.low() - 1.3 * error)).isTrue();
    }

    @Test
    void theSentenceHasTheNumbersTheWayTheChangeIsToGo() {
        Expectation open = of(OPEN, 0.0001);
        assertThat(open.sentences())
                .last()
                .asString()
                .contains("more than 0.10 deg the other way", "more than 0.60 deg");
        Expectation sure = of(SURE, 0.0001);
        assertThat(sure.sentences()).last().asString().contains("less than 0.30 deg", "more than 0.60 deg", "refuted");
        assertThat(sure.sentences().get(0)).contains("0.40 deg toward oversteer (8 in 10: 0.30 to 0.60)");
    }

    @Test
    void withoutAKnownScatterNoNumberIsMadeUp() {
        Expectation expectation = of(OPEN, Double.POSITIVE_INFINITY);
        assertThat(expectation.refutation()).isEmpty();
        assertThat(expectation.sentences()).last().asString().contains("does not move that way");
    }
}
