package setwright.core.judgement;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import setwright.core.car.CarSheet;
import setwright.core.car.Sheets;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTracer;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** An invented stint in good order, on which feet and engine are written anew for a moment of each pass. */
final class ScriptedFeet {
    /** The invented drive hits the brake within one sample; a foot needs a third of a second for all of the pedal. */
    private static final double APPLIES_PER_S = 3.0;
    /** Rear-driven, with the wheelbase and steering ratio of the invented drive, and a rev limit of 800 rad/s. */
    private static final CarSheet CAR = Sheets.with(List.of());
    /** From turn-in until the corner is as tight as it gets, m. */
    private static final double TIGHT_M = 40.0;

    private Stint stint = new Drive(3L).stint();

    /** Everywhere else the engine turns at 600 rad/s. */
    ScriptedFeet() {
        double[] engine = new double[stint.recording().sampleCount()];
        java.util.Arrays.fill(engine, 600.0);
        become(stint.recording().with(Quantity.ENGINE_SPEED, Channel.of(engine)));
    }

    /** Applies the brake no faster than a foot does. */
    ScriptedFeet applyingSlowly() {
        double[] brake = stint.recording().channel(Quantity.BRAKE).toArray();
        for (int i = 1; i < brake.length; i++) {
            brake[i] = Math.min(
                    brake[i], brake[i - 1] + APPLIES_PER_S * stint.recording().stepS());
        }
        become(stint.recording().with(Quantity.BRAKE, Channel.of(brake)));
        return this;
    }

    /**
     * Writes a signal in each pass of some corners.
     *
     * @param fromS  s after the corner has become as tight as it gets; negative before
     * @param toS    the same
     * @param value  of the same time
     */
    ScriptedFeet writing(Quantity quantity, IntPredicate corners, double fromS, double toS, DoubleUnaryOperator value) {
        double[] samples = stint.recording().channel(quantity).toArray();
        double step = stint.recording().stepS();
        for (Lap lap : stint.goodLaps()) {
            for (Corner corner : stint.circuit().corners()) {
                if (!corners.test(corner.number())) {
                    continue;
                }
                int tight = lap.from();
                while (stint.station().get(tight) < corner.turnInM() + TIGHT_M) {
                    tight++;
                }
                for (int i = tight + (int) Math.round(fromS / step); i < tight + Math.round(toS / step); i++) {
                    samples[i] = value.applyAsDouble((i - tight) * step);
                }
            }
        }
        become(stint.recording().with(quantity, Channel.of(samples)));
        return this;
    }

    /** Returns the driving fault of that name. */
    Optional<DrivingFault> fault(String kind) {
        return DrivingFaultFinder.find(stint, CornerPasses.of(stint, HandlingTracer.trace(stint, CAR), CAR), CAR)
                .stream()
                .filter(fault -> fault.kind().equals(kind))
                .findFirst();
    }

    private void become(Recording recording) {
        stint = new Stint(recording, stint.circuit(), stint.laps(), stint.station(), stint.offset());
    }
}
