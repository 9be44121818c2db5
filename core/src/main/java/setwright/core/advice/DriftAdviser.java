package setwright.core.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hipparchus.stat.correlation.KendallsCorrelation;
import setwright.core.advice.AdviceReview.Silent;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Yardstick;
import setwright.core.numerics.Robust;
import setwright.core.numerics.SlopeInterval;

/*
 * Design note. The balance of a lap is the median, over all corners and phases, of how far it lies from that corner's and phase's own
 * middle of the stint: what corners differ by falls out. Its trend is the median of pairwise slopes with Kendall's interval. A car whose
 * setup stays as it is does not drift; its tyres and its fuel do.
 */

/** Looks for what moves over the laps. */
final class DriftAdviser {
    /** Fewer laps have no interval at the 5 % level that leaves out anything. */
    private static final int FEWEST_LAPS = 6;
    /** Of the lap time over the stint: as much as a typical balance change costs (our choice). */
    private static final double LEAST_TIME_SHARE = 0.003;
    /** Time at full throttle goes with the third root of the mass: at constant power distance is m v^3 / (3 P). */
    private static final double MASS_POWER = 1.0 / 3.0;

    private static final double OPEN = 0.95;

    private DriftAdviser() {}

    static void look(Diagnosis diagnosis, CarSheet sheet, List<Advice> advice, List<Silent> silent) {
        Stint stint = diagnosis.stint();
        List<Lap> laps = stint.goodLaps();
        if (laps.size() < FEWEST_LAPS) {
            silent.add(new Silent(Topic.DRIFT, true, "fewer than " + FEWEST_LAPS + " laps can be judged"));
            return;
        }
        double[] number = laps.stream().mapToDouble(Lap::number).toArray();
        double[] balance = balance(diagnosis.passes(), laps);
        double[] time = times(diagnosis, sheet);
        SlopeInterval trend = SlopeInterval.of(number, balance);
        SlopeInterval pace = SlopeInterval.of(number, time);
        int span = (int) (number[number.length - 1] - number[0]);
        boolean balanceMoves = trend.clear() && Math.abs(trend.slope()) * span >= Yardstick.LEAST_RAD;
        boolean timeMoves = pace.clear() && Math.abs(pace.slope()) * span >= LEAST_TIME_SHARE * Robust.median(time);
        if (!balanceMoves && !timeMoves) {
            silent.add(new Silent(Topic.DRIFT, true, "neither balance nor lap time moves over the laps beyond chance"));
            return;
        }
        advice.add(new DriftAdvice(
                trend,
                tau(number, balance),
                pace,
                burnt(stint),
                span,
                balanceMoves,
                timeMoves,
                laps.stream().map(Lap::number).toList()));
    }

    /** Balance of each lap against the middle of the stint, rad; NaN for a lap without passes. */
    static double[] balance(List<CornerPass> passes, List<Lap> laps) {
        Map<String, Double> middle = passes.stream()
                .flatMap(pass -> pass.phases().values().stream().map(phase -> Map.entry(key(pass, phase), phase)))
                .filter(entry -> Double.isFinite(entry.getValue().excessRad()))
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey,
                        TreeMap::new,
                        Collectors.collectingAndThen(
                                Collectors.mapping(entry -> entry.getValue().excessRad(), Collectors.toList()),
                                found -> Robust.median(found.stream()
                                        .mapToDouble(Double::doubleValue)
                                        .toArray()))));
        return laps.stream()
                .mapToDouble(lap -> Robust.median(passes.stream()
                        .filter(pass -> pass.lap() == lap.number())
                        .flatMap(pass -> pass.phases().values().stream()
                                .map(phase -> phase.excessRad()
                                        - Objects.requireNonNullElse(middle.get(key(pass, phase)), Double.NaN)))
                        .mapToDouble(Double::doubleValue)
                        .toArray()))
                .toArray();
    }

    private static String key(CornerPass pass, PhaseBalance phase) {
        return pass.corner() + " " + phase.phase();
    }

    private static double tau(double[] number, double[] balance) {
        int[] use = java.util.stream.IntStream.range(0, number.length)
                .filter(i -> Double.isFinite(balance[i]))
                .toArray();
        return new KendallsCorrelation()
                .correlation(
                        Arrays.stream(use).mapToDouble(i -> number[i]).toArray(),
                        Arrays.stream(use).mapToDouble(i -> balance[i]).toArray());
    }

    private static double burnt(Stint stint) {
        List<Lap> laps = stint.goodLaps();
        return fuel(stint, laps.get(0)) - fuel(stint, laps.get(laps.size() - 1));
    }

    private static double fuel(Stint stint, Lap lap) {
        return stint.fuelKg(lap).orElse(Double.NaN);
    }

    /** Lap times as if the fuel of the first judged lap were still on board, where it was recorded, s. */
    private static double[] times(Diagnosis diagnosis, CarSheet sheet) {
        Stint stint = diagnosis.stint();
        List<Lap> laps = stint.goodLaps();
        double first = fuel(stint, laps.get(0));
        return laps.stream()
                .mapToDouble(lap -> {
                    double lighter = (first - fuel(stint, lap)) / (sheet.massKg() + first);
                    double gained = MASS_POWER * lighter * open(diagnosis.trace(), lap) * lap.timeS();
                    return lap.timeS() + (Double.isFinite(gained) ? gained : 0.0);
                })
                .toArray();
    }

    private static double open(HandlingTrace trace, Lap lap) {
        int count = 0;
        for (int i = lap.from(); i < lap.to(); i++) {
            count += trace.throttle().get(i) > OPEN ? 1 : 0;
        }
        return count / (double) (lap.to() - lap.from());
    }
}
