package setwright.core.car.sums;

/** Refuses what no car can have. The negated tests refuse NaN as well. */
final class Require {
    private Require() {}

    static double positive(String what, double value, String unit) {
        if (!(value > 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be finite and above 0 " + unit + ", got " + value);
        }
        return value;
    }

    static double notNegative(String what, double value, String unit) {
        if (!(value >= 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be finite and at least 0 " + unit + ", got " + value);
        }
        return value;
    }

    static double share(String what, double value) {
        if (!(value > 0.0 && value < 1.0)) {
            throw new IllegalArgumentException(what + " must be a share between 0 and 1, got " + value);
        }
        return value;
    }

    static double finite(String what, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a number in " + unit + ", got " + value);
        }
        return value;
    }
}
