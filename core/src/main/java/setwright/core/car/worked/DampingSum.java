package setwright.core.car.worked;

import java.util.Optional;
import setwright.core.car.sums.Damping;
import setwright.core.car.sums.Ride;

/**
 * Damper rate to damping ratio, and back.
 *
 * @param where         which corner, such as {@code front}; empty when there is just one
 * @param spring        rate, {@code k_s}
 * @param motionRatio   of the spring, {@code MR}
 * @param damperRatio   damper travel over wheel travel, {@code MR_d}
 * @param mass          sprung mass on one wheel, {@code m}
 * @param damper        rate of the damper, {@code c_d}
 * @param wanted        damping ratio to find a damper for, {@code D}
 */
public record DampingSum(
        String where,
        Input spring,
        Input motionRatio,
        Input damperRatio,
        Input mass,
        Optional<Input> damper,
        Optional<Input> wanted) {

    /**
     * Works it out.
     *
     * @throws ImpossibleSum when there is neither a damper nor a wanted ratio
     */
    public Calculation calculation() {
        if (damper.isEmpty() && wanted.isEmpty()) {
            throw new ImpossibleSum("either a damper rate or a wanted damping ratio is needed");
        }
        Calculation.Steps steps = Calculation.named("damping", "Damping" + (where.isEmpty() ? "" : ", " + where))
                .from(spring, motionRatio, damperRatio, mass)
                .from(damper)
                .from(wanted);
        double wheel = Ride.wheelRate(spring.si(), motionRatio.si());
        steps.result("k_w", "wheel rate", wheel, Unit.N_PER_MM, "{k_s} * {MR}^2");
        double critical = Damping.critical(wheel, mass.si());
        steps.result("c_c", "critical damping at the wheel", critical, Unit.DAMPING, "2 * sqrt(1000 * {k_w} * {m})");
        damper.ifPresent(c -> {
            double damping = Damping.atWheel(c.si(), damperRatio.si());
            steps.result("c_w", "damping at the wheel", damping, Unit.DAMPING, "{c_d} * {MR_d}^2");
            steps.result(
                    "D_c",
                    "damping ratio, 1 is critical",
                    Damping.ratio(damping, wheel, mass.si()),
                    Unit.NONE,
                    "{c_w} / {c_c}");
        });
        wanted.ifPresent(ratio -> steps.result(
                "c_D",
                "damper rate for a ratio of " + SumWords.plain(ratio),
                Damping.atDamper(ratio.si() * critical, damperRatio.si()),
                Unit.DAMPING,
                "{D} * {c_c} / {MR_d}^2"));
        return steps.note(
                        "On the spring alone, the tyre taken as rigid. A damper's rate is force over speed, and differs between"
                                + " bump and rebound and between slow and fast: work each out by itself.")
                .note(SumWords.SHEET_MASS)
                .caution(SumWords.SUSPENSION_CAUTION)
                .source("damped single mass oscillator, c_c = 2 sqrt(k m)");
    }
}
