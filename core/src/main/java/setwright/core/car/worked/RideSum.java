package setwright.core.car.worked;

import java.util.Optional;
import setwright.core.car.sums.Ride;

/**
 * Spring rate to ride frequency, and back.
 *
 * @param where        which corner, such as {@code front}; empty when there is just one
 * @param motionRatio  spring travel over wheel travel, {@code MR}
 * @param mass         sprung mass on one wheel, {@code m}
 * @param spring       rate, {@code k_s}
 * @param tyre         vertical rate, {@code k_t}
 * @param wanted       frequency to find a spring for, {@code f}
 */
public record RideSum(
        String where,
        Input motionRatio,
        Input mass,
        Optional<Input> spring,
        Optional<Input> tyre,
        Optional<Input> wanted) {

    /**
     * Works it out.
     *
     * @throws ImpossibleSum when there is neither a spring nor a wanted frequency, or the tyre alone is softer than
     *     the wanted frequency asks for
     */
    public Calculation calculation() {
        if (spring.isEmpty() && wanted.isEmpty()) {
            throw new ImpossibleSum("either a spring rate or a wanted frequency is needed");
        }
        Calculation.Steps steps = Calculation.named("ride", "Ride frequency" + (where.isEmpty() ? "" : ", " + where))
                .from(spring)
                .from(motionRatio, mass)
                .from(tyre)
                .from(wanted);
        spring.ifPresent(rate -> forward(steps, rate));
        wanted.ifPresent(frequency -> back(steps, frequency));
        return steps.note("Roll bars do not act when both wheels move together; bump stops and friction are left out.")
                .note(SumWords.SHEET_MASS)
                .caution(SumWords.SUSPENSION_CAUTION)
                .source(
                        "virtual work and the single mass oscillator; Milliken, Milliken, Race Car Vehicle Dynamics, ch. 16"
                                + " (from memory)");
    }

    private void forward(Calculation.Steps steps, Input rate) {
        double wheel = Ride.wheelRate(rate.si(), motionRatio.si());
        steps.result("k_w", "wheel rate", wheel, Unit.N_PER_MM, "{k_s} * {MR}^2");
        steps.result(
                "f_w",
                "frequency on the spring alone",
                Ride.frequencyHz(wheel, mass.si()),
                Unit.HERTZ,
                "sqrt(1000 * {k_w} / {m}) / (2 * pi)");
        steps.result(
                "s",
                "wheel travel under the static weight",
                Ride.staticDeflectionM(wheel, mass.si()),
                Unit.MILLIMETRE,
                "{m} * 9.80665 / {k_w}");
        tyre.ifPresent(k -> {
            double ride = Ride.rideRate(wheel, k.si());
            steps.result("k_r", "rate of spring and tyre", ride, Unit.N_PER_MM, "{k_w} * {k_t} / ({k_w} + {k_t})");
            steps.result(
                    "f_r",
                    "ride frequency, on spring and tyre",
                    Ride.frequencyHz(ride, mass.si()),
                    Unit.HERTZ,
                    "sqrt(1000 * {k_r} / {m}) / (2 * pi)");
        });
    }

    private void back(Calculation.Steps steps, Input frequency) {
        double needed = Ride.rateFor(frequency.si(), mass.si());
        String rate = "{m} * (2 * pi * {f})^2 / 1000";
        double wheel = needed;
        if (tyre.isPresent()) {
            double k = tyre.get().si();
            if (!(needed < k)) {
                throw new ImpossibleSum("no spring gives " + SumWords.plain(frequency)
                        + " on a tyre of " + SumWords.plain(tyre.get())
                        + ": even a rigid spring stays below; give a lower frequency");
            }
            wheel = Ride.wheelRateBelow(needed, k);
            steps.result("k_R", "rate of spring and tyre wanted", needed, Unit.N_PER_MM, rate);
            steps.result("k_W", "wheel rate wanted", wheel, Unit.N_PER_MM, "{k_R} * {k_t} / ({k_t} - {k_R})");
        } else {
            steps.result("k_W", "wheel rate wanted", wheel, Unit.N_PER_MM, rate);
        }
        steps.result(
                "k_S",
                "spring rate for " + SumWords.plain(frequency),
                Ride.springRate(wheel, motionRatio.si()),
                Unit.N_PER_MM,
                "{k_W} / {MR}^2");
    }
}
