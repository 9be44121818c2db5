package setwright.core.judgement;

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
import setwright.core.judgement.Finding.Cause;
import setwright.core.numerics.Robust;

/*
 * Design note. What a problem costs a driver, who learns to live with it, no model of the car tells: drivers of the same car with and without a
 * fault differ by seconds, either way (judgement.md, section 9). The laps of the same driver in the car in good order do tell. What else may have
 * come since, tyres and weather, is in the figure as well: it is said, and widens the interval of the price by what days differ by; without that the
 * interval held the truth for none of 8 cars whose baseline was driven with 2 % more or less grip. Fuel is taken out where recordings or sheets give it.
 * It prices what came since all round the lap, not what one corner does, nor what the driver does on both days.
 *
 * A driver holds back what he cannot use: a car that has become loose may show the balance that it showed in good order, in slower laps. So
 * the same balance in clearly slower laps is no proof of the same car. Nor is the time a proof of a fault: tyres, fuel and track differ from
 * run to run. It only asks for a run back to back.
 */

/**
 * What laps take more than those of the baseline.
 *
 * @param whole    a lap
 * @param corners  each corner with the straight after it, by its number; empty where too few laps are placed all round
 * @param dayS     standard deviation of what another day may make of a lap, s; not in the differences
 * @param fuel     what was taken out for it; empty where it is not known
 */
public record TimeSince(Difference whole, Map<Integer, Difference> corners, double dayS, Optional<Fuel> fuel) {
    private static final double NORMAL_95 = 1.96;
    private static final double NORMAL_90 = 1.645;
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

        /** Returns a loss as {@code 0.52 s slower (0.31 to 0.73)}. */
        String slower() {
            return String.format(Locale.ROOT, "%.2f s slower (%.2f to %.2f)", seconds, lowS(), highS());
        }
    }

    /**
     * Fuel on board now less fuel then.
     *
     * @param kg     more than then
     * @param share  of the mass of the car then
     */
    public record Fuel(double kg, double share) {
        private static final String KEY = "fuel_start_kg";
        /** Less moves no lap by a hundredth of a second. */
        private static final double LEAST_KG = 0.5;

        /** As recorded in both, else as both sheets give it for the start; empty where neither is so. */
        static Optional<Fuel> of(Stint stint, CarSheet sheet, Baseline baseline) {
            CarSheet then = baseline.sheet();
            List<Double> recorded = stint.fuelKg();
            if (!recorded.isEmpty() && !baseline.fuelKg().isEmpty()) {
                double usual = median(baseline.fuelKg());
                double more = median(recorded) - usual;
                return Optional.of(new Fuel(more, more / (then.massKg() + usual)));
            }
            double more = sheet.fuelStartKg() - then.fuelStartKg();
            return sheet.assumes(KEY) || then.assumes(KEY)
                    ? Optional.empty()
                    : Optional.of(new Fuel(more, more / (then.massKg() + then.fuelStartKg())));
        }

        private String words() {
            return Math.abs(kg) < LEAST_KG
                    ? ""
                    : String.format(
                            Locale.ROOT, " (%.0f kg %s fuel allowed for)", Math.abs(kg), kg > 0.0 ? "more" : "less");
        }
    }

    /** Holds the laps of a stint against those of a baseline; empty where there are too few. */
    static Optional<TimeSince> of(Stint stint, CarSheet sheet, Baseline baseline) {
        Optional<Fuel> fuel = Fuel.of(stint, sheet, baseline);
        double heavier = fuel.map(Fuel::share).orElse(0.0);
        double lap = median(baseline.lapsS());
        Map<Integer, List<Double>> then = baseline.cornersS();
        Map<Integer, Difference> corners = CornerTimes.of(stint).entrySet().stream()
                .flatMap(corner ->
                        difference(corner.getValue(), then.getOrDefault(corner.getKey(), List.of()), heavier, lap)
                                .map(found -> Map.entry(corner.getKey(), found))
                                .stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return difference(stint.goodLaps().stream().map(Lap::timeS).toList(), baseline.lapsS(), heavier, lap)
                .map(whole -> new TimeSince(whole, corners, Yardstick.DAY_TIME_SHARE * lap, fuel));
    }

    /** What another run makes of a lap comes together from all parts of it, in proportion to their time, each by itself. */
    private static Optional<Difference> difference(List<Double> now, List<Double> then, double heavier, double lapS) {
        if (now.size() < Baseline.FEWEST_LAPS || then.size() < Baseline.FEWEST_LAPS) {
            return Optional.empty();
        }
        double usual = median(then);
        double runs = Math.sqrt(2.0) * Yardstick.RUN_TIME_SHARE * Math.sqrt(usual * lapS);
        double chance = Math.hypot(Robust.medianError(array(now)), Robust.medianError(array(then)));
        double fuel = usual * heavier;
        return Optional.of(new Difference(
                median(now) - usual - FuelCost.SHARE * fuel,
                Math.hypot(FuelCost.DOUBT * fuel, Math.hypot(runs, chance))));
    }

    private static double median(List<Double> values) {
        return Robust.median(array(values));
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Returns it where it is clearly a loss. */
    Optional<Difference> lost() {
        return whole.lowS() > 0.0 ? Optional.of(whole) : Optional.empty();
    }

    /**
     * Returns a finding at the price that the laps give it, where it came since and holds round the lap; else as it is.
     *
     * @param feet  what the driver's feet ask that they did not ask in the baseline
     */
    Finding priced(Finding finding, FeetSince feet) {
        boolean since =
                finding.cause() == Cause.CAR || feet.behind(finding.phase()).isPresent();
        return finding.lapWide() && since ? finding.costing(price(finding.sizeRad()), sentence(finding)) : finding;
    }

    /** A problem that is worth no change is charged with a loss in proportion. */
    Finding.Price price(double sizeRad) {
        double share = charged(sizeRad);
        double half = doubtS();
        return new Finding.Price(
                share * whole.seconds(), share * (whole.seconds() - half), share * (whole.seconds() + half));
    }

    private double doubtS() {
        return NORMAL_90 * Math.hypot(whole.deviationS(), dayS);
    }

    private double charged(double sizeRad) {
        return whole.seconds() > 0.0 ? TimePrice.charged(sizeRad) : 1.0;
    }

    /** Tells whether it is what a finding is priced by. */
    public boolean prices(Finding finding) {
        return finding.price().equals(price(finding.sizeRad()));
    }

    /** Returns why it is the price of a finding. */
    public String sentence(Finding finding) {
        double share = charged(finding.sizeRad());
        String cost = whole.seconds() < 0.0
                ? "it costs nothing that shows"
                : share < 1.0
                        ? String.format(Locale.ROOT, "%.0f %% of that is its price, as it is small", 100.0 * share)
                        : "that is its price";
        return String.format(
                        Locale.ROOT,
                        "The laps are %.2f s %s than in the baseline%s, give or take %.2f s: %s. The difference also holds all else that"
                                + " came since, such as tyres%s or weather, so that the price is known to %.2f s only; runs back to back tell it"
                                + " better.",
                        Math.abs(whole.seconds()),
                        whole.seconds() < 0.0 ? "quicker" : "slower",
                        fuel.map(Fuel::words).orElse(""),
                        NORMAL_90 * whole.deviationS(),
                        cost,
                        fuel.isPresent() ? "" : ", fuel",
                        share * doubtS())
                + where().map(places -> " " + places).orElse("");
    }

    /** Returns where it is lost and gained, the most first; empty where no corner is clear of chance. */
    public Optional<String> where() {
        List<Map.Entry<Integer, Difference>> clear = corners.entrySet().stream()
                .filter(corner -> corner.getValue().clear())
                .sorted(Comparator.comparingDouble(
                        corner -> -Math.abs(corner.getValue().seconds())))
                .limit(MOST_NAMED)
                .toList();
        return clear.isEmpty()
                ? Optional.empty()
                : Optional.of(clear.stream()
                        .map(corner -> String.format(
                                Locale.ROOT,
                                "%.2f s %s in corner %d",
                                Math.abs(corner.getValue().seconds()),
                                corner.getValue().seconds() > 0.0 ? "lost" : "gained",
                                corner.getKey()))
                        .collect(Collectors.joining(", ", "By corner, with the straight after it: ", ".")));
    }
}
