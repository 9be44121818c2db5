package setwright.core.handling;

/**
 * One axle letting go for a moment: a dip (rear) or a hump (front) of the balance angle that stands out from the
 * movement around it and from what a balanced car would have shown.
 *
 * @param axle       which axle
 * @param phase      in which phase it began
 * @param stationM   where it was largest, m along the reference line, unwrapped
 * @param timeS      when it was largest, s since the start of the recording
 * @param durationS  from the shoulder before to the shoulder behind, s
 * @param sizeRad    height of the dip or hump over the lower shoulder, rad, &gt; 0
 * @param inputs     what the driver did in the moment before
 */
public record Slide(
        Axle axle, Phase phase, double stationM, double timeS, double durationS, double sizeRad, Inputs inputs) {

    /** Least size of a slide, rad; why it is so is told where slides are found. */
    public static final double LEAST_RAD = Math.toRadians(0.42);

    /** The axle that slips. */
    public enum Axle {
        FRONT("front"),
        REAR("rear");

        private final String words;

        Axle(String words) {
            this.words = words;
        }

        /** Returns the word a person reads. */
        public String words() {
            return words;
        }
    }

    /**
     * The driver's inputs in the half second before the slide began to grow.
     *
     * @param brake         at the onset, 0..1
     * @param brakeRise     largest rise within the window, 0..1
     * @param brakeFall     largest fall, 0..1
     * @param throttle      at the onset, 0..1
     * @param throttleRise  largest rise, 0..1
     * @param throttleFall  largest fall, 0..1
     * @param steerRate     mean rate of the road wheels into the turn, rad/s
     * @param sinceTurnInS  time since turn-in, s; negative before it
     */
    public record Inputs(
            double brake,
            double brakeRise,
            double brakeFall,
            double throttle,
            double throttleRise,
            double throttleFall,
            double steerRate,
            double sinceTurnInS) {}
}
