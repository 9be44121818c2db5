package setwright.core.car.worked;

import java.util.Optional;
import setwright.core.car.sums.Brakes;
import setwright.core.car.sums.Gravity;

/**
 * Brake balance at a deceleration.
 *
 * @param mass          {@code m}
 * @param frontWeight   share of the weight on the front axle, {@code w_f}
 * @param wheelbase     {@code L}
 * @param height        of the centre of gravity, {@code h}
 * @param bias          front share of the braking force, {@code p}
 * @param deceleration  {@code z}, above 0
 * @param tyreRadius    {@code r}
 * @param friction      between tyre and road, {@code mu}, when locking is asked for
 */
public record BrakesSum(
        Input mass,
        Input frontWeight,
        Input wheelbase,
        Input height,
        Input bias,
        Input deceleration,
        Input tyreRadius,
        Optional<Input> friction) {
    private static final String GRAVITY = String.valueOf(Gravity.STANDARD_MPS2);

    /**
     * Works it out.
     *
     * @throws ImpossibleSum when the rear axle leaves the road at this deceleration
     */
    public Calculation calculation() {
        double a = deceleration.si();
        double p = bias.si();
        Brakes brakes = brakes();
        if (!(brakes.rearLoadN(a) > 0.0)) {
            throw new ImpossibleSum("at " + SumWords.plain(deceleration)
                    + " the rear axle leaves the road, whatever the brakes; give a smaller deceleration");
        }
        Calculation.Steps steps = Calculation.named("brakes", "Brake balance at " + SumWords.plain(deceleration))
                .from(mass, frontWeight, wheelbase, height, bias, deceleration, tyreRadius)
                .from(friction);
        steps.result(
                "p_id",
                "ideal front share at this deceleration",
                brakes.idealFrontShare(a),
                Unit.PERCENT,
                "{w_f} + 100 * {z} * {h} / {L}");
        steps.result(
                "z_id",
                "deceleration at which the bias is ideal",
                brakes.decelerationOfIdeal(p),
                Unit.G,
                "({p} - {w_f}) / 100 * {L} / {h}");
        steps.result(
                "F_f",
                "load on the front axle",
                brakes.frontLoadN(a),
                Unit.NEWTON,
                "{m} * " + GRAVITY + " * ({w_f} / 100 + {z} * {h} / {L})");
        steps.result(
                "F_r",
                "load on the rear axle",
                brakes.rearLoadN(a),
                Unit.NEWTON,
                "{m} * " + GRAVITY + " * (1 - {w_f} / 100 - {z} * {h} / {L})");
        Result front = steps.result(
                "mu_f",
                "friction the front tyres need",
                brakes.frontFriction(a, p),
                Unit.NONE,
                "{p} / 100 * {m} * " + GRAVITY + " * {z} / {F_f}");
        Result rear = steps.result(
                "mu_r",
                "friction the rear tyres need",
                brakes.rearFriction(a, p),
                Unit.NONE,
                "(1 - {p} / 100) * {m} * " + GRAVITY + " * {z} / {F_r}");
        steps.result(
                "T_f",
                "brake torque at each front wheel",
                brakes.wheelTorqueNm(a, p, tyreRadius.si()),
                Unit.TORQUE,
                "{p} / 100 * {m} * " + GRAVITY + " * {z} * {r} / 2");
        steps.result(
                "T_r",
                "brake torque at each rear wheel",
                brakes.wheelTorqueNm(a, 1.0 - p, tyreRadius.si()),
                Unit.TORQUE,
                "(1 - {p} / 100) * {m} * " + GRAVITY + " * {z} * {r} / 2");
        steps.finding("At " + SumWords.plain(deceleration) + " the "
                + (front.value() >= rear.value() ? "front" : "rear")
                + " tyres need the most grip, and would lock first.");
        friction.ifPresent(mu -> locking(steps, brakes, p, mu));
        return steps.note("Without downforce, drag and engine braking; equal friction at all wheels.")
                .caution(
                        "Rear wheels that lock first make a car spin. Have a qualified person check a real car's brakes,"
                                + " and try a new balance with room around.")
                .source("moments about the road; R. Limpert, Brake Design and Safety, ch. 7 (from memory)");
    }

    private Brakes brakes() {
        double rear = wheelbase.si() * frontWeight.si();
        return new Brakes(mass.si(), wheelbase.si() - rear, rear, height.si());
    }

    private static void locking(Calculation.Steps steps, Brakes brakes, double p, Input mu) {
        double frontLock = brakes.frontLockMps2(p, mu.si());
        if (Double.isFinite(frontLock)) {
            steps.result(
                    "z_f",
                    "deceleration at which the front wheels lock",
                    frontLock,
                    Unit.G,
                    "{mu} * {w_f} / 100 / ({p} / 100 - {mu} * {h} / {L})");
        }
        steps.result(
                "z_r",
                "deceleration at which the rear wheels lock",
                brakes.rearLockMps2(p, mu.si()),
                Unit.G,
                "{mu} * (1 - {w_f} / 100) / (1 - {p} / 100 + {mu} * {h} / {L})");
        steps.finding("On a road of friction " + SumWords.plain(mu) + " "
                + switch (brakes.firstToLock(p, mu.si())) {
                    case FRONT -> "the front wheels lock first.";
                    case REAR -> "the rear wheels lock first.";
                    case BOTH -> "all wheels lock together.";
                });
    }
}
