package setwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import setwright.app.evidence.BalanceTable.Cell;
import setwright.app.evidence.BalanceTable.Row;
import setwright.app.evidence.CornerTraces;
import setwright.app.evidence.CornerTraces.Curve;
import setwright.app.evidence.TraceKind;
import setwright.app.plot.Axis;
import setwright.app.plot.PathData;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.report.CauseView.CornerPanel;
import setwright.app.report.CauseView.Panel;
import setwright.app.units.Figures;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Phase;

/**
 * Draws the traces of a corner over distance: all laps as a band, the typical lap bold, the quickest as a thin line,
 * phases as background. Drawings stretch sideways; their texts do not.
 */
final class TracePlot {
    private static final double WIDTH = 1000.0;
    private static final double PAD = 6.0;

    private final Figures figures;
    private final CornerFacts facts;
    private final String reference;

    TracePlot(Figures figures, CornerFacts facts, String reference) {
        this.figures = figures;
        this.facts = facts;
        this.reference = reference;
    }

    CornerPanel panel(Row row, CornerTraces traces) {
        Sheet sheet = new Sheet(row, traces);
        List<Panel> panels = new ArrayList<>();
        panels.add(new Panel(
                "Speed",
                figures.units().speedUnit(),
                sheet.draw(TraceKind.SPEED, figures.units()::speed, 130, Sheet.PHASE_NAMES)
                        .markup()));
        panels.add(new Panel(
                "Steering wheel (into the corner +)",
                "deg",
                sheet.draw(TraceKind.STEERING, Math::toDegrees, 110, Sheet.HANDS)
                        .markup()));
        panels.add(new Panel(
                "Brake",
                "%",
                sheet.draw(TraceKind.BRAKE, v -> 100.0 * v, 64, Sheet.PLAIN).markup()));
        panels.add(new Panel(
                "Throttle",
                "%",
                sheet.draw(TraceKind.THROTTLE, v -> 100.0 * v, 64, Sheet.PLAIN).markup()));
        panels.add(new Panel(
                "Balance, front minus rear slip (understeer +, oversteer \u2212)",
                "deg",
                sheet.draw(TraceKind.BALANCE, Math::toDegrees, 150, Sheet.BALANCE)
                        .markup()));
        return new CornerPanel(
                row.corner().number(),
                facts.line(row),
                traces.bestLap().isPresent()
                        ? "quickest here: lap " + traces.bestLap().getAsInt()
                        : "quickest here",
                reference,
                traces.laps().size(),
                panels);
    }

    /** One corner's drawings, which share their distance axis. */
    private final class Sheet {
        static final int PLAIN = 0;
        static final int PHASE_NAMES = 1;
        static final int HANDS = 2;
        static final int BALANCE = 3;
        private static final int AXIS_HEIGHT = 34;

        private final Row row;
        private final CornerTraces traces;
        private final double from;
        private final double to;
        private final double[] x;

        Sheet(Row row, CornerTraces traces) {
            this.row = row;
            this.traces = traces;
            double[] stations = traces.stationM().toArray();
            this.from = stations[0];
            this.to = stations[stations.length - 1];
            Scale scale = new Scale(from, to, 0.0, WIDTH);
            this.x = Arrays.stream(stations).map(scale::at).toArray();
        }

        Svg draw(TraceKind kind, DoubleUnaryOperator unit, int height, int extra) {
            Curve curve = traces.curve(kind);
            double[] typical = apply(curve.typical().toArray(), unit);
            double[] best = apply(curve.best().toArray(), unit);
            double[] low = apply(curve.low().toArray(), unit);
            double[] high = apply(curve.high().toArray(), unit);
            double[] own = extra == BALANCE
                    ? apply(traces.curve(TraceKind.REFERENCE).typical().toArray(), unit)
                    : new double[0];
            double[] ends = kind == TraceKind.BRAKE || kind == TraceKind.THROTTLE
                    ? new double[] {0.0, 100.0}
                    : ends(extra == BALANCE, typical, best, low, high, own);
            Scale y = new Scale(ends[0], ends[1], height - PAD, PAD + (extra == PHASE_NAMES ? 14.0 : 0.0));
            int full = height + (extra == BALANCE ? AXIS_HEIGHT : 0);
            Svg svg = new Svg()
                    .open(
                            "svg",
                            "class",
                            "plot",
                            "width",
                            "100%",
                            "height",
                            String.valueOf(full),
                            "aria-hidden",
                            "true");
            phases(svg, height, extra == PHASE_NAMES);
            Axis axis = Axis.between(ends[0], ends[1], height < 80 ? 2 : 4);
            for (double tick : axis.ticks()) {
                String at = Svg.number(y.at(tick));
                svg.add(
                        "line",
                        "class",
                        tick == 0.0 && extra == BALANCE ? "grid zero" : "grid",
                        "x1",
                        "0",
                        "x2",
                        "100%",
                        "y1",
                        at,
                        "y2",
                        at);
            }
            svg.open(
                    "svg",
                    "viewBox",
                    "0 0 1000 " + height,
                    "width",
                    "100%",
                    "height",
                    String.valueOf(height),
                    "preserveAspectRatio",
                    "none");
            svg.add("path", "class", "band", "d", PathData.band(x, places(y, low), places(y, high)));
            if (extra == BALANCE) {
                excess(svg, y, typical, own);
                svg.add("path", "class", "own", "d", PathData.line(x, places(y, own)));
            }
            svg.add("path", "class", "best", "d", PathData.line(x, places(y, best)));
            svg.add("path", "class", "typical", "d", PathData.line(x, places(y, typical)));
            svg.close();
            for (double tick : axis.ticks()) {
                svg.text(
                        "text",
                        extra == BALANCE
                                ? figures.signed(tick, axis.decimals())
                                : figures.number(tick, axis.decimals()),
                        "class",
                        "tick end",
                        "x",
                        "-6",
                        "y",
                        Svg.number(y.at(tick) + 4.0));
            }
            if (extra == HANDS) {
                hands(svg, height);
            }
            if (extra == BALANCE) {
                slides(svg, height);
                distances(svg, height);
            }
            return svg.close();
        }

        /** What differs from the car's own balance, filled in the colour of its sign. */
        private void excess(Svg svg, Scale y, double[] typical, double[] own) {
            double[] above = new double[typical.length];
            double[] below = new double[typical.length];
            for (int i = 0; i < typical.length; i++) {
                above[i] = Math.max(typical[i], own[i]);
                below[i] = Math.min(typical[i], own[i]);
            }
            svg.add("path", "class", "fill push", "d", PathData.band(x, places(y, own), places(y, above)));
            svg.add("path", "class", "fill slide", "d", PathData.band(x, places(y, below), places(y, own)));
        }

        private void phases(Svg svg, int height, boolean named) {
            for (Phase phase : Phase.values()) {
                row.cell(phase).ifPresent(cell -> phase(svg, cell, height, named));
            }
        }

        private void phase(Svg svg, Cell cell, int height, boolean named) {
            double start = share(cell.fromM());
            double end = share(cell.toM());
            if (!(end > start)) {
                return;
            }
            svg.add(
                    "rect",
                    "class",
                    "phase " + cell.phase().words(),
                    "x",
                    Svg.percent(start),
                    "width",
                    Svg.percent(end - start),
                    "y",
                    "0",
                    "height",
                    String.valueOf(height));
            if (named && end - start > 0.07) {
                svg.text(
                        "text",
                        cell.phase().words(),
                        "class",
                        "tick middle phase-name",
                        "x",
                        Svg.percent(0.5 * (start + end)),
                        "y",
                        "12");
            }
        }

        private double share(double station) {
            return Math.max(0.0, Math.min(1.0, (station - from) / (to - from)));
        }

        /** Each gesture of the hands as a tick at its place, all laps. */
        private void hands(Svg svg, int height) {
            row.passes().stream()
                    .flatMap(pass -> pass.hands().stream())
                    .filter(event -> event.stationM() >= from && event.stationM() <= to)
                    .forEach(event -> tick(
                            svg,
                            event.stationM(),
                            height,
                            css(event.kind()),
                            event.kind().words()));
        }

        /** Each moment when an axle let go, all laps. */
        private void slides(Svg svg, int height) {
            row.passes().stream()
                    .flatMap(pass -> pass.slides().stream())
                    .filter(slide -> slide.stationM() >= from && slide.stationM() <= to)
                    .forEach(slide -> tick(
                            svg,
                            slide.stationM(),
                            height,
                            "let-go",
                            slide.axle().words() + " lets go"));
        }

        private void tick(Svg svg, double station, int height, String css, String title) {
            String at = Svg.percent(share(station));
            svg.open(
                    "line",
                    "class",
                    "gesture " + css,
                    "x1",
                    at,
                    "x2",
                    at,
                    "y1",
                    String.valueOf(height - 12),
                    "y2",
                    String.valueOf(height - 1));
            svg.text("title", title);
            svg.close();
        }

        private void distances(Svg svg, int height) {
            double low = figures.units().distance(from);
            double high = figures.units().distance(to);
            Axis axis = Axis.between(low, high, 5);
            for (double tick : axis.ticks()) {
                double share = (tick - low) / (high - low);
                String align = share < 0.04 ? "tick" : share > 0.96 ? "tick end" : "tick middle";
                svg.add(
                        "line",
                        "class",
                        "grid",
                        "x1",
                        Svg.percent(share),
                        "x2",
                        Svg.percent(share),
                        "y1",
                        String.valueOf(height),
                        "y2",
                        String.valueOf(height + 4));
                svg.text(
                        "text",
                        figures.number(tick, 0),
                        "class",
                        align,
                        "x",
                        Svg.percent(share),
                        "y",
                        String.valueOf(height + 16));
            }
            svg.text(
                    "text",
                    "distance from the start line, " + figures.units().distanceUnit(),
                    "class",
                    "tick middle",
                    "x",
                    "50%",
                    "y",
                    String.valueOf(height + 31));
        }
    }

    private static String css(HandsEvent.Kind kind) {
        return kind == HandsEvent.Kind.WIND_ON ? "wind-on" : kind.words();
    }

    private static double[] apply(double[] values, DoubleUnaryOperator unit) {
        return Arrays.stream(values).map(unit).toArray();
    }

    private static double[] places(Scale y, double[] values) {
        return Arrays.stream(values).map(y::at).toArray();
    }

    /** Ends that hold the lines and nearly all of the band, so that one wild sample does not flatten the rest. */
    private static double[] ends(boolean withZero, double[]... curves) {
        double[] all = Arrays.stream(curves)
                .flatMapToDouble(Arrays::stream)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        if (all.length == 0) {
            return new double[] {0.0, 1.0};
        }
        double low = all[(int) (0.01 * (all.length - 1))];
        double high = all[(int) Math.ceil(0.99 * (all.length - 1))];
        if (withZero) {
            low = Math.min(low, 0.0);
            high = Math.max(high, 0.0);
        }
        double margin = Math.max(0.06 * (high - low), 1e-3);
        return new double[] {low - margin, high + margin};
    }
}
