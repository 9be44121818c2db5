package setwright.core.handling;

/** The recording holds no steering angle, without which balance cannot be told. */
public final class NoSteering extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoSteering(String recording) {
        super(recording
                + ": no steering angle among the channels; balance needs the angle of the steering wheel or of the"
                + " road wheels. Name its column in a channel map.");
    }
}
