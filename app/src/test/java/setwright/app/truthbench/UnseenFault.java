package setwright.app.truthbench;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Parameter;
import setwright.core.handling.Phase;
import setwright.core.judgement.SpeedRange;
import setwright.core.simulation.truth.TrueTrigger;

/** Something wrong with a car that its sheet does not hold: no item stands out, only the laps can tell. */
enum UnseenFault {
    FRONT_GRIP("front tyres grip too little", Parameter.GRIP_SPLIT, -1, SpeedRange.ALL, Phase.MID, TrueTrigger.STEADY),
    REAR_GRIP("rear tyres grip too little", Parameter.GRIP_SPLIT, 1, SpeedRange.ALL, Phase.MID, TrueTrigger.STEADY),
    FRONT_ROLL(
            "front carries too much of the roll",
            Parameter.ROLL_SPLIT,
            1,
            SpeedRange.ALL,
            Phase.MID,
            TrueTrigger.STEADY),
    REAR_ROLL(
            "rear carries too much of the roll",
            Parameter.ROLL_SPLIT,
            -1,
            SpeedRange.ALL,
            Phase.MID,
            TrueTrigger.STEADY),
    FRONT_AIR("downforce too far forward", Parameter.LIFT_BALANCE, 1, SpeedRange.HIGH, Phase.MID, TrueTrigger.SPEED),
    REAR_AIR("downforce too far rearward", Parameter.LIFT_BALANCE, -1, SpeedRange.HIGH, Phase.MID, TrueTrigger.SPEED),
    REAR_BRAKES(
            "rear brakes take more than the sheet says",
            Parameter.BRAKE_SHARE,
            -1,
            SpeedRange.ALL,
            Phase.ENTRY,
            TrueTrigger.TRAIL_BRAKE);

    /** Beyond it no car of its kind is found. */
    private static final double MOST_SPREADS = 4.0;

    private static final int HALVINGS = 30;

    private final String words;
    private final Parameter parameter;
    private final int way;
    private final SpeedRange speed;
    private final Phase phase;
    private final TrueTrigger trigger;

    UnseenFault(String words, Parameter parameter, int way, SpeedRange speed, Phase phase, TrueTrigger trigger) {
        this.words = words;
        this.parameter = parameter;
        this.way = way;
        this.speed = speed;
        this.phase = phase;
        this.trigger = trigger;
    }

    /** Draws one that the car can have. */
    static UnseenFault draw(CarSheet sheet, Random random) {
        List<UnseenFault> possible = Arrays.stream(values())
                .filter(fault -> fault.parameter != Parameter.LIFT_BALANCE || sheet.downforce() != Downforce.NONE)
                .toList();
        return possible.get(random.nextInt(possible.size()));
    }

    String words() {
        return words;
    }

    TrueTrigger trigger() {
        return trigger;
    }

    /**
     * Returns the true values with the fault: moved until the steady state says that the axles' slip differs by a drawn amount.
     *
     * @param balanced  true values without it
     */
    double[] in(CarSheet sheet, double[] balanced, Random random) {
        double target = DrawnDriver.between(random, FaultDraw.LEAST_RAD, FaultDraw.MOST_RAD);
        CarAssembler assembler = new CarAssembler(sheet);
        SteadyShift shift = new SteadyShift(assembler.build(balanced), speed, phase);
        double[] values = balanced.clone();
        double low = 0.0;
        double high = MOST_SPREADS * CarPrior.of(sheet).spread(parameter);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            values[parameter.index()] = balanced[parameter.index()] + way * middle;
            // a car that cannot do it any more has too much of the fault
            boolean much = shift.to(assembler.build(values))
                    .map(rad -> Math.abs(rad) > target)
                    .orElse(true);
            if (much) {
                high = middle;
            } else {
                low = middle;
            }
        }
        values[parameter.index()] = balanced[parameter.index()] + way * low;
        return values;
    }
}
