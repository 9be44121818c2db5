package setwright.intake.calibrate;

import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;

/** Scale of the speed against the positions: a wheel's assumed radius is rarely right to a percent. */
final class SpeedScale {
    /**
     * Smaller differences may be the position's: whoever turned a plane into degrees on a sphere is off by up to 0.6 % from the
     * ellipsoid (flattening 1/298.257 of WGS 84; meridian and normal radii of curvature differ by twice that).
     */
    private static final double NEGLIGIBLE = 0.01;
    /** Beyond this the map is wrong, not the scale. */
    private static final double LARGEST = 0.2;

    /** Samples that must agree before positions are thrown away. */
    private static final int FEWEST = 500;

    private SpeedScale() {}

    static void apply(Bench bench) {
        Optional<PathMotion> path = bench.path();
        if (path.isEmpty() || !bench.has(Quantity.SPEED)) {
            return;
        }
        double[] v = bench.slow(Quantity.SPEED);
        double[] along = path.get().speedMps();
        double[] ratio = new double[v.length];
        int count = 0;
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = v[i] > 2.0 * Bench.SLOWEST_MPS ? along[i] / v[i] : Double.NaN;
            count += Double.isNaN(ratio[i]) ? 0 : 1;
        }
        double scale = Robust.median(ratio);
        // Standard error of a median is 1.2533 times that of a mean.
        double error = 1.2533 * Robust.scaledMad(ratio) / Math.sqrt(count / bench.samplesPerIndependent());
        double off = Math.abs(scale - 1.0);
        if (off >= LARGEST && count >= FEWEST) {
            List.of(Quantity.POSITION_X, Quantity.POSITION_Y, Quantity.LATITUDE, Quantity.LONGITUDE)
                    .forEach(bench::drop);
            bench.remark(Calibrator.text(
                    "The positions move %.3g times as fast as the speed says: they contradict it and are left out. Check the"
                            + " units of both in the channel map.",
                    scale));
            return;
        }
        if (!(off > NEGLIGIBLE && off > Calibrator.CLEAR * error && off < LARGEST)) {
            return;
        }
        double[] corrected = bench.get(Quantity.SPEED).clone();
        for (int i = 0; i < corrected.length; i++) {
            corrected[i] *= scale;
        }
        bench.put(Quantity.SPEED, corrected);
        bench.note(new Calibration(
                "speed scale",
                scale,
                "1",
                Calibrator.text(
                        "speed along the positions is %.4f +- %.4f times the recorded speed over %d samples",
                        scale, error, count)));
    }
}
