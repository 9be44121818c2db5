package setwright.core.replay;

import static setwright.core.replay.ChangeReasons.REFERENCE_MPS;
import static setwright.core.replay.ChangeReasons.text;
import static setwright.core.replay.ChangeReasons.toward;

import java.util.List;
import setwright.core.car.DrivenAxle;
import setwright.core.car.body.Body;
import setwright.core.car.model.CarModel;

/** Says why a change of differential, brakes or gears acts as predicted. */
final class DriveReasons {
    private static final double LEAST_LOCK_NM = 0.5;

    private DriveReasons() {}

    /** Adds one sentence for each mechanism that the change moves. */
    static void add(CarModel before, CarModel after, List<String> out) {
        differential(before, after, out);
        brakes(before, after, out);
        drive(before, after, out);
    }

    private static void differential(CarModel before, CarModel after, List<String> out) {
        if (before.differential().equals(after.differential())) {
            return;
        }
        double drive = 1500.0;
        double overrun = -300.0;
        out.add(text(
                "The differential holds %.0f instead of %.0f Nm on the overrun (at 300 Nm) and %.0f instead of %.0f Nm on the"
                        + " throttle (at 1500 Nm). What it holds turns the car out of the corner: %s on the overrun%s.",
                after.differential().lockNm(overrun),
                before.differential().lockNm(overrun),
                after.differential().lockNm(drive),
                before.differential().lockNm(drive),
                change(after.differential().lockNm(overrun)
                        - before.differential().lockNm(overrun)),
                onThrottle(
                        after.drivenAxle(),
                        after.differential().lockNm(drive)
                                - before.differential().lockNm(drive))));
    }

    private static void brakes(CarModel before, CarModel after, List<String> out) {
        double was = before.brakes().frontShare();
        double is = after.brakes().frontShare();
        if (was != is) {
            Body body = before.body();
            double ideal = (body.toRearM() + body.heightM()) / body.wheelbaseM();
            out.add(text(
                    "The front brakes take %.1f instead of %.1f %% (at 1 g the load would ask for %.1f %%): the %s axle has less"
                            + " left for cornering while the brake is on, %s.",
                    100.0 * is, 100.0 * was, 100.0 * ideal, is > was ? "front" : "rear", toward(is > was)));
        }
    }

    private static void drive(CarModel before, CarModel after, List<String> out) {
        if (before.powertrain().actsLike(after.powertrain())) {
            return;
        }
        int top = before.powertrain().gears() - 1;
        out.add(text(
                "The limiter comes at %.0f instead of %.0f km/h in top gear, and the wheels get %+.1f %% of force at 180 km/h.",
                3.6 * after.powertrain().limitMps(top),
                3.6 * before.powertrain().limitMps(top),
                100.0
                        * (after.powertrain().driveN(REFERENCE_MPS)
                                        / before.powertrain().driveN(REFERENCE_MPS)
                                - 1.0)));
    }

    private static String change(double lockNm) {
        return Math.abs(lockNm) < LEAST_LOCK_NM ? "no change" : toward(lockNm > 0.0);
    }

    /** Where the front drives, locking turns the car out and spares the inner wheel its spin: which is more, the track tells. */
    private static String onThrottle(DrivenAxle driven, double lockNm) {
        if (Math.abs(lockNm) < LEAST_LOCK_NM) {
            return "";
        }
        return driven == DrivenAxle.REAR
                ? ", on the throttle " + toward(lockNm > 0.0)
                        + " until both rear wheels slide together, then the other way"
                : ", on the throttle that and an inner wheel that spins " + (lockNm > 0.0 ? "less" : "more")
                        + " work against each other";
    }
}
