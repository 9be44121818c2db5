package setwright.intake.map;

import setwright.core.numerics.Lag;

/**
 * How one signal follows another: correlation at the best lag, and the ratio of their sizes there.
 *
 * @param correlation  -1..1 at the lag
 * @param slope        second over first, with sign: ratio of the standard deviations, so that noise in either does not bias
 *                     it one way (reduced major axis; common practice where both signals are noisy)
 * @param lagS         of the second behind the first, s
 */
record Relation(double correlation, double slope, double lagS) {
    /** Longest lag that is looked for; a channel two seconds late is of no use. */
    static final double LONGEST_LAG_S = 2.0;

    static Relation between(double[] first, double[] second, double stepS) {
        Lag lag = Lag.between(first, second, stepS, LONGEST_LAG_S);
        int shift = (int) Math.round(lag.seconds() / stepS);
        double sumA = 0.0;
        double sumB = 0.0;
        double aa = 0.0;
        double bb = 0.0;
        int count = 0;
        for (int i = Math.max(0, -shift); i < Math.min(first.length, second.length - shift); i++) {
            double a = first[i];
            double b = second[i + shift];
            if (Double.isFinite(a) && Double.isFinite(b)) {
                sumA += a;
                sumB += b;
                aa += a * a;
                bb += b * b;
                count++;
            }
        }
        double varianceA = aa / count - (sumA / count) * (sumA / count);
        double varianceB = bb / count - (sumB / count) * (sumB / count);
        boolean measurable = count > 0 && varianceA > 0.0 && varianceB > 0.0;
        double slope = measurable ? Math.copySign(Math.sqrt(varianceB / varianceA), lag.correlation()) : Double.NaN;
        return new Relation(measurable ? lag.correlation() : 0.0, slope, lag.seconds());
    }

    /** Strength of the relation on a scale where equal steps count alike: Fisher's z, capped where noise ends. */
    double strength() {
        double r = Math.min(0.9995, Math.abs(correlation));
        return 0.5 * Math.log((1.0 + r) / (1.0 - r));
    }
}
