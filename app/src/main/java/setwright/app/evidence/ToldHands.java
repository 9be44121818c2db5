package setwright.app.evidence;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandsEvent;
import setwright.core.judgement.Diagnosis;

/** Leaves of the gestures of the hands those that people are told: without its axle near its peak a hold or winding on proves nothing. */
public final class ToldHands {
    private record Place(int lap, int corner, HandsEvent event) {}

    private ToldHands() {}

    /** Returns the passes of a diagnosis with these gestures only. */
    public static List<CornerPass> of(Diagnosis diagnosis) {
        Set<Place> borneOut = diagnosis.axles().stream()
                .flatMap(axles -> axles.borneOut().stream())
                .map(reading -> new Place(reading.lap(), reading.corner(), reading.event()))
                .collect(Collectors.toSet());
        return diagnosis.passes().stream()
                .map(pass -> pass.with(pass.hands().stream()
                        .filter(event -> event.kind().seenByItself()
                                || borneOut.contains(new Place(pass.lap(), pass.corner(), event)))
                        .toList()))
                .toList();
    }
}
