package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.judgement.Finding.Cause;
import setwright.core.standing.SetupStanding;

/** A rear that steps out under a brake that is still on (common practice: load that has gone forward) is the foot's before it is the car's. */
final class DriverCauseTest {
    /** In corners 1 and 2. */
    private static final Finding LOOSE = Findings.mid(BalanceSign.OVERSTEER, SpeedRange.LOW);

    @ParameterizedTest
    @CsvSource({
        "1;2,   DRIVER",
        "1;2;7, DRIVER",
        "1;7,   CAR",
    })
    void theBrakeIsBehindWhatItIsThereFor(String corners, Cause cause) {
        assertThat(judged(LOOSE, trailed(corners)).cause()).isEqualTo(cause);
    }

    @Test
    void theReasonNamesTheFoot() {
        assertThat(judged(LOOSE, trailed("1;2;7")).why())
                .last()
                .asString()
                .startsWith("In 3 corners the brake trailed deeper")
                .endsWith("Technique comes first.");
    }

    @Test
    void understeerIsNoneOfItsDoing() {
        Finding push = Findings.mid(BalanceSign.UNDERSTEER, SpeedRange.LOW);
        assertThat(judged(push, trailed("1;2")).cause()).isEqualTo(Cause.CAR);
    }

    @Test
    void anotherFaultInTheSameCornersIsNot() {
        DrivingFault coasting = new DrivingFault("coasting", List.of(1, 2), 1.0, 0.6, "s");
        assertThat(judged(LOOSE, coasting).cause()).isEqualTo(Cause.CAR);
    }

    private static DrivingFault trailed(String corners) {
        List<Integer> numbers =
                List.of(corners.split(";")).stream().map(Integer::valueOf).toList();
        return new DrivingFault(HabitRule.TRAILED, numbers, 0.94, 0.46, "share of hardest braking");
    }

    private static Finding judged(Finding finding, DrivingFault fault) {
        return DriverCause.judge(finding, List.of(fault), FeetSince.NONE, Optional.empty(), SetupStanding.unknown());
    }
}
