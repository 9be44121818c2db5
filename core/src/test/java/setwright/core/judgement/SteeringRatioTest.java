package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.Sheets;
import setwright.core.handling.SteeringScale;

/** A wrong steering ratio must not turn into advice. */
final class SteeringRatioTest {
    private static final double TRUE_RATIO = 12.0;

    private static CarSheet sheet(double ratio) {
        return Sheets.plain(DrivenAxle.REAR, 1100.0, 0.48, 2.5, ratio, 0.35);
    }

    @Test
    void theRightRatioIsLeftAlone() {
        SteeringScale scale = Diagnostician.diagnose(new Drive(5).stint(), sheet(TRUE_RATIO))
                .trace()
                .steering();

        double tenPercent = 0.1;
        assertThat(scale.factor()).isCloseTo(1.0, within(tenPercent));
        assertThat(scale.contradicts()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.65, 1.6, 2.0})
    void aRatioThatIsFarOffIsRefusedWithTheFactor(double wrong) {
        Diagnosis diagnosis = Diagnostician.diagnose(new Drive(6).stint(), sheet(TRUE_RATIO * wrong));

        double tenPercent = 0.1 / wrong;
        assertThat(diagnosis.trace().steering().factor()).isCloseTo(1.0 / wrong, within(tenPercent));
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        assertThat(diagnosis.reason()).contains("steering ratio");
    }

    @Test
    void anAssumedRatioIsReadOffTheLaps() {
        CarSheet given = sheet(TRUE_RATIO * 1.5);
        CarSheet assumed = new CarSheet(
                given.description(),
                given.drivenAxle(),
                given.massKg(),
                given.fuelStartKg(),
                given.frontWeightShare(),
                given.wheelbaseM(),
                given.trackFrontM(),
                given.trackRearM(),
                given.centreOfMassHeightM(),
                given.steeringRatio(),
                given.tyreRadiusM(),
                given.gearRatios(),
                given.revLimitRadPerS(),
                given.brakePressureMaxPa(),
                given.motionRatioFront(),
                given.motionRatioRear(),
                given.barFront(),
                given.barRear(),
                given.downforce(),
                given.setup(),
                List.of("steering_ratio is not given: 18 is assumed."));

        Diagnosis diagnosis = Diagnostician.diagnose(new Drive(7).stint(), assumed);

        assertThat(diagnosis.trace().steering().takenOut()).isTrue();
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
    }
}
