package setwright.core.proposal;

import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarModel;
import setwright.core.circuit.ReferenceLine;
import setwright.core.limit.Envelope;
import setwright.core.limit.LapSimulator;

/*
 * Design note. What the driver makes of a change (DriversAnswer) is learnt from drivers and counts a cure of the balance for much. Grip
 * that is taken from the stronger axle cures as well as grip that is given to the weaker one, but only the latter makes the car
 * quicker; the replay, which keeps the line and the accelerations of laps below the limit, sees less of that than a lap at the limit does.
 */

/** The quickest lap of the car as believed, whoever drives: what tyres, brakes and engine allow in one setup and in another. */
final class LimitLap {
    private final CarSheet sheet;
    private final double[] parameters;
    private final CarAssembler assembler;
    private final ReferenceLine line;
    private final Envelope present;
    private final double presentS;

    private LimitLap(CarSheet sheet, double[] parameters, ReferenceLine line) {
        this.sheet = sheet;
        this.parameters = parameters;
        this.assembler = new CarAssembler(sheet);
        this.line = line;
        this.present = Envelope.of(assembler.build(parameters));
        this.presentS = lapS(present);
    }

    private double lapS(Envelope envelope) {
        return LapSimulator.lap(envelope, line).timeS();
    }

    /** Returns that of a car; empty when no such lap can be reckoned. */
    static Optional<LimitLap> of(CarSheet sheet, CarBelief car, ReferenceLine line) {
        try {
            return Optional.of(new LimitLap(sheet, car.middle(), line));
        } catch (IllegalArgumentException noLap) {
            return Optional.empty();
        }
    }

    /** Returns candidates, those refused by which the car would be slower at its limit; only what is worth making is looked at. */
    static List<Candidate> judge(List<Candidate> candidates, CarSheet sheet, CarBelief car, ReferenceLine line) {
        if (candidates.stream().noneMatch(Candidate::worthMaking)) {
            return candidates;
        }
        return of(sheet, car, line)
                .map(lap -> candidates.parallelStream().map(lap::judged).toList())
                .orElse(candidates);
    }

    private Candidate judged(Candidate candidate) {
        return Optional.of(candidate)
                .filter(Candidate::worthMaking)
                .flatMap(open -> slowerS(open.turn().change()))
                .filter(slower -> slower >= Slightness.SHOWN_S)
                .map(slower -> candidate.refusedToo(Refusal.of(
                        Refusal.Kind.SLOWER_AT_LIMIT,
                        Refusal.text(
                                "at its limit the car would lose %.2f s a lap: it costs grip or top speed", slower),
                        new Refusal.Figure("slower_at_limit_s", slower))))
                .orElse(candidate);
    }

    /** Returns by how much a change makes it slower, s; empty when the changed car cannot go round. */
    Optional<Double> slowerS(SetupChange change) {
        try {
            CarModel changed = assembler.build(sheet.with(List.of(change)), parameters);
            return Optional.of(lapS(Envelope.of(changed, present)) - presentS);
        } catch (IllegalArgumentException noLap) {
            return Optional.empty();
        }
    }
}
