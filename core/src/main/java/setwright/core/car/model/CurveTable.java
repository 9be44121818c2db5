package setwright.core.car.model;

import setwright.core.car.tyre.CurveShape;

/*
 * Design note. A replay reads the tyre curve and its inverse some hundred million times; sine, arc tangent and arc sine would be
 * most of its time. Linear interpolation in a table of this fineness is wrong by less than 3.1e-6 of the peak, a tenth of
 * what the last digit of any parameter is worth. A test compares it with the curve itself.
 */

/** The curve of force over peak against slip over slip at the peak, in a table. */
final class CurveTable {
    private static final int PER_UNIT = 512;
    private static final double FARTHEST = 4.0;
    private static final int INVERSE = 2048;

    private final double[] share;
    private final double[] slope;
    private final double[] slip;
    private final double initialSlope;

    CurveTable(CurveShape shape) {
        int count = (int) (FARTHEST * PER_UNIT) + 2;
        share = new double[count];
        slope = new double[count];
        for (int i = 0; i < count; i++) {
            share[i] = shape.share((double) i / PER_UNIT);
            slope[i] = shape.slope((double) i / PER_UNIT);
        }
        slip = new double[INVERSE + 2];
        for (int i = 0; i < slip.length; i++) {
            slip[i] = shape.slipShare(Math.min((double) i / INVERSE, 1.0));
        }
        initialSlope = shape.initialSlope();
    }

    /** Returns force over peak; odd in the slip. */
    double share(double x) {
        double size = Math.abs(x);
        if (size >= FARTHEST) {
            return Math.copySign(share[share.length - 1], x);
        }
        double place = size * PER_UNIT;
        int left = (int) place;
        double value = share[left] + (place - left) * (share[left + 1] - share[left]);
        return x < 0.0 ? -value : value;
    }

    /** Returns the derivative of {@link #share}; even in the slip. */
    double slope(double x) {
        double size = Math.abs(x);
        if (size >= FARTHEST) {
            return slope[slope.length - 1];
        }
        double place = size * PER_UNIT;
        int left = (int) place;
        return slope[left] + (place - left) * (slope[left + 1] - slope[left]);
    }

    /** Returns the slip that gives a force over peak, 0..1, on the rising side. */
    double inverse(double force) {
        double place = force * INVERSE;
        int left = (int) place;
        return slip[left] + (place - left) * (slip[left + 1] - slip[left]);
    }

    double initialSlope() {
        return initialSlope;
    }
}
