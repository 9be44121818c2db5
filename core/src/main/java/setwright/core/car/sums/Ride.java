package setwright.core.car.sums;

/**
 * One corner of the car moving up and down on its spring and tyre. Motion ratio: spring travel over wheel travel.
 *
 * <p><b>Source:</b> virtual work and the single mass oscillator; W. F. Milliken, D. L. Milliken, <i>Race Car Vehicle
 * Dynamics</i>, SAE, 1995, ch. 16 (formulas from memory).
 */
public final class Ride {
    private Ride() {}

    /** Returns the spring's rate at the wheel, N/m. */
    public static double wheelRate(double springRate, double motionRatio) {
        return springRate * motionRatio * motionRatio;
    }

    /** Returns the spring rate that gives a wheel rate, N/m. */
    public static double springRate(double wheelRate, double motionRatio) {
        return wheelRate / (motionRatio * motionRatio);
    }

    /** Returns the rate of wheel spring and tyre in series, N/m, both &gt; 0. */
    public static double rideRate(double wheelRate, double tyreRate) {
        return wheelRate * tyreRate / (wheelRate + tyreRate);
    }

    /** Returns the wheel rate that gives a ride rate on a tyre, N/m; the ride rate is less than the tyre's. */
    public static double wheelRateBelow(double rideRate, double tyreRate) {
        return rideRate * tyreRate / (tyreRate - rideRate);
    }

    /** Returns the undamped natural frequency, Hz, of a mass (kg) on a rate (N/m). */
    public static double frequencyHz(double rate, double massKg) {
        return Math.sqrt(rate / massKg) / (2.0 * Math.PI);
    }

    /** Returns the rate, N/m, on which a mass (kg) has a natural frequency (Hz). */
    public static double rateFor(double frequencyHz, double massKg) {
        double angular = 2.0 * Math.PI * frequencyHz;
        return massKg * angular * angular;
    }

    /** Returns how far the mass's weight presses the rate down, m. */
    public static double staticDeflectionM(double rate, double massKg) {
        return massKg * Gravity.STANDARD_MPS2 / rate;
    }

    /** Returns the frequency, Hz, at which the wheel with its unsprung mass (kg) hops between spring and tyre (N/m). */
    public static double hopFrequencyHz(double wheelRate, double tyreRate, double unsprungKg) {
        return frequencyHz(wheelRate + tyreRate, unsprungKg);
    }
}
