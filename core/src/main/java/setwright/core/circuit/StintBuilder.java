package setwright.core.circuit;

import java.util.List;
import setwright.core.recording.Calibration;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Cuts a recording into laps and places every sample on the circuit. */
public final class StintBuilder {
    private StintBuilder() {}

    /**
     * Finds laps, reference line and corners in a recording.
     *
     * <p>The stint's recording carries two more calibrations where they apply: the quality of the reference line as a
     * sentence, and that y was turned over when the plane was left-handed.
     *
     * @throws NotEnoughLaps when there are fewer than two whole laps
     * @throws MissingQuantity when there is no speed, or neither position nor rate of turn
     */
    public static Stint build(Recording recording) {
        Survey survey = Survey.of(Motion.of(recording), 2);
        ReferenceLine line = survey.built().line();
        double[] speed = Survey.typicalSpeed(survey.motion(), survey.laps(), survey.placement(), line);
        List<Corner> corners =
                CornerFinder.find(line, speed, survey.built().quality().demandNoise());
        Circuit circuit = new Circuit("circuit of " + recording.name(), line, corners, anchor(survey.motion()));
        return stint(noted(survey.motion(), survey.built().quality()), circuit, survey.laps(), survey.placement());
    }

    /**
     * Lays a recording on a circuit that is already known, so that stations and corner numbers stay the same.
     *
     * <p>By position where recording and circuit share a plane, else by the shape of the lines.
     *
     * @throws NotEnoughLaps when there is no whole lap
     * @throws MissingQuantity as for {@link #build(Recording)}
     * @throws OtherCircuit when the recording does not fit the circuit
     */
    public static Stint build(Recording recording, Circuit known) {
        Motion motion = Motion.of(recording);
        return KnownPlane.stint(motion, known).orElseGet(() -> KnownShape.stint(motion, known));
    }

    static Stint stint(Recording recording, Circuit circuit, List<Lap> laps, Placement placement) {
        return new Stint(recording, circuit, laps, Channel.of(placement.station()), Channel.of(placement.offset()));
    }

    private static Circuit.Anchor anchor(Motion motion) {
        if (motion.track().isEmpty()) {
            return new Circuit.Unanchored();
        }
        return PlaneOrigin.of(motion.recording()).<Circuit.Anchor>map(o -> o).orElse(new Circuit.LocalPlane());
    }

    private static Recording noted(Motion motion, LineQuality quality) {
        return turned(motion).with(new Calibration("reference line", quality.closingGapM(), "m", quality.sentence()));
    }

    /** The recording with its y turned over, and that noted, where the plane was left-handed. */
    static Recording turned(Motion motion) {
        Recording recording = motion.recording();
        if (motion.track().isEmpty() || !motion.track().get().turnedOver()) {
            return recording;
        }
        double[] y = recording.channel(Quantity.POSITION_Y).toArray();
        for (int i = 0; i < y.length; i++) {
            y[i] = -y[i];
        }
        return recording
                .with(Quantity.POSITION_Y, Channel.of(y))
                .with(new Calibration(
                        "position y", -1.0, "1", "the course turns the other way than the car, so y was turned over"));
    }

    /** The recording with its positions moved into the circuit's plane. */
    static Recording moved(Recording recording, RigidMove move) {
        double[] x = recording.channel(Quantity.POSITION_X).toArray();
        double[] y = recording.channel(Quantity.POSITION_Y).toArray();
        for (int i = 0; i < x.length; i++) {
            double before = x[i];
            x[i] = move.x(before, y[i]);
            y[i] = move.y(before, y[i]);
        }
        return recording.with(Quantity.POSITION_X, Channel.of(x)).with(Quantity.POSITION_Y, Channel.of(y));
    }
}
