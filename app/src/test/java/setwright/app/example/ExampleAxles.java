package setwright.app.example;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import setwright.core.car.TyreCurve;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Phase;
import setwright.core.recording.Channel;
import setwright.core.slip.AxleEvidence;
import setwright.core.slip.AxleSide;
import setwright.core.slip.AxleTrace;
import setwright.core.slip.GripCurve;
import setwright.core.slip.HandsReading;
import setwright.core.slip.WheelEvent;
import setwright.core.slip.WheelEvidence;

/** Axles of which the rear does most of the work. */
public final class ExampleAxles {
    private ExampleAxles() {}

    /** Returns them for a recording of so many samples. */
    public static AxleEvidence axles(int samples) {
        double[] zero = new double[samples];
        Arrays.fill(zero, 0.01);
        Channel channel = Channel.of(zero);
        return new AxleEvidence(
                new AxleTrace(channel, channel, channel, channel, channel, channel, true, true),
                curve(AxleSide.FRONT, 1.48, 7.1, 0.04, 9),
                curve(AxleSide.REAR, 1.42, 6.6, 0.21, 12),
                new WheelEvidence(
                        true,
                        true,
                        true,
                        List.of(
                                new WheelEvent(
                                        WheelEvent.Kind.FRONT_LOCK, 3, OptionalInt.of(4), 812.0, 301.2, 0.21, -0.48),
                                new WheelEvent(
                                        WheelEvent.Kind.WHEELSPIN, 5, OptionalInt.empty(), 40.0, 480.0, 0.3, 0.22))),
                List.of(
                        hands(HandsEvent.Kind.CORRECTION, HandsReading.Cause.REAR),
                        hands(HandsEvent.Kind.CORRECTION, HandsReading.Cause.REAR),
                        hands(HandsEvent.Kind.CORRECTION, HandsReading.Cause.DRIVER),
                        hands(HandsEvent.Kind.WIND_ON, HandsReading.Cause.DRIVER)));
    }

    private static HandsReading hands(HandsEvent.Kind kind, HandsReading.Cause cause) {
        return new HandsReading(2, 4, new HandsEvent(kind, Phase.ENTRY, 830.0, 200.0, 0.3, 0.2), cause, 0.4, 0.7);
    }

    private static GripCurve curve(AxleSide side, double grip, double peakDeg, double limit, int bins) {
        List<GripCurve.Point> points = new ArrayList<>();
        for (int b = 0; b < bins; b++) {
            double slip = Math.toRadians(0.25 + 0.5 * b);
            double force = grip * TyreCurve.forceShare(slip / Math.toRadians(peakDeg));
            points.add(new GripCurve.Point(slip, force, force - 0.02, force + 0.02, 12));
        }
        return new GripCurve(
                side,
                grip,
                grip - 0.03,
                grip + 0.03,
                0.04,
                Math.toRadians(peakDeg),
                Math.toRadians(0.82 * peakDeg),
                Math.toRadians(1.22 * peakDeg),
                0.8,
                limit,
                points);
    }
}
