package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.handling.Phase;
import setwright.core.replay.DrivenLap;
import setwright.core.replay.GripWorth;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.TimeCost;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class PriceEstimatorTest {
    private static final double HALF_DEGREE = Math.toRadians(0.5);

    private Stint stint;
    private List<CornerPass> passes;
    private GripWorth worth;
    private PriceEstimator prices;

    @BeforeAll
    void drive() {
        CarSheet sheet = Drive.sheet();
        stint = new Drive(3L).stint();
        HandlingTrace trace = HandlingTracer.trace(stint, sheet);
        passes = CornerPasses.of(stint, trace, sheet);
        worth = GripWorth.of(stint, DrivenLap.of(stint, trace, passes), sheet);
        SetupStanding unknown = SetupStanding.unknown(sheet);
        prices = new PriceEstimator(passes, BalanceBelief.of(passes, unknown), unknown, worth);
    }

    /**
     * Cornering speed goes with the root of grip, so that the time in corners falls by half of it; what is carried out of them comes on top.
     * Known laps at the limit: 5 % more grip make 1.4 to 1.7 % of lap time, brakes included (reckoned for a point mass on five circuits of an open data set).
     */
    @Test
    void gripInAllCornersIsWorthWhatKnownLapsSay() {
        double lap = stint.goodLaps().stream().mapToDouble(Lap::timeS).average().orElseThrow();
        Set<Integer> all = passes.stream().map(CornerPass::corner).collect(Collectors.toSet());
        double gained = 0.0;
        for (Phase phase : BalanceBelief.PHASES) {
            gained += worth.perLapS(phase, all, 0.05);
        }
        assertThat(gained / lap).isBetween(0.007, 0.017);
    }

    /** The less an axle slips, the steeper its force falls: the second half degree leaves more unused than the first. */
    @Test
    void aLargerProblemCostsMoreAndOneInSomeCornersLess() {
        double none = midS(SpeedRange.ALL, 0.0);
        double small = midS(SpeedRange.ALL, HALF_DEGREE);
        double large = midS(SpeedRange.ALL, 2.0 * HALF_DEGREE);
        assertThat(small - none).isPositive();
        assertThat(large - small).isGreaterThan(small - none);
        assertThat(midS(SpeedRange.HIGH, HALF_DEGREE) + midS(SpeedRange.LOW, HALF_DEGREE))
                .isBetween(0.0, 1.001 * small);
    }

    private double midS(SpeedRange speed, double sizeRad) {
        return prices.car(Phase.MID, speed, BalanceSign.UNDERSTEER, sizeRad).meanS();
    }

    /** Of no imbalance at all the car may still lose what a balance does not show. */
    @Test
    void whatNeitherWitnessSeesStaysInTheDoubt() {
        TimeCost none = prices.car(Phase.MID, SpeedRange.ALL, BalanceSign.OVERSTEER, 0.0);
        TimeCost some = prices.car(Phase.MID, SpeedRange.ALL, BalanceSign.OVERSTEER, HALF_DEGREE);
        assertThat(none.deviationS()).isPositive();
        assertThat(some.deviationS()).isGreaterThan(none.deviationS());
    }

    /** Two laps of five that slide cost two fifths of what five of five do. */
    @Test
    void slidesAreChargedByTheShareOfPassesThatShowThem() {
        Set<Integer> two = Set.of(1, 2);
        double every = prices.slide(Phase.EXIT, two, 1.0, HALF_DEGREE).seconds();
        assertThat(every).isPositive();
        assertThat(prices.slide(Phase.EXIT, two, 0.4, HALF_DEGREE).seconds()).isCloseTo(0.4 * every, within(1.0e-9));
        assertThat(prices.slide(Phase.EXIT, Set.of(1, 2, 3), 1.0, HALF_DEGREE).seconds())
                .isGreaterThan(every);
    }
}
