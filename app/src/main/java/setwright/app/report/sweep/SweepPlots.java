package setwright.app.report.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import setwright.app.report.fit.CarFitView.Plot;
import setwright.app.report.fit.EvidencePlot;
import setwright.app.units.Figures;
import setwright.core.identification.FitEvidence;
import setwright.core.identification.FitEvidence.Series;
import setwright.core.recording.Channel;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweptLap;

/** Draws lap time, balance and speeds over one item, with the present setup marked. */
final class SweepPlots {
    private final SetupSweep sweep;
    private final Figures figures;
    private final String item;

    private SweepPlots(SetupSweep sweep, Figures figures) {
        this.sweep = sweep;
        this.figures = figures;
        String unit = sweep.items().get(0).item().unit();
        this.item = sweep.items().get(0).item().name() + (unit.isEmpty() ? "" : ", " + unit);
    }

    static List<Plot> of(SetupSweep sweep, Figures figures) {
        SweepPlots plots = new SweepPlots(sweep, figures);
        List<Plot> drawn = new ArrayList<>();
        drawn.add(plots.plot(
                "Lap time",
                "difference to the present setup, s",
                List.of(
                        plots.line(
                                "lap time", lap -> lap.timeS() - sweep.present().timeS()),
                        plots.mark("present setup", lap -> 0.0))));
        if (!sweep.slowCorners().isEmpty()) {
            List<Series> balance = new ArrayList<>();
            List<Series> speed = new ArrayList<>();
            plots.both(balance, "slow corners", sweep.slowCorners());
            plots.speeds(speed, "slow corners", sweep.slowCorners());
            if (!sweep.fastCorners().isEmpty()) {
                plots.both(balance, "fast corners", sweep.fastCorners());
                plots.speeds(speed, "fast corners", sweep.fastCorners());
            }
            balance.add(plots.mark("present setup", lap -> degrees(lap, sweep.slowCorners())));
            drawn.add(plots.plot("Balance at the limit", "front less rear slip angle, deg, + understeer", balance));
            drawn.add(plots.plot(
                    "Lowest speed in corners",
                    "difference to the present setup, " + figures.units().speedUnit(),
                    speed));
        }
        return drawn;
    }

    private void both(List<Series> series, String words, Set<Integer> corners) {
        series.add(line(words, lap -> degrees(lap, corners)));
    }

    private void speeds(List<Series> series, String words, Set<Integer> corners) {
        series.add(line(words, lap -> speed(lap, corners) - speed(sweep.present(), corners)));
    }

    private static double degrees(SweptLap lap, Set<Integer> corners) {
        return Math.toDegrees(known(lap.balanceRad(corners)));
    }

    private double speed(SweptLap lap, Set<Integer> corners) {
        return figures.units().speed(known(lap.lowestMps(corners)));
    }

    private static double known(OptionalDouble value) {
        return value.orElse(Double.NaN);
    }

    private Plot plot(String title, String yWords, List<Series> series) {
        return EvidencePlot.of(new FitEvidence(title, item, yWords, series), figures);
    }

    private Series line(String words, ToDoubleFunction<SweptLap> value) {
        return new Series(
                words,
                true,
                Channel.of(sweep.items().get(0).values().stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray()),
                Channel.of(sweep.laps().stream().mapToDouble(value).toArray()));
    }

    private Series mark(String words, ToDoubleFunction<SweptLap> value) {
        return new Series(
                words, false, Channel.of(new double[] {sweep.present().values().get(0)}), Channel.of(new double[] {
                    value.applyAsDouble(sweep.present())
                }));
    }
}
