package setwright.core.limit;

/**
 * Where the engine's work of a lap went, J.
 *
 * @param driveJ    work of the engine at the wheels
 * @param dragJ     taken by the air
 * @param rollingJ  by rolling
 * @param scrubJ    by slip angles
 * @param brakeJ    by the brakes
 * @param overrunJ  by the engine with the throttle closed
 */
public record EnergyBalance(
        double driveJ, double dragJ, double rollingJ, double scrubJ, double brakeJ, double overrunJ) {

    /** Returns what is left over the lap, J: zero but for the step of the calculation, as the speed ends as it began. */
    public double restJ() {
        return driveJ - dragJ - rollingJ - scrubJ - brakeJ - overrunJ;
    }
}
