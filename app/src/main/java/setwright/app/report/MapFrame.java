package setwright.app.report;

import setwright.core.circuit.ReferenceLine;

/**
 * Where ground coordinates fall on the drawing of a circuit, which is 1000 wide; one longer than wide is laid on its side.
 *
 * @param turned  whether it is laid on its side
 * @param left    ground coordinate at the left margin, m
 * @param top     ground coordinate at the upper margin, m
 * @param scale   drawing units a metre
 * @param height  of the drawing
 */
public record MapFrame(boolean turned, double left, double top, double scale, double height) {
    static final double WIDTH = 1000.0;
    private static final double MARGIN = 75.0;

    /** Returns the frame that a circuit fills. */
    public static MapFrame around(ReferenceLine line) {
        double[] x = new double[line.nodeCount()];
        double[] y = new double[line.nodeCount()];
        for (int i = 0; i < x.length; i++) {
            x[i] = line.x(i);
            y[i] = line.y(i);
        }
        double[] rangeX = range(x);
        double[] rangeY = range(y);
        boolean turned = rangeY[1] - rangeY[0] > rangeX[1] - rangeX[0];
        double across = turned ? rangeY[1] - rangeY[0] : rangeX[1] - rangeX[0];
        double down = turned ? rangeX[1] - rangeX[0] : rangeY[1] - rangeY[0];
        double scale = (WIDTH - 2.0 * MARGIN) / Math.max(1.0, across);
        return new MapFrame(
                turned,
                turned ? rangeY[0] : rangeX[0],
                turned ? rangeX[0] : rangeY[1],
                scale,
                Math.max(300.0, down * scale + 2.0 * MARGIN));
    }

    private static double[] range(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return new double[] {low, high};
    }

    /** Returns where a station lies, from the left. */
    public double x(ReferenceLine line, double station) {
        return MARGIN + scale * ((turned ? at(line, station, false) : at(line, station, true)) - left);
    }

    /** Returns where a station lies. Downwards: north is up, or east is down when turned, which keeps left corners left. */
    public double y(ReferenceLine line, double station) {
        return MARGIN + scale * (turned ? at(line, station, true) - top : top - at(line, station, false));
    }

    private static double at(ReferenceLine line, double station, boolean first) {
        double position = line.wrap(station) / line.stepM();
        int node = (int) Math.floor(position);
        double share = position - node;
        int here = node % line.nodeCount();
        int next = (node + 1) % line.nodeCount();
        return first
                ? line.x(here) * (1.0 - share) + line.x(next) * share
                : line.y(here) * (1.0 - share) + line.y(next) * share;
    }
}
