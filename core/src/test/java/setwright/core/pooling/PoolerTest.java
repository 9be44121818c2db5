package setwright.core.pooling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Drive;
import setwright.core.judgement.Verdict;
import setwright.core.pooling.PooledFinding.Belongs;

/** Two drivers in one car, on invented stints whose answer is known. */
final class PoolerTest {
    private static final double CLEAR_STEP = Math.toRadians(1.8);

    private static DriverStint stint(String driver, Drive drive) {
        return new DriverStint(driver, Diagnostician.diagnose(drive.stint(), Drive.sheet()));
    }

    private static Drive loose(long seed) {
        return new Drive(seed).rearSteps(CLEAR_STEP, corner -> corner <= 4);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void whatBothDriversHaveIsTheCars(long seed) {
        PooledDiagnosis pooled = Pooler.pool(List.of(stint("Ada", loose(seed)), stint("Bo", loose(seed + 100))));

        PooledFinding first = pooled.findings().get(0);
        assertThat(first.belongsTo()).isEqualTo(Belongs.CAR);
        assertThat(first.phase()).isEqualTo(Phase.ENTRY);
        assertThat(first.common()).isGreaterThan(0.9);
        assertThat(pooled.verdict()).isEqualTo(Verdict.CHANGE_THE_CAR);
        assertThat(pooled.reason()).contains("Ada 8 of 8 laps", "Bo 8 of 8 laps", "the car's");
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 13})
    void whatOneDriverHasIsMoreLikelyHis(long seed) {
        PooledDiagnosis pooled = Pooler.pool(List.of(stint("Ada", new Drive(seed + 100)), stint("Bo", loose(seed))));

        assertThat(pooled.stints().get(1).diagnosis().verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        PooledFinding first = pooled.findings().get(0);
        assertThat(first.belongsTo()).isEqualTo(Belongs.ONE_DRIVER);
        assertThat(first.driver()).isEqualTo("Bo");
        assertThat(pooled.verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
        assertThat(pooled.reason()).contains("Bo's technique");
    }

    @Test
    void anUndersteerThatOneDriverBringsAlongIsHis() {
        PooledDiagnosis pooled = Pooler.pool(List.of(
                stint("Ada", new Drive(5)),
                stint("Bo", new Drive(6).pushes(Math.toRadians(2.5), corner -> true)),
                stint("Cy", new Drive(7))));

        assertThat(pooled.findings()).isNotEmpty();
        assertThat(pooled.findings()).allSatisfy(finding -> {
            assertThat(finding.balance()).isEqualTo(BalanceSign.UNDERSTEER);
            assertThat(finding.belongsTo()).isNotEqualTo(Belongs.CAR);
        });
        assertThat(pooled.findings().get(0).driver()).isEqualTo("Bo");
        assertThat(pooled.verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
    }

    @Test
    void theSameUndersteerOfAllIsTheCars() {
        PooledDiagnosis pooled = Pooler.pool(List.of(
                stint("Ada", new Drive(31).pushes(Math.toRadians(2.5), corner -> true)),
                stint("Bo", new Drive(32).pushes(Math.toRadians(2.5), corner -> true))));

        assertThat(pooled.verdict()).isEqualTo(Verdict.CHANGE_THE_CAR);
        assertThat(pooled.findings().get(0).balance()).isEqualTo(BalanceSign.UNDERSTEER);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 3, 5})
    void twoDriversOfAHealthyCarGiveNothingToChange(long seed) {
        PooledDiagnosis pooled = Pooler.pool(List.of(stint("Ada", new Drive(seed)), stint("Bo", new Drive(seed + 1))));
        assertThat(pooled.findings()).isEmpty();
        assertThat(pooled.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
    }

    @Test
    void oneDriverAloneCannotTellCarFromTechnique() {
        PooledDiagnosis pooled = Pooler.pool(List.of(stint("Ada", loose(11)), stint("Ada", loose(12))));
        assertThat(pooled.drivers()).containsExactly("Ada");
        assertThat(pooled.findings().get(0).drivers()).singleElement().satisfies(part -> {
            assertThat(part.seen()).isEqualTo(16);
            assertThat(part.of()).isEqualTo(16);
        });
        assertThat(pooled.verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        assertThat(pooled.reason()).contains("ranges on the car sheet", "a second driver in the same car would tell");
    }

    @Test
    void anUnevenStintIsNotHeldAgainstTheOthers() {
        PooledDiagnosis pooled = Pooler.pool(
                List.of(stint("Ada", loose(11)), stint("Bo", loose(41).pace(0.06)), stint("Cy", loose(12))));
        assertThat(pooled.findings().get(0).drivers()).hasSize(2);
        assertThat(pooled.reason()).contains("1 of 3 stints were too uneven");
    }
}
