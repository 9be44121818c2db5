package setwright.core.circuit;

/** Invented lines for tests of those who drive on them. */
public final class Lines {
    private static final int EVERY = 4;

    private Lines() {}

    /** Returns a lap of 2.7 km with ten corners: fast left, chicane, hairpin, medium right, and the same again. */
    public static ReferenceLine road() {
        return line(Shape.road());
    }

    /** Returns a lap of 1.2 km: two straights, two hairpins, two kinks. */
    public static ReferenceLine loop() {
        return line(new Shape.Pieces()
                .straight(180.0)
                .bend(25.0, 90.0, 15.0)
                .straight(120.0)
                .bend(-25.0, 60.0, 15.0)
                .straight(60.0)
                .bend(180.0, 24.0, 18.0)
                .straight(40.0)
                .twice()
                .shape());
    }

    /** Returns a lap of 0.6 km: two straights, two hairpins, two kinks; for those who drive it very often. */
    public static ReferenceLine shortLoop() {
        return line(new Shape.Pieces()
                .straight(110.0)
                .bend(-25.0, 60.0, 15.0)
                .straight(40.0)
                .bend(205.0, 24.0, 18.0)
                .twice()
                .shape());
    }

    private static ReferenceLine line(Shape shape) {
        int n = shape.nodes() / EVERY;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] heading = new double[n];
        double[] curvature = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = shape.x(i * EVERY * Shape.STEP_M, 0.0);
            y[i] = shape.y(i * EVERY * Shape.STEP_M, 0.0);
            curvature[i] = shape.curvature(EVERY * i);
            heading[i] = shape.heading(i * EVERY * Shape.STEP_M);
        }
        return new ReferenceLine(shape.length() / n, x, y, heading, curvature);
    }
}
