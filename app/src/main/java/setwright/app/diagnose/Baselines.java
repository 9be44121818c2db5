package setwright.app.diagnose;

import java.util.Locale;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.intake.problem.InputProblem;

/** Makes baselines of laps that can serve as one. */
public final class Baselines {
    /** A sheet is written with as many digits; what differs by less is the same. */
    private static final double ALIKE = 0.005;

    private Baselines() {}

    /**
     * Makes one.
     *
     * @param name   of the laps, as people call them
     * @param stint  on the circuit of the laps to be judged
     * @param sheet  as driven
     * @throws InputProblem when it has too few laps
     */
    public static Baseline of(String name, Stint stint, CarSheet sheet) {
        int laps = stint.goodLaps().size();
        if (laps < Baseline.FEWEST_LAPS) {
            throw InputProblem.in(name)
                    .expected("at least " + Baseline.FEWEST_LAPS + " laps to hold others against")
                    .found(String.valueOf(laps))
                    .advice("Name a stint of this car in good order with more laps.")
                    .problem();
        }
        return Baseline.of(name, stint, sheet);
    }

    /** Tells whether the balance angle can be compared between cars of these sheets. */
    public static boolean areOfOneCar(CarSheet then, CarSheet now) {
        return alike(then.wheelbaseM(), now.wheelbaseM()) && alike(then.steeringRatio(), now.steeringRatio());
    }

    /**
     * Refuses a sheet that the balance angle cannot be compared with.
     *
     * @param name  of the baseline
     * @throws InputProblem when wheelbase or steering ratio differ
     */
    public static void mustBeOfOneCar(String name, CarSheet then, CarSheet now) {
        mustBeAlike(name, "wheelbase", then.wheelbaseM(), now.wheelbaseM());
        mustBeAlike(name, "steering ratio", then.steeringRatio(), now.steeringRatio());
    }

    private static void mustBeAlike(String name, String what, double then, double now) {
        if (!alike(then, now)) {
            throw InputProblem.in(name)
                    .expected(String.format(Locale.ROOT, "a baseline of the same car, with a %s of %.4g", what, now))
                    .found(String.format(Locale.ROOT, "%.4g", then))
                    .advice("Name a stint of this very car, or leave the baseline out.")
                    .problem();
        }
    }

    private static boolean alike(double then, double now) {
        return Math.abs(then - now) <= ALIKE * Math.abs(now);
    }
}
