package setwright.app.json;

import static setwright.app.json.Numbers.known;

import java.util.List;
import java.util.Optional;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.LostTime;
import setwright.core.judgement.driving.DrivingReview;
import setwright.core.judgement.driving.MovingEvent;

/** The driver's part of the JSON. */
final class DrivingJson {
    private DrivingJson() {}

    static DiagnosisJson.Fault fault(DrivingFault fault) {
        return new DiagnosisJson.Fault(
                fault.kind(),
                fault.corners(),
                known(fault.lapShare()),
                known(fault.size()),
                fault.unit(),
                fault.habit(),
                fault.proofs().stream()
                        .map(proof -> new DiagnosisJson.Proof(
                                proof.corner(), proof.laps(), proof.worstLap(), known(proof.worst())))
                        .toList(),
                fault.cost().map(DrivingJson::cost));
    }

    static DiagnosisJson.Cost cost(LostTime cost) {
        return new DiagnosisJson.Cost(known(cost.seconds()), known(cost.low()), known(cost.high()));
    }

    static Optional<DiagnosisJson.Moving> moving(Optional<MovingEvent> event) {
        return event.map(moves -> new DiagnosisJson.Moving(
                moves.measure().words(),
                known(moves.scatter()),
                known(moves.elsewhere()),
                moves.measure().unit(),
                moves.clear(),
                moves.source().words(),
                moves.cost().map(DrivingJson::cost),
                moves.better(),
                List.of(moves.lapLow(), moves.lapHigh())));
    }

    static DiagnosisJson.Place place(DrivingReview.Place place) {
        return new DiagnosisJson.Place(
                place.corner(),
                cost(place.cost()),
                place.faults().stream().map(DrivingFault::kind).toList());
    }
}
