package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.car.SetupChange;

final class DrivenTest {
    /** Proposals are tried on the car that was recorded, with its air as it was. */
    @Test
    void aWingTurnedBackAfterTheDriveGivesTheDownforceOfTheBalancedCar() {
        Driven driven = Driven.recorded(
                CaseDraw.draw(11L, 1, Optional.of("too much rear wing")).withLaps(2));
        SetupChange wing = driven.last().changes().stream()
                .filter(change -> change.item().equals("rear_wing"))
                .findFirst()
                .orElseThrow();
        double balanced = driven.balanced().aero().liftRearM2();
        assertThat(driven.faulty().aero().liftRearM2()).isGreaterThan(1.02 * balanced);
        assertThat(driven.with(new SetupChange(wing.item(), wing.to(), wing.from()))
                        .aero()
                        .liftRearM2())
                .isCloseTo(balanced, within(1.0e-9));
    }
}
