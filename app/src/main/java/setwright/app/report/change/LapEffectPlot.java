package setwright.app.report.change;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import setwright.app.plot.Axis;
import setwright.app.plot.PathData;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.report.change.PredictionView.Panel;
import setwright.app.units.Figures;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.recording.Channel;
import setwright.core.replay.LapEffect;

/**
 * Draws a change over the lap: what it does to the balance with the range it may have, the time it gains or loses, and the speed
 * that was driven. The three share their distance axis; corners are numbered above. Drawings stretch sideways; their texts do
 * not.
 */
final class LapEffectPlot {
    private static final double WIDTH = 1000.0;
    private static final double PAD = 6.0;
    private static final int NUMBERS = 20;
    private static final int AXIS_HEIGHT = 34;
    /** A tenth of a typical change at least, so that nothing is drawn as large as if it mattered. */
    private static final double LEAST_SPAN_DEG = 0.02;

    private static final double LEAST_SPAN_S = 0.01;

    private final Circuit circuit;
    private final Figures figures;

    LapEffectPlot(Circuit circuit, Figures figures) {
        this.circuit = circuit;
        this.figures = figures;
    }

    List<Panel> panels(LapEffect lap) {
        if (lap.station().size() < 2) {
            return List.of();
        }
        return List.of(
                new Panel(
                        "Change of balance (toward understeer +, toward oversteer \u2212), deg",
                        "Change of balance in deg over the lap; the tables below hold its figures",
                        new Sheet(lap, lap.balance(), Math::toDegrees, 190, LEAST_SPAN_DEG)
                                .balance()
                                .markup()),
                new Panel(
                        "Time against the lap as driven (below zero: gained), s",
                        "Time gained or lost over the lap in s; the table of corners holds its figures",
                        new Sheet(lap, lap.timeS(), s -> s, 120, LEAST_SPAN_S)
                                .time()
                                .markup()),
                new Panel(
                        "Speed as driven, " + figures.units().speedUnit(),
                        "Speed as driven over the lap",
                        new Sheet(lap, lap.speed(), figures.units()::speed, 80, 1.0)
                                .speed()
                                .markup()));
    }

    /** One drawing. */
    private final class Sheet {
        private final LapEffect lap;
        private final DoubleUnaryOperator unit;
        private final int height;
        private final double from;
        private final double to;
        private final double[] x;
        private final double[] middle;
        private final double leastSpan;

        Sheet(LapEffect lap, Channel middle, DoubleUnaryOperator unit, int height, double leastSpan) {
            this.lap = lap;
            this.unit = unit;
            this.height = height;
            this.leastSpan = leastSpan;
            double[] stations = lap.station().toArray();
            this.from = stations[0];
            this.to = stations[stations.length - 1];
            Scale scale = new Scale(from, to, 0.0, WIDTH);
            this.x = Arrays.stream(stations).map(scale::at).toArray();
            this.middle = values(middle);
        }

        Svg balance() {
            double[] low = values(lap.balanceLow());
            double[] high = values(lap.balanceHigh());
            Scale y = scale(NUMBERS + PAD, true, middle, low, high);
            Svg svg = begin(height);
            numbers(svg);
            Axis axis = grid(svg, y, 4);
            stretched(svg);
            double[] zero = new double[middle.length];
            svg.add("path", "class", "band", "d", PathData.band(x, places(y, low), places(y, high)));
            svg.add("path", "class", "fill push", "d", PathData.band(x, places(y, zero), places(y, above(0.0))));
            svg.add("path", "class", "fill slide", "d", PathData.band(x, places(y, below(0.0)), places(y, zero)));
            svg.add("path", "class", "typical", "d", PathData.line(x, places(y, middle)));
            svg.close();
            ticks(svg, y, axis, true);
            return svg.close();
        }

        Svg time() {
            Scale y = scale(PAD, true, middle);
            Svg svg = begin(height);
            Axis axis = grid(svg, y, 3);
            stretched(svg);
            svg.add("path", "class", "typical", "d", PathData.line(x, places(y, middle)));
            svg.close();
            ticks(svg, y, axis, true);
            last(svg, y);
            return svg.close();
        }

        Svg speed() {
            Scale y = scale(PAD, false, middle);
            Svg svg = begin(height + AXIS_HEIGHT);
            Axis axis = grid(svg, y, 2);
            stretched(svg);
            svg.add("path", "class", "best", "d", PathData.line(x, places(y, middle)));
            svg.close();
            ticks(svg, y, axis, false);
            distances(svg);
            return svg.close();
        }

        private double[] values(Channel channel) {
            return Arrays.stream(channel.toArray()).map(unit).toArray();
        }

        private double[] above(double level) {
            return Arrays.stream(middle).map(v -> Math.max(v, level)).toArray();
        }

        private double[] below(double level) {
            return Arrays.stream(middle).map(v -> Math.min(v, level)).toArray();
        }

        private double[] places(Scale y, double[] values) {
            return Arrays.stream(values).map(y::at).toArray();
        }

        /** Ends that hold all lines, and zero where it means something. */
        private Scale scale(double top, boolean withZero, double[]... curves) {
            double[] all = Arrays.stream(curves)
                    .flatMapToDouble(Arrays::stream)
                    .filter(Double::isFinite)
                    .sorted()
                    .toArray();
            double low = all.length == 0 ? 0.0 : all[0];
            double high = all.length == 0 ? 0.0 : all[all.length - 1];
            if (withZero) {
                low = Math.min(low, 0.0);
                high = Math.max(high, 0.0);
            }
            double missing = Math.max(0.0, leastSpan - (high - low));
            double margin = 0.06 * (high - low + missing) + 0.5 * missing;
            return new Scale(low - margin, high + margin, height - PAD, top);
        }

        private Svg begin(int full) {
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
            for (Corner corner : circuit.corners()) {
                stretch(svg, corner.turnInM(), corner.turnOutM());
            }
            return svg;
        }

        /** The turn of a corner as background; one across the start line stands at both ends. */
        private void stretch(Svg svg, double start, double end) {
            double length = circuit.line().lengthM();
            for (double shift : new double[] {-length, 0.0, length}) {
                double left = share(start + shift);
                double right = share(end + shift);
                if (right > left) {
                    svg.add(
                            "rect",
                            "class",
                            "phase entry",
                            "x",
                            Svg.percent(left),
                            "width",
                            Svg.percent(right - left),
                            "y",
                            "0",
                            "height",
                            String.valueOf(height));
                }
            }
        }

        private void numbers(Svg svg) {
            for (Corner corner : circuit.corners()) {
                svg.text(
                        "text",
                        String.valueOf(corner.number()),
                        "class",
                        "tick middle corner-number",
                        "x",
                        Svg.percent(share(corner.apexM())),
                        "y",
                        "13");
            }
        }

        private double share(double station) {
            return Math.max(0.0, Math.min(1.0, (station - from) / (to - from)));
        }

        private Axis grid(Svg svg, Scale y, int most) {
            Axis axis = Axis.between(y.low(), y.high(), most);
            for (double tick : axis.ticks()) {
                String at = Svg.number(y.at(tick));
                svg.add(
                        "line",
                        "class",
                        tick == 0.0 ? "grid zero" : "grid",
                        "x1",
                        "0",
                        "x2",
                        "100%",
                        "y1",
                        at,
                        "y2",
                        at);
            }
            return axis;
        }

        private void stretched(Svg svg) {
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
        }

        private void ticks(Svg svg, Scale y, Axis axis, boolean signed) {
            for (double tick : axis.ticks()) {
                svg.text(
                        "text",
                        signed ? figures.signed(tick, axis.decimals()) : figures.number(tick, axis.decimals()),
                        "class",
                        "tick end",
                        "x",
                        "-6",
                        "y",
                        Svg.number(y.at(tick) + 4.0));
            }
        }

        /** What the lap comes to, at its end. */
        private void last(Svg svg, Scale y) {
            double value = middle[middle.length - 1];
            if (Double.isFinite(value)) {
                double place = y.at(value);
                svg.text(
                        "text",
                        figures.signed(value, 3) + Figures.KEPT_TOGETHER + "s",
                        "class",
                        "tick end last",
                        "x",
                        "100%",
                        "y",
                        Svg.number(place < 20.0 ? place + 15.0 : place - 6.0));
            }
        }

        private void distances(Svg svg) {
            double low = figures.units().distance(from);
            double high = figures.units().distance(to);
            for (double tick : Axis.between(low, high, 6).ticks()) {
                double share = (tick - low) / (high - low);
                svg.text(
                        "text",
                        figures.number(tick, 0),
                        "class",
                        share < 0.04 ? "tick" : share > 0.96 ? "tick end" : "tick middle",
                        "x",
                        Svg.percent(share),
                        "y",
                        String.valueOf(height + 14));
            }
            svg.text(
                    "text",
                    "distance from the start line, " + figures.units().distanceUnit(),
                    "class",
                    "tick middle",
                    "x",
                    "50%",
                    "y",
                    String.valueOf(height + 30));
        }
    }
}
