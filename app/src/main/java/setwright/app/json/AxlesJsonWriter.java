package setwright.app.json;

import static setwright.app.json.Numbers.degrees;
import static setwright.app.json.Numbers.known;

import java.util.ArrayList;
import java.util.List;
import setwright.core.handling.HandsEvent;
import setwright.core.slip.AxleEvidence;
import setwright.core.slip.GripCurve;
import setwright.core.slip.HandsReading;

/** Puts what is known of the axles into the form of the JSON. */
final class AxlesJsonWriter {
    private AxlesJsonWriter() {}

    static AxlesJson of(AxleEvidence axles) {
        return new AxlesJson(
                axle(axles.front()),
                axle(axles.rear()),
                new AxlesJson.Wheels(
                        axles.wheels().locksSeen(),
                        axles.wheels().spinSeen(),
                        axles.wheels().insideSeen(),
                        axles.wheels().events().stream()
                                .map(event -> new AxlesJson.Event(
                                        event.kind().words(),
                                        event.lap(),
                                        event.corner(),
                                        known(event.stationM()),
                                        known(event.durationS()),
                                        known(event.slipRatio())))
                                .toList()),
                hands(axles.borneOut()),
                new AxlesJson.Sources(axles.trace().yawMeasured(), axles.trace().lateralMeasured()));
    }

    private static AxlesJson.Axle axle(GripCurve curve) {
        return new AxlesJson.Axle(
                known(curve.grip()),
                known(curve.gripLow()),
                known(curve.gripHigh()),
                known(curve.loadDoubt()),
                degrees(curve.peakSlipRad()),
                degrees(curve.peakSlipLowRad()),
                degrees(curve.peakSlipHighRad()),
                known(curve.mostSlipShare()),
                known(curve.limitShare()),
                curve.points().stream()
                        .map(point -> new AxlesJson.Point(
                                degrees(point.slipRad()),
                                known(point.force()),
                                known(point.low()),
                                known(point.high()),
                                point.laps()))
                        .toList());
    }

    private static List<AxlesJson.Hands> hands(List<HandsReading> readings) {
        List<AxlesJson.Hands> out = new ArrayList<>();
        for (HandsEvent.Kind kind : HandsEvent.Kind.values()) {
            for (HandsReading.Cause cause : HandsReading.Cause.values()) {
                List<HandsReading> own = readings.stream()
                        .filter(reading -> reading.event().kind() == kind && reading.cause() == cause)
                        .toList();
                if (!own.isEmpty()) {
                    List<Integer> corners = own.stream()
                            .map(HandsReading::corner)
                            .distinct()
                            .sorted()
                            .toList();
                    out.add(new AxlesJson.Hands(kind.words(), cause.words(), corners, own.size()));
                }
            }
        }
        return out;
    }
}
