package setwright.core.car.worked;

import setwright.core.car.sums.AeroLoad;
import setwright.core.car.sums.TopSpeed;

/**
 * The speed at which drag and rolling resistance take all the power.
 *
 * @param power     at the wheels, {@code P}
 * @param dragArea  drag coefficient times frontal area, {@code CdA}
 * @param rolling   rolling resistance over weight, {@code c_rr}
 * @param mass      {@code m}
 * @param density   of the air, {@code rho}
 */
public record TopSpeedSum(Input power, Input dragArea, Input rolling, Input mass, Input density) {

    /** Works it out. */
    public Calculation calculation() {
        Calculation.Steps steps =
                Calculation.named("top-speed", "Top speed").from(power, dragArea, rolling, mass, density);
        TopSpeed car = new TopSpeed(density.si(), dragArea.si(), rolling.si(), mass.si());
        double speed = car.speedMps(power.si());
        steps.result(
                "v",
                "top speed",
                speed,
                Unit.KMH,
                "0.5 * {rho} * {CdA} * ({v} / 3.6)^3 + {c_rr} * {m} * 9.80665 * {v} / 3.6 = 1000 * {P}");
        double drag = AeroLoad.dynamicPressurePa(density.si(), speed) * dragArea.si();
        steps.result("F_d", "drag there", drag, Unit.NEWTON, "0.5 * {rho} * {CdA} * ({v} / 3.6)^2");
        steps.result(
                "F_rr", "rolling resistance", car.resistanceN(speed) - drag, Unit.NEWTON, "{c_rr} * {m} * 9.80665");
        return steps.note(
                        "Flat road, no wind, a gear that lets the engine give this power there; power at the wheels, not at the"
                                + " crankshaft.")
                .source("power balance; T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 4 (from memory)");
    }
}
