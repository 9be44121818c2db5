package setwright.core.car.model.validation.signs;

import static setwright.core.car.model.validation.signs.ModelChanges.anti;
import static setwright.core.car.model.validation.signs.ModelChanges.front;
import static setwright.core.car.model.validation.signs.ModelChanges.rear;
import static setwright.core.car.model.validation.signs.ModelChanges.rollCentre;
import static setwright.core.car.model.validation.signs.ModelChanges.track;

import java.util.List;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarModel;

/**
 * Signs of setup changes on which handbooks agree: Milliken and Milliken, Race Car Vehicle Dynamics (SAE 1995), ch. 12, 16 to 18,
 * 22; C. Smith, Tune to Win (1978); J. Dixon, Tires, Suspension and Handling (1996); A. Staniforth, Competition Car
 * Suspension; J. Segers, Analysis Techniques for Racecar Data Acquisition (2008); all from memory, and common practice. Letters: U
 * toward understeer, O toward oversteer, 0 nothing to first order, ? depends; for entry, mid and exit.
 *
 * <p>Not here, because the model does not have it: caster, cross weight.
 */
final class HandbookRows {
    private static final String STIFF =
            "The car rolls so little that its inner front wheel hardly moves while the car rolls in.";
    private static final String GROUND =
            "The ground has a larger share of the front's downforce than of the rear's, so that lowering moves it forward.";
    private static final String RAMP =
            "More engine torque closes the coast ramps further; the moment against the turn outweighs the braked rear.";
    private static final String PRELOAD = "Preload holds on power as well; handbooks give the sign of the coast side.";
    private static final String NO_OVERRUN =
            "At steady speed the engine drives, and coast ramps have no torque to lock on.";
    private static final String TOE =
            "Balance is an angle: a loaded outer wheel that is toed out needs more mean steer for the same force. "
                    + "How quickly the inner wheel bites at turn-in is not modelled.";
    private static final String TRACTION =
            "The handbooks' sign is for rear drive; here the heavier axle is the one that drives.";
    private static final String BRAKED = "At a fixed brake bias the heavier rear has more grip to spare while braking.";
    private static final String STOP = "The car still rolls on the stop while it drives out.";
    private static final String PRESCRIBED =
            "The motion prescribes the acceleration; more wheel torque only matters when it is used.";
    private static final String ANGLE =
            "Balance is an angle: a stiffer front needs less of it at any force; its limit does not move.";

    private HandbookRows() {}

    static List<Row> all() {
        return List.of(
                Row.of("1 front bar stiffer", "UUU", c -> c.with("front_bar", 8.0)),
                Row.of("2 rear bar stiffer", "OOO", c -> c.with("rear_bar", 8.0)),
                Row.of("3 front springs stiffer", "UUU", c -> scaled(c, "front_spring", 1.2)),
                Row.of("4 rear springs stiffer", "OOO", c -> scaled(c, "rear_spring", 1.2)),
                Row.of("5 front bump up", "?0?", c -> c.with("front_bump", 22.0)),
                Row.of("6 front rebound up", "U0?", c -> c.with("front_rebound", 22.0))
                        .but(InventedCar.WINGED, Phase.ENTRY, STIFF),
                Row.of("7 rear bump up", "O0?", c -> c.with("rear_bump", 22.0)),
                Row.of("8 rear rebound up", "O0U", c -> c.with("rear_rebound", 22.0)),
                Row.of(
                        "9 all damping up",
                        "?0?",
                        c -> c.with(List.of(
                                new SetupChange("front_bump", 15.0, 22.0),
                                new SetupChange("front_rebound", 15.0, 22.0),
                                new SetupChange("rear_bump", 15.0, 22.0),
                                new SetupChange("rear_rebound", 15.0, 22.0)))),
                Row.of("10 front ride height lower", "OOO", c -> c.with("front_ride_height", 55.0))
                        .only(InventedCar::hasDownforce),
                Row.of("11 rear ride height higher", "OOO", c -> c.with("rear_ride_height", 75.0))
                        .only(InventedCar::hasDownforce),
                Row.of(
                                "12 whole car lower",
                                "?00",
                                c -> c.with(List.of(
                                        new SetupChange("front_ride_height", 60.0, 55.0),
                                        new SetupChange("rear_ride_height", 70.0, 65.0))))
                        .but(InventedCar.WINGED, Phase.MID, GROUND),
                Row.of("13 front wing up", "OOO", c -> c.with("front_wing", 13.0))
                        .only(InventedCar::hasDownforce),
                Row.of("14 rear wing up", "UUU", c -> c.with("rear_wing", 13.0)).only(InventedCar::hasDownforce),
                Row.of("15 brake bias forward", "U00", c -> c.with("brake_bias_front", 66.0)),
                Row.of("16 engine braking up", "O00", c -> ModelChanges.engineBraking(c.car(), 1.5))
                        .only(InventedCar::rearDrive)
                        .but(Phase.ENTRY, RAMP),
                Row.of(
                                "16 engine braking up, free differential",
                                "O00",
                                c -> ModelChanges.engineBraking(ModelChanges.differential(c.car(), 0.0), 1.5))
                        .from(c -> ModelChanges.differential(c.car(), 0.0))
                        .only(InventedCar::rearDrive),
                Row.of("17 preload up", "UU0", c -> c.with("diff_preload", 100.0))
                        .only(InventedCar::rearDrive)
                        .inATightCorner()
                        .but(InventedCar.WINGED, Phase.EXIT, PRELOAD),
                Row.of("17 coast locking up", "UU0", c -> c.with("diff_coast_lock", 60.0))
                        .only(InventedCar::rearDrive)
                        .inATightCorner()
                        .but(Phase.MID, NO_OVERRUN),
                Row.of("18 power locking up", "0U?", c -> c.with("diff_power_lock", 60.0))
                        .only(InventedCar::rearDrive)
                        .inATightCorner(),
                Row.of("19 spool", "UU?", c -> ModelChanges.differential(c.car(), 1.0e6))
                        .only(InventedCar::rearDrive)
                        .inATightCorner(),
                Row.of("20 front pressure far above best", "UUU", c -> c.with("front_tyre_pressure", 2.6)),
                Row.of("21 rear pressure far above best", "OOO", c -> c.with("rear_tyre_pressure", 2.6)),
                Row.of("22 front camber up from too little", "OOO", c -> c.with("front_camber", -1.5))
                        .from(c -> c.with("front_camber", -0.5)),
                Row.of("23 rear camber up from too little", "UUU", c -> c.with("rear_camber", -1.0))
                        .from(c -> c.with("rear_camber", 0.0)),
                Row.of("24 front toe-out up", "O00", c -> c.with("front_toe", -0.2))
                        .but(Phase.ENTRY, TOE)
                        .but(Phase.MID, TOE)
                        .but(Phase.EXIT, TOE),
                Row.of("25 rear toe-in up", "UUU", c -> c.with("rear_toe", 0.3)),
                Row.of("27 centre of gravity forward", "UUU", c -> c.with("ballast_position", 0.0))
                        .but(InventedCar.HATCH, Phase.EXIT, TRACTION),
                Row.of("28 centre of gravity rearward", "OO?", c -> c.with("ballast_position", 2.6))
                        .but(InventedCar.HATCH, Phase.ENTRY, BRAKED),
                Row.of("29 wider front track", "OOO", c -> front(c.car(), track(0.04))),
                Row.of("30 wider rear track", "UUU", c -> rear(c.car(), track(0.04))),
                Row.of("31 more front grip", "OOO", c -> ModelChanges.frontTyre(c.car(), 1.03, 1.0)),
                Row.of("32 front roll centre higher", "UUU", c -> front(c.car(), rollCentre(0.02))),
                Row.of("33 rear roll centre higher", "OOO", c -> rear(c.car(), rollCentre(0.02))),
                Row.of("35 anti-dive up", "?00", c -> front(c.car(), anti(0.2))),
                Row.of("36 anti-squat up", "00?", c -> rear(c.car(), anti(0.2))).only(InventedCar::rearDrive),
                Row.of("37 front bump stops engaged", "UU0", c -> c.with("front_bump_stop_gap", 12.0))
                        .but(Phase.EXIT, STOP),
                Row.of("38 final drive shorter", "O0O", c -> c.with("final_drive", 4.2))
                        .only(InventedCar::rearDrive)
                        .but(Phase.EXIT, PRESCRIBED),
                Row.of("42 front tyre stiffer at same grip", "O00", c -> ModelChanges.frontTyre(c.car(), 1.0, 0.93))
                        .but(Phase.MID, ANGLE)
                        .but(Phase.EXIT, ANGLE));
    }

    private static CarModel scaled(InventedCar car, String item, double factor) {
        return car.with(item, factor * car.sheet().item(item).orElseThrow().value());
    }
}
