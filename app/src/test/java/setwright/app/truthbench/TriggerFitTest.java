package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.core.judgement.TriggerEvidence.Witness;

final class TriggerFitTest {
    /** Weights are kept to two digits. */
    private static final double KEPT = 0.0051;

    @ParameterizedTest
    @EnumSource(
            value = Witness.class,
            names = {"SETUP", "PHASE"})
    void theWeightsAreThoseOfTheKeptCases(Witness witness) {
        assertThat(TriggerFit.weight(TriggerFit.heard(TriggerCase.kept(), witness), witness))
                .isCloseTo(witness.weight(), within(KEPT));
    }

    /** A judge that is no better than he says would fail as often as not; far from it means that the cases are not those of the fit. */
    @Test
    void whatIsStatedIsAboutWhatIsRight() {
        List<Stated> named =
                TriggerFit.crossValidated(TriggerFit.heard(TriggerCase.kept(), Witness.SETUP), Witness.SETUP);
        double stated =
                named.stream().mapToDouble(Stated::probability).average().orElseThrow();
        double right = named.stream().filter(Stated::right).count() / (double) named.size();

        double twoStandardErrors = 2.0 * Math.sqrt(stated * (1.0 - stated) / named.size());
        assertThat(right).isCloseTo(stated, within(twoStandardErrors));
    }

    @Test
    void aCaseIsReadAsItWasWritten() {
        for (TriggerCase each : TriggerCase.kept()) {
            assertThat(TriggerCase.read(each.line())).isEqualTo(each);
        }
    }

    @Test
    void thePartOfThePageIsReplacedAndTheRestKept() {
        String once = TriggerCalibration.with("# Page\n", "first\n");
        String twice = TriggerCalibration.with(once + "after\n", "second\n");

        assertThat(twice)
                .startsWith("# Page\n")
                .contains("second\n")
                .doesNotContain("first")
                .endsWith("after\n");
    }
}
