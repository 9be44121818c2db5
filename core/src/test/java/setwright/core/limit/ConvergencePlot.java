package setwright.core.limit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Draws docs/lap-convergence.svg: how the lap time comes to rest as the step shrinks. The argument is the file. */
final class ConvergencePlot {
    private static final int[] NODES = {500, 1000, 2000, 4000, 8000, 16000};
    private static final int FINEST = 80000;
    private static final double LEFT = 70.0;
    private static final double RIGHT = 610.0;
    private static final double TOP = 20.0;
    private static final double BOTTOM = 290.0;

    private final StringBuilder svg = new StringBuilder();

    private ConvergencePlot() {}

    /** Draws. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(Path.of(arguments[0]), new ConvergencePlot().draw());
    }

    private String draw() {
        svg.append(
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 640 350\" font-family=\"sans-serif\" font-size=\"13\">\n")
                .append("<rect width=\"640\" height=\"350\" fill=\"#fff\"/>\n");
        for (double step : new double[] {0.3, 1.0, 3.0, 10.0}) {
            line(x(step), TOP, x(step), BOTTOM, "#ddd");
            text(x(step), BOTTOM + 18.0, "middle", plain(step));
        }
        for (double error : new double[] {1e-4, 1e-3, 1e-2, 1e-1, 1.0}) {
            line(LEFT, y(error), RIGHT, y(error), "#ddd");
            text(LEFT - 8.0, y(error) + 4.0, "end", plain(error));
        }
        text(0.5 * (LEFT + RIGHT), BOTTOM + 40.0, "middle", "step, m (lap of 5 km)");
        svg.append("<text transform=\"translate(16 160) rotate(-90)\" text-anchor=\"middle\">lap time off, s</text>\n");
        line(x(0.3125), y(0.0008), x(10.0), y(0.0008 * 1024.0), "#999");
        text(x(1.2) - 10.0, y(0.02), "end", "second order");
        curve(Envelope.of(LapCars.winged()), "#00635c", "four wheels", 0.0);
        curve(new PointMassEnvelope(1000.0, 1.2, 200.0e3, 0.48, 0.0), "#b35806", "point mass", 18.0);
        return svg.append("</svg>\n").toString();
    }

    private void curve(GripEnvelope car, String colour, String name, double down) {
        double exact = LapSimulator.lap(car, Loops.circuit(FINEST), Loops.LENGTH_M / FINEST)
                .timeS();
        List<String> points = new ArrayList<>();
        for (int nodes : NODES) {
            double step = Loops.LENGTH_M / nodes;
            double off =
                    Math.abs(LapSimulator.lap(car, Loops.circuit(nodes), step).timeS() - exact);
            points.add(String.format(Locale.ROOT, "%.1f,%.1f", x(step), y(off)));
            svg.append(String.format(
                    Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"%s\"/>%n", x(step), y(off), colour));
        }
        svg.append("<polyline fill=\"none\" stroke-width=\"2\" stroke=\"" + colour + "\" points=\"")
                .append(String.join(" ", points))
                .append("\"/>\n<text x=\"90\" y=\"" + (40.0 + down) + "\" fill=\"" + colour + "\">" + name
                        + "</text>\n");
    }

    private void line(double x1, double y1, double x2, double y2, String colour) {
        svg.append(String.format(
                Locale.ROOT, "<path d=\"M%.1f %.1fL%.1f %.1f\" stroke=\"%s\"/>%n", x1, y1, x2, y2, colour));
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append(String.format(
                Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n", x, y, anchor, words));
    }

    private static double x(double step) {
        return LEFT + (RIGHT - LEFT) * Math.log(step / 0.25) / Math.log(12.0 / 0.25);
    }

    private static double y(double error) {
        return BOTTOM - (BOTTOM - TOP) * Math.log(Math.max(error, 1e-4) / 1e-4) / Math.log(2.0e4);
    }

    private static String plain(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
