package setwright.core.simulation.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarModel;
import setwright.core.limit.Envelope;
import setwright.core.limit.LapCars;
import setwright.core.limit.LapSimulator;
import setwright.core.limit.LimitedBy;
import setwright.core.limit.Loops;
import setwright.core.limit.QuasiSteadyLap;
import setwright.core.limit.Station;

/**
 * Trends that lap-time studies agree on, with a car and a circuit of our own: D. Brayshaw and M. Harrison, Proc. IMechE D 219(6), 2005,
 * 725-739 (place of the centre of gravity), and W. and D. Milliken, Race Car Vehicle Dynamics, SAE 1995 (roll stiffness, mass,
 * downforce against drag); values from memory, so only directions and rough sizes are checked.
 */
final class SetupTrendsTest {
    private static Envelope present;
    private static QuasiSteadyLap lap;

    @BeforeAll
    static void drive() {
        present = Envelope.of(LapCars.winged());
        lap = lap(LapCars.winged());
    }

    @Test
    void aLowerCentreOfGravityIsQuicker() {
        double lower = lap(LapCars.moved(LapCars.winged(), -0.03, 0.0)).timeS();
        double higher = lap(LapCars.moved(LapCars.winged(), 0.03, 0.0)).timeS();
        assertThat(lower).isLessThan(lap.timeS() - 0.05);
        assertThat(higher).isGreaterThan(lap.timeS() + 0.05);
    }

    @Test
    void weightForwardPushesAndTooMuchOfItCostsTime() {
        QuasiSteadyLap forward = lap(LapCars.moved(LapCars.winged(), 0.0, 0.10));
        QuasiSteadyLap rearward = lap(LapCars.moved(LapCars.winged(), 0.0, -0.10));
        assertThat(balance(forward)).isGreaterThan(balance(rearward));
        assertThat(forward.timeShare(LimitedBy.FRONT_AXLE)).isGreaterThan(rearward.timeShare(LimitedBy.FRONT_AXLE));
    }

    @Test
    void aStifferFrontBarPushesAndThereIsABestShareOfRollStiffness() {
        QuasiSteadyLap soft = lap(LapCars.winged(new SetupChange("front_bar", 4.0, 1.0)));
        QuasiSteadyLap stiff = lap(LapCars.winged(new SetupChange("front_bar", 4.0, 9.0)));
        assertThat(balance(stiff)).isGreaterThan(balance(lap));
        assertThat(balance(soft)).isLessThan(balance(lap));
        QuasiSteadyLap stiffRear = lap(LapCars.winged(new SetupChange("rear_bar", 4.0, 9.0)));
        assertThat(balance(stiffRear)).isLessThan(balance(lap));
    }

    @Test
    void massCostsTimeAboutAsMuchAsItDoesAPointMass() {
        // 5 % of mass cost a point mass 0.3 to 0.6 % of its lap time; load-sensitive tyres make it more
        double heavy = lap(LapCars.winged(new SetupChange("fuel", 30.0, 86.0))).timeS();
        assertThat(heavy / lap.timeS() - 1.0).isBetween(0.003, 0.015);
    }

    @Test
    void wingsTradeTopSpeedForCorners() {
        QuasiSteadyLap more =
                lap(LapCars.winged(new SetupChange("front_wing", 5.0, 9.0), new SetupChange("rear_wing", 6.0, 10.0)));
        QuasiSteadyLap less =
                lap(LapCars.winged(new SetupChange("front_wing", 5.0, 1.0), new SetupChange("rear_wing", 6.0, 2.0)));
        assertThat(more.lowestMps(1040.0, 1160.0)).isGreaterThan(lap.lowestMps(1040.0, 1160.0));
        assertThat(less.lowestMps(1040.0, 1160.0)).isLessThan(lap.lowestMps(1040.0, 1160.0));
        assertThat(more.energy().dragJ() / more.energy().driveJ())
                .isGreaterThan(lap.energy().dragJ() / lap.energy().driveJ());
        assertThat(more.timeS()).isLessThan(less.timeS());
        CarModel winged = LapCars.winged(new SetupChange("rear_wing", 6.0, 12.0));
        assertThat(winged.resistanceN(60.0)).isGreaterThan(LapCars.winged().resistanceN(60.0));
    }

    private static QuasiSteadyLap lap(CarModel car) {
        return LapSimulator.lap(Envelope.of(car, present), Loops.circuit(2500), 2.0);
    }

    /** Mean balance of the corners, rad. */
    private static double balance(QuasiSteadyLap lap) {
        List<Station> corners =
                lap.stations().stream().filter(station -> station.share() > 0.8).toList();
        return corners.stream().mapToDouble(Station::balanceRad).average().orElseThrow();
    }
}
