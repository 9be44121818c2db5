package setwright.core.chassis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.judgement.Diagnosis;

/**
 * What sensors other than those of the motion tell, each where its channels are there.
 *
 * @param dampers         how fast they move
 * @param rideHeights     of both axles against the speed
 * @param brakePressures  of both circuits
 * @param warmUp          of the tyres
 * @param tread           temperatures across each tyre
 * @param tyrePressures   of each tyre
 * @param steeringTorque  against the force of the front axle
 * @param day             temperatures of track and air
 * @param missing         what could not be looked at
 */
public record ChassisEvidence(
        Optional<DamperMotion> dampers,
        Optional<RideHeights> rideHeights,
        Optional<BrakePressures> brakePressures,
        Optional<WarmUp> warmUp,
        Optional<Tread> tread,
        Optional<TyrePressures> tyrePressures,
        Optional<SteeringTorque> steeringTorque,
        Optional<DayTemperatures> day,
        List<Missing> missing) {
    public ChassisEvidence {
        missing = List.copyOf(missing);
    }

    /**
     * Not looked at.
     *
     * @param subject   what
     * @param recorded  whether the channels for it were recorded
     * @param why       in a few words
     */
    public record Missing(Subject subject, boolean recorded, String why) {}

    /**
     * Looks at all of it; nothing is found where no lap can be judged.
     *
     * @param diagnosis  of the laps, with its axles
     * @param sheet      of the car as driven
     */
    public static ChassisEvidence of(Diagnosis diagnosis, CarSheet sheet) {
        Builder into = new Builder();
        if (!diagnosis.stint().goodLaps().isEmpty()) {
            Motion motion = Motion.of(diagnosis.stint(), diagnosis.trace());
            DamperReader.read(motion, sheet, into);
            RideHeightReader.read(motion, sheet, into);
            BrakePressureReader.read(
                    motion,
                    diagnosis.passes().stream()
                            .map(pass -> new BrakePressureReader.TurnIn(pass.lap(), pass.corner(), pass.turnInTimeS()))
                            .toList(),
                    sheet,
                    into);
            WarmUpReader.read(motion, into);
            TreadReader.read(motion, into);
            TyrePressureReader.read(motion, sheet, into);
            SteeringTorqueReader.read(motion, diagnosis.axles(), into);
            DayReader.read(motion, into);
        }
        return into.done();
    }

    /** Tells whether anything was found. */
    public boolean isEmpty() {
        return dampers.isEmpty()
                && rideHeights.isEmpty()
                && brakePressures.isEmpty()
                && warmUp.isEmpty()
                && tread.isEmpty()
                && tyrePressures.isEmpty()
                && steeringTorque.isEmpty()
                && day.isEmpty();
    }

    /** Collects what the readers find. */
    static final class Builder {
        Optional<DamperMotion> dampers = Optional.empty();
        Optional<RideHeights> rideHeights = Optional.empty();
        Optional<BrakePressures> brakePressures = Optional.empty();
        Optional<WarmUp> warmUp = Optional.empty();
        Optional<Tread> tread = Optional.empty();
        Optional<TyrePressures> tyrePressures = Optional.empty();
        Optional<SteeringTorque> steeringTorque = Optional.empty();
        Optional<DayTemperatures> day = Optional.empty();
        private final List<Missing> missing = new ArrayList<>();

        void missing(Subject subject, boolean recorded, String why) {
            missing.add(new Missing(subject, recorded, why));
        }

        ChassisEvidence done() {
            return new ChassisEvidence(
                    dampers, rideHeights, brakePressures, warmUp, tread, tyrePressures, steeringTorque, day, missing);
        }
    }
}
