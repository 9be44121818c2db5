package setwright.core.trial;

import java.util.List;
import java.util.OptionalDouble;
import setwright.core.car.FuelCost;

/** Takes out of lap times what the fuel on board makes of them; what stays open of that is added to the error of the change. */
final class FuelEffect {
    private final boolean recorded;
    private final double perKg;
    private final double doubtPerKg;
    private final double middleKg;

    private FuelEffect(boolean recorded, double perKg, double doubtPerKg, double middleKg) {
        this.recorded = recorded;
        this.perKg = perKg;
        this.doubtPerKg = doubtPerKg;
        this.middleKg = middleKg;
    }

    /**
     * Returns what is known of the fuel of these runs.
     *
     * @param lapS  mean lap time, s
     */
    static FuelEffect of(List<TrialRun> runs, double lapS) {
        boolean recorded = runs.stream()
                .allMatch(
                        run -> run.laps().stream().allMatch(lap -> lap.fuelKg().isPresent()));
        double[] fuels = runs.stream()
                .flatMap(run -> run.laps().stream().map(lap -> kg(recorded, run, lap)))
                .mapToDouble(fuel -> fuel.orElse(Double.NaN))
                .toArray();
        double sum = 0.0;
        for (double fuel : fuels) {
            sum += fuel;
        }
        double middle = sum / fuels.length;
        double mass = runs.stream().mapToDouble(TrialRun::massKg).average().orElse(Double.NaN) + middle;
        double kilogram = lapS / mass;
        return Double.isFinite(kilogram)
                ? new FuelEffect(recorded, FuelCost.SHARE * kilogram, FuelCost.DOUBT * kilogram, middle)
                : new FuelEffect(recorded, 0.0, 0.0, 0.0);
    }

    /** As recorded, where it was on every lap; else that of the start: what burns in a run then goes with its laps. */
    private static OptionalDouble kg(boolean recorded, TrialRun run, TrialLap lap) {
        return recorded ? lap.fuelKg() : run.conditions().fuelStartKg();
    }

    /** Tells whether anything is known that could be taken out. */
    boolean known() {
        return perKg > 0.0;
    }

    /** Tells whether the fuel on board was recorded on every lap. */
    boolean recorded() {
        return recorded;
    }

    /** Returns the time of a part of the lap with the mean fuel of all laps on board, s: fuel costs every part its share. */
    double partS(TrialRun run, TrialLap lap, double partS) {
        return partS * timeS(run, lap) / lap.timeS();
    }

    /** Returns the same were fuel dearer by one standard deviation of what is known of it, s. */
    double dearerPartS(TrialRun run, TrialLap lap, double partS) {
        return partS * dearerS(run, lap) / lap.timeS();
    }

    /** Returns the lap time with the mean fuel of all laps on board, s. */
    double timeS(TrialRun run, TrialLap lap) {
        return lap.timeS() - perKg * excessKg(run, lap);
    }

    /** Returns the same were fuel dearer by one standard deviation of what is known of it, s. */
    double dearerS(TrialRun run, TrialLap lap) {
        return timeS(run, lap) - doubtPerKg * excessKg(run, lap);
    }

    private double excessKg(TrialRun run, TrialLap lap) {
        return known() ? kg(recorded, run, lap).orElse(middleKg) - middleKg : 0.0;
    }
}
