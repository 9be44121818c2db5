package setwright.core.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.car.FuelCost;
import setwright.core.circuit.CornerTimes;
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
 * @param whole    a lap
 * @param corners  each corner with the straight behind it, by its number; empty where too few laps are placed all round
 */
public record TimeSince(Difference whole, Map<Integer, Difference> corners) {
    private static final double NORMAL_95 = 1.96;
    private static final double NORMAL_90 = 1.645;
    private static final String FUEL = "fuel_start_kg";
    private static final int MOST_NAMED = 4;

    public TimeSince {
        corners = Map.copyOf(corners);
    }

    /**
     * Time now less time then.
     *
     * @param seconds     below zero where the laps are quicker now
     * @param deviationS  standard deviation of what chance, another run and the fuel make of it
     */
    public record Difference(double seconds, double deviationS) {
        /** Returns the lower end of its 95 % interval, s. */
        public double lowS() {
            return seconds - NORMAL_95 * deviationS;
        }

        /** Returns the upper end, s. */
        public double highS() {
            return seconds + NORMAL_95 * deviationS;
        }

        /** Tells whether it is more than chance. */
        public boolean clear() {
            return lowS() > 0.0 || highS() < 0.0;
        }
    }

    /** Holds the laps of a stint against those of a baseline; empty where there are too few. */
    static Optional<TimeSince> of(Stint stint, CarSheet sheet, Baseline baseline) {
        double heavier = heavier(sheet, baseline.sheet());
        List<Double> now = stint.goodLaps().stream().map(Lap::timeS).toList();
        Map<Integer, List<Double>> then = baseline.cornersS();
        double lap = Robust.median(array(baseline.lapsS()));
        return difference(now, baseline.lapsS(), heavier, lap)
                .map(whole -> new TimeSince(
                        whole,
                        CornerTimes.of(stint).entrySet().stream()
                                .flatMap(corner -> difference(
                                        corner.getValue(), then.getOrDefault(corner.getKey(), List.of()), heavier, lap)
                                        .map(found -> Map.entry(corner.getKey(), found))
                                        .stream())
                                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue))));
    }

    /** What another run makes of a lap comes together from all parts of it, in proportion to their time, each by itself. */
    private static Optional<Difference> difference(List<Double> now, List<Double> then, double heavier, double lapS) {
        if (now.size() < Baseline.FEWEST_LAPS || then.size() < Baseline.FEWEST_LAPS) {
            return Optional.empty();
        }
        double[] times = array(now);
        double[] usual = array(then);
        double usually = Robust.median(usual);
        double runs = Math.sqrt(2.0) * Yardstick.RUN_TIME_SHARE * Math.sqrt(usually * lapS);
        double chance = Math.hypot(Robust.medianError(times), Robust.medianError(usual));
        double fuel = usually * heavier;
        return Optional.of(new Difference(
                Robust.median(times) - usually - FuelCost.SHARE * fuel,
                Math.hypot(FuelCost.DOUBT * fuel, Math.hypot(runs, chance))));
    }

    private static double[] array(List<Double> times) {
        return times.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** By what share of its mass a car is heavier than then by its fuel, where both sheets say. */
    private static double heavier(CarSheet now, CarSheet then) {
        return now.assumes(FUEL) || then.assumes(FUEL)
                ? 0.0
                : (now.fuelStartKg() - then.fuelStartKg()) / (then.massKg() + then.fuelStartKg());
    }

    /** Returns it where it is clearly a loss. */
    Optional<LostTime> lost() {
        return whole.lowS() > 0.0
                ? Optional.of(new LostTime(whole.seconds(), whole.lowS(), whole.highS()))
                : Optional.empty();
    }

    /** Returns it as the price of a problem that came since; one that is worth no change is charged in proportion. */
    Finding.Price price(double sizeRad) {
        double share = TimePrice.charged(sizeRad);
        double half = NORMAL_90 * whole.deviationS();
        return new Finding.Price(
                share * whole.seconds(), share * (whole.seconds() - half), share * (whole.seconds() + half));
    }

    /** Tells whether it is what a finding is priced by. */
    public boolean prices(Finding finding) {
        return finding.price().equals(price(finding.sizeRad()));
    }

    /** Returns why it is the price. */
    public String sentence() {
        return String.format(
                        Locale.ROOT,
                        "The laps are %.2f s %s than in the baseline, give or take %.2f s: %s, and all else that came since,"
                                + " such as tyres or weather, is in it.",
                        Math.abs(whole.seconds()),
                        whole.seconds() < 0.0 ? "quicker" : "slower",
                        NORMAL_90 * whole.deviationS(),
                        whole.seconds() < 0.0 ? "so it costs nothing that shows" : "that is the price")
                + where().map(places -> " " + places).orElse("");
    }

    /** Returns where it is lost and gained, the most first; empty where no corner is clear of chance. */
    public Optional<String> where() {
        List<Map.Entry<Integer, Difference>> clear = new ArrayList<>(corners.entrySet().stream()
                .filter(corner -> corner.getValue().clear())
                .sorted(Comparator.comparingDouble(
                        corner -> -Math.abs(corner.getValue().seconds())))
                .limit(MOST_NAMED)
                .toList());
        return clear.isEmpty()
                ? Optional.empty()
                : Optional.of(clear.stream()
                        .map(corner -> String.format(
                                Locale.ROOT,
                                "%.2f s are %s in corner %d",
                                Math.abs(corner.getValue().seconds()),
                                corner.getValue().seconds() > 0.0 ? "lost" : "gained",
                                corner.getKey()))
                        .collect(Collectors.joining(", ", "Most clearly ", ", each with the straight behind it.")));
    }
}
