package setwright.core.simulation.fault;

import static setwright.core.handling.Phase.BRAKING;
import static setwright.core.handling.Phase.ENTRY;
import static setwright.core.handling.Phase.EXIT;
import static setwright.core.handling.Phase.MID;
import static setwright.core.judgement.BalanceSign.OVERSTEER;
import static setwright.core.judgement.BalanceSign.UNDERSTEER;
import static setwright.core.judgement.SpeedRange.ALL;
import static setwright.core.judgement.SpeedRange.HIGH;
import static setwright.core.judgement.SpeedRange.LOW;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;
import setwright.core.simulation.fault.Fault.Move;
import setwright.core.simulation.fault.Fault.Needs;

/**
 * Every fault of a setup that can be put into a car. Directions are the trade's rules of thumb (common practice); those that a
 * steady state can show are held against the model by a test.
 */
public final class FaultCatalogue {
    private static final List<Fault> FAULTS = new ArrayList<>();
    private static final Needs REAR_DRIVE = Needs.drive(DrivenAxle.REAR);
    private static final Needs FRONT_DRIVE = Needs.drive(DrivenAxle.FRONT);

    static {
        rollStiffness();
        dampers();
        air();
        brakesAndDrive();
        wheels();
    }

    private FaultCatalogue() {}

    private static void rollStiffness() {
        any("front bar too stiff", MID, ALL, UNDERSTEER, Trigger.NONE, up("front_bar"));
        any("front bar too soft", MID, ALL, OVERSTEER, Trigger.NONE, down("front_bar"));
        any("rear bar too stiff", MID, ALL, OVERSTEER, Trigger.NONE, up("rear_bar"));
        any("rear bar too soft", MID, ALL, UNDERSTEER, Trigger.NONE, down("rear_bar"));
        any("front springs too stiff", MID, LOW, UNDERSTEER, Trigger.NONE, up("front_spring"));
        any("front springs too soft", MID, LOW, OVERSTEER, Trigger.NONE, down("front_spring"));
        any("rear springs too stiff", EXIT, LOW, OVERSTEER, Trigger.THROTTLE_PICK_UP, up("rear_spring"));
        any("rear springs too soft", EXIT, LOW, UNDERSTEER, Trigger.THROTTLE_PICK_UP, down("rear_spring"));
        any("front end too stiff in roll", MID, ALL, UNDERSTEER, Trigger.NONE, up("front_bar"), up("front_spring"));
        any("rear end too stiff in roll", EXIT, ALL, OVERSTEER, Trigger.NONE, up("rear_bar"), up("rear_spring"));
    }

    private static void dampers() {
        any("front bump too stiff", ENTRY, LOW, UNDERSTEER, Trigger.TURN_IN, up("front_bump"));
        any("front rebound too stiff", EXIT, LOW, UNDERSTEER, Trigger.THROTTLE_PICK_UP, up("front_rebound"));
        any("rear rebound too stiff", ENTRY, LOW, OVERSTEER, Trigger.BRAKE_RELEASE, up("rear_rebound"));
        any("rear bump too stiff", EXIT, LOW, OVERSTEER, Trigger.THROTTLE_PICK_UP, up("rear_bump"));
        any("rear dampers too stiff", ENTRY, LOW, OVERSTEER, Trigger.TURN_IN, up("rear_bump"), up("rear_rebound"));
        any("front dampers too stiff", ENTRY, LOW, UNDERSTEER, Trigger.TURN_IN, up("front_bump"), up("front_rebound"));
    }

    private static void air() {
        lifted("too little rear wing", OVERSTEER, new Move("rear_wing", -0.35));
        lifted("too much rear wing", UNDERSTEER, new Move("rear_wing", 0.35));
        lifted("too little front wing", UNDERSTEER, new Move("front_wing", -0.3));
        lifted("too much front wing", OVERSTEER, new Move("front_wing", 0.35));
        lifted("too much rake", OVERSTEER, new Move("rear_ride_height", 0.4));
        lifted("too little rake", UNDERSTEER, new Move("front_ride_height", 0.4));
    }

    private static void brakesAndDrive() {
        any(
                "brake bias too far rearward",
                ENTRY,
                ALL,
                OVERSTEER,
                Trigger.BRAKE_RELEASE,
                new Move("brake_bias_front", -0.25));
        any(
                "brake bias much too far rearward",
                BRAKING,
                ALL,
                OVERSTEER,
                Trigger.BRAKE_APPLICATION,
                new Move("brake_bias_front", -0.4));
        any("brake bias too far forward", ENTRY, ALL, UNDERSTEER, Trigger.BRAKE_RELEASE, up("brake_bias_front"));
        any("too little coast locking", ENTRY, LOW, OVERSTEER, Trigger.BRAKE_RELEASE, down("diff_coast_lock"));
        any("too much coast locking", ENTRY, LOW, UNDERSTEER, Trigger.TURN_IN, up("diff_coast_lock"));
        any("too much preload", ENTRY, LOW, UNDERSTEER, Trigger.TURN_IN, up("diff_preload"));
        add(
                "too much power locking",
                EXIT,
                ALL,
                OVERSTEER,
                Trigger.THROTTLE_PICK_UP,
                REAR_DRIVE,
                up("diff_power_lock"));
        add(
                "too little power locking",
                EXIT,
                LOW,
                UNDERSTEER,
                Trigger.THROTTLE_PICK_UP,
                FRONT_DRIVE,
                down("diff_power_lock"));
    }

    private static void wheels() {
        any("front tyre pressure too high", MID, ALL, UNDERSTEER, Trigger.NONE, up("front_tyre_pressure"));
        any("rear tyre pressure too high", MID, ALL, OVERSTEER, Trigger.NONE, up("rear_tyre_pressure"));
        any("rear tyre pressure too low", MID, ALL, OVERSTEER, Trigger.NONE, down("rear_tyre_pressure"));
        any("too little front camber", MID, ALL, UNDERSTEER, Trigger.NONE, new Move("front_camber", 0.5));
        any("too little rear camber", MID, ALL, OVERSTEER, Trigger.NONE, new Move("rear_camber", 0.5));
        any("rear toe-out", ENTRY, ALL, OVERSTEER, Trigger.TURN_IN, new Move("rear_toe", -0.5));
        any("front toe-in", ENTRY, ALL, UNDERSTEER, Trigger.TURN_IN, new Move("front_toe", 0.5));
    }

    private static Move up(String item) {
        return new Move(item, 0.4);
    }

    private static Move down(String item) {
        return new Move(item, -0.4);
    }

    private static void lifted(String name, BalanceSign balance, Move move) {
        add(name, MID, HIGH, balance, Trigger.NONE, Needs.DOWNFORCE, move);
    }

    private static void any(
            String name, Phase phase, SpeedRange speed, BalanceSign balance, Trigger trigger, Move... moves) {
        add(name, phase, speed, balance, trigger, Needs.NOTHING, moves);
    }

    private static void add(
            String name,
            Phase phase,
            SpeedRange speed,
            BalanceSign balance,
            Trigger trigger,
            Needs needs,
            Move... moves) {
        FAULTS.add(new Fault(name, phase, speed, balance, trigger, needs, List.of(moves)));
    }

    /** Returns all faults. */
    public static List<Fault> all() {
        return List.copyOf(FAULTS);
    }

    /** Returns the faults that a car can have. */
    public static List<Fault> of(CarSheet sheet) {
        return FAULTS.stream().filter(fault -> fault.appliesTo(sheet)).toList();
    }

    /** Returns the fault of that name. */
    public static Optional<Fault> find(String name) {
        return FAULTS.stream().filter(fault -> fault.name().equals(name)).findFirst();
    }
}
