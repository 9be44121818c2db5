package setwright.core.identification;

import java.util.ArrayList;
import java.util.List;
import setwright.core.car.GripLimit;
import setwright.core.car.model.CarModel;
import setwright.core.car.sums.Gravity;
import setwright.core.identification.FitEvidence.Series;
import setwright.core.recording.Channel;
import setwright.core.replay.DrivenLap;

/** Lays what was measured beside what the fitted car gives. */
final class FitPlots {
    private static final double MPS_TO_KMH = 3.6;
    private static final int CURVE_POINTS = 60;

    private FitPlots() {}

    static List<FitEvidence> of(
            Evidence evidence,
            CarModel before,
            CarModel after,
            double[] middleAfter,
            List<DrivenLap> laps,
            GripLimit grip,
            UndersteerGradient gradient) {
        List<FitEvidence> out = new ArrayList<>();
        if (!evidence.drive().isEmpty()) {
            out.add(drive(evidence, before, after));
        }
        out.add(balance(evidence, middleAfter));
        out.add(gentle(laps, grip, gradient));
        out.add(axles(after));
        return out;
    }

    private static FitEvidence drive(Evidence evidence, CarModel before, CarModel after) {
        double[] speed = evidence.drive().stream().mapToDouble(bin -> bin[0]).toArray();
        double[] measured = evidence.drive().stream().mapToDouble(bin -> bin[1]).toArray();
        double[] grid = new double[CURVE_POINTS];
        double[] was = new double[CURVE_POINTS];
        double[] is = new double[CURVE_POINTS];
        double from = speed[0];
        double to = speed[speed.length - 1];
        for (int i = 0; i < CURVE_POINTS; i++) {
            double v = from + (to - from) * i / (CURVE_POINTS - 1.0);
            grid[i] = MPS_TO_KMH * v;
            was[i] = StintEvidence.modelled(before, v);
            is[i] = StintEvidence.modelled(after, v);
        }
        return new FitEvidence(
                "Acceleration at full throttle on straights",
                "speed, km/h",
                "acceleration, m/s²",
                List.of(
                        series("measured", false, scaled(speed), measured),
                        series("as assumed", true, grid, was),
                        series("as fitted", true, grid.clone(), is)));
    }

    private static double[] scaled(double[] speed) {
        double[] out = speed.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] *= MPS_TO_KMH;
        }
        return out;
    }

    private static FitEvidence balance(Evidence evidence, double[] parameters) {
        double[][] pairs = evidence.balances(parameters);
        double[] line = {
            Math.min(least(pairs[0]), least(pairs[1])), Math.max(-least(negated(pairs[0])), -least(negated(pairs[1])))
        };
        return new FitEvidence(
                "Balance angle of each corner and phase",
                "measured, deg",
                "modelled, deg",
                List.of(
                        series("corner and phase", false, pairs[0], pairs[1]),
                        series("as measured", true, line, line.clone())));
    }

    private static double least(double[] values) {
        double least = values.length == 0 ? 0.0 : values[0];
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    private static double[] negated(double[] values) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = -values[i];
        }
        return out;
    }

    private static FitEvidence gentle(List<DrivenLap> laps, GripLimit grip, UndersteerGradient gradient) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (DrivenLap lap : laps) {
            for (int k = 0; k < lap.size(); k += 3) {
                if (UndersteerGradient.gentle(lap.moments().get(k), grip) && Double.isFinite(lap.balance()[k])) {
                    x.add(Math.abs(lap.moments().get(k).lateral()) / Gravity.STANDARD_MPS2);
                    y.add(Math.toDegrees(lap.balance()[k]));
                }
            }
        }
        List<Series> series = new ArrayList<>();
        double[] xs = x.stream().mapToDouble(Double::doubleValue).toArray();
        double[] ys = y.stream().mapToDouble(Double::doubleValue).toArray();
        series.add(series("measured in gentle cornering", false, xs, ys));
        if (Double.isFinite(gradient.gradient()) && xs.length > 0) {
            double meanX = java.util.Arrays.stream(xs).average().orElse(0.0);
            double meanY = java.util.Arrays.stream(ys).average().orElse(0.0);
            double slope = FittedValues.perG(gradient.gradient());
            double most = -least(negated(xs));
            series.add(series("understeer gradient", true, new double[] {0.0, most}, new double[] {
                meanY - slope * meanX, meanY + slope * (most - meanX)
            }));
        }
        return new FitEvidence(
                "Balance angle against lateral acceleration", "lateral acceleration, g", "balance angle, deg", series);
    }

    private static FitEvidence axles(CarModel car) {
        double[] slip = new double[CURVE_POINTS];
        double[] front = new double[CURVE_POINTS];
        double[] rear = new double[CURVE_POINTS];
        double frontLoad = car.body().staticFrontN();
        double rearLoad = car.body().staticRearN();
        for (int i = 0; i < CURVE_POINTS; i++) {
            double angle = Math.toRadians(12.0) * i / (CURVE_POINTS - 1.0);
            slip[i] = Math.toDegrees(angle);
            front[i] = car.front()
                            .tyre()
                            .lateral(
                                    angle,
                                    frontLoad,
                                    car.front().inclination(),
                                    car.front().pressure())
                    / frontLoad;
            rear[i] = car.rear()
                            .tyre()
                            .lateral(
                                    angle,
                                    rearLoad,
                                    car.rear().inclination(),
                                    car.rear().pressure())
                    / rearLoad;
        }
        return new FitEvidence(
                "Tyres as fitted, at their static load",
                "slip angle, deg",
                "lateral force over load",
                List.of(series("front", true, slip, front), series("rear", true, slip.clone(), rear)));
    }

    private static Series series(String words, boolean curve, double[] x, double[] y) {
        return new Series(words, curve, Channel.of(x), Channel.of(y));
    }
}
