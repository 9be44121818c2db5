package setwright.core.judgement;

import java.util.Locale;
import java.util.Optional;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.car.FuelCost;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.numerics.Robust;

/*
 * Design note. What a problem costs a driver, who learns to live with it, no model of the car tells: drivers of the same car with and without a
 * fault differ by seconds, either way (judgement.md, section 9). The laps of the same driver in the car in good order do tell. What else may have
 * come since, tyres and weather, is in the figure as well: it is said, not guessed at. Fuel is taken out where both sheets give it.
 */

/**
 * What laps take more than those of the baseline.
 *
 * @param seconds     a lap, s, below zero where they are quicker
 * @param deviationS  standard deviation of what chance and another run make of it, s
 */
record TimeSince(double seconds, double deviationS) {
    private static final double NORMAL_95 = 1.96;
    private static final double NORMAL_90 = 1.645;
    private static final String FUEL = "fuel_start_kg";

    /** Holds the laps of a stint against those of a baseline; empty where there are too few. */
    static Optional<TimeSince> of(Stint stint, CarSheet sheet, Baseline baseline) {
        double[] now = stint.goodLaps().stream().mapToDouble(Lap::timeS).toArray();
        double[] then =
                baseline.lapsS().stream().mapToDouble(Double::doubleValue).toArray();
        if (now.length < Baseline.FEWEST_LAPS || then.length < Baseline.FEWEST_LAPS) {
            return Optional.empty();
        }
        double usual = Robust.median(then);
        double heavier = usual * heavier(sheet, baseline.sheet());
        double runs = Math.sqrt(2.0) * Yardstick.RUN_TIME_SHARE * usual;
        double chance = Math.hypot(Robust.medianError(now), Robust.medianError(then));
        return Optional.of(new TimeSince(
                Robust.median(now) - usual - FuelCost.SHARE * heavier,
                Math.hypot(FuelCost.DOUBT * heavier, Math.hypot(runs, chance))));
    }

    /** By what share of its mass a car is heavier than then by its fuel, where both sheets say. */
    private static double heavier(CarSheet now, CarSheet then) {
        return now.assumes(FUEL) || then.assumes(FUEL)
                ? 0.0
                : (now.fuelStartKg() - then.fuelStartKg()) / (then.massKg() + then.fuelStartKg());
    }

    /** Returns it where it is clearly a loss. */
    Optional<LostTime> lost() {
        double half = NORMAL_95 * deviationS;
        return seconds > half ? Optional.of(new LostTime(seconds, seconds - half, seconds + half)) : Optional.empty();
    }

    /**
     * Returns it as the price of what came since.
     *
     * @param share  of it that the problem can be charged with, 0..1
     */
    Finding.Price price(double share) {
        double half = NORMAL_90 * deviationS;
        return new Finding.Price(share * seconds, share * (seconds - half), share * (seconds + half));
    }

    /** Returns why it is the price, in a sentence. */
    String sentence() {
        return String.format(
                Locale.ROOT,
                "The laps are %.2f s %s than in the baseline, give or take %.2f s: that is the price, and all else that came since,"
                        + " such as tyres or weather, is in it.",
                Math.abs(seconds),
                seconds < 0.0 ? "quicker" : "slower",
                NORMAL_90 * deviationS);
    }
}
