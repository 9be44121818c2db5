package setwright.app.plot;

/** The {@code d} attribute of an SVG path, with one decimal. Points that are not finite break the line. */
public final class PathData {
    private final StringBuilder data = new StringBuilder();
    private boolean drawing;

    /** Adds a point to the line, or begins a new piece after a break. */
    public PathData to(double x, double y) {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            drawing = false;
            return this;
        }
        data.append(drawing ? 'L' : 'M').append(Svg.number(x)).append(' ').append(Svg.number(y));
        drawing = true;
        return this;
    }

    /** Closes the piece that is being drawn. */
    public PathData close() {
        if (drawing) {
            data.append('Z');
            drawing = false;
        }
        return this;
    }

    /** Returns a line through points. */
    public static String line(double[] x, double[] y) {
        PathData path = new PathData();
        for (int i = 0; i < x.length; i++) {
            path.to(x[i], y[i]);
        }
        return path.text();
    }

    /** Returns the area between two lines over the same x; a gap in either leaves a gap in the area. */
    public static String band(double[] x, double[] low, double[] high) {
        PathData path = new PathData();
        int start = 0;
        while (start < x.length) {
            if (!(Double.isFinite(low[start]) && Double.isFinite(high[start]))) {
                start++;
                continue;
            }
            int end = start;
            while (end + 1 < x.length && Double.isFinite(low[end + 1]) && Double.isFinite(high[end + 1])) {
                end++;
            }
            for (int i = start; i <= end; i++) {
                path.to(x[i], high[i]);
            }
            for (int i = end; i >= start; i--) {
                path.to(x[i], low[i]);
            }
            path.close();
            start = end + 1;
        }
        return path.text();
    }

    /** Returns the attribute's text. */
    public String text() {
        return data.toString();
    }
}
