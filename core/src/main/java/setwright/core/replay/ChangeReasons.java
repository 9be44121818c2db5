package setwright.core.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.sums.Gravity;

/** Says why a change acts as predicted: what it moves in the car, with figures. */
final class ChangeReasons {
    private static final double REFERENCE_MPS = 50.0;

    private ChangeReasons() {}

    /** Returns one sentence for each mechanism that the change moves. */
    static List<String> of(CarModel before, CarModel after) {
        List<String> out = new ArrayList<>();
        rollStiffness(before, after, out);
        heave(before, after, out);
        damping(before, after, out);
        aero(before, after, out);
        tyre("front", before.front(), after.front(), before.body().staticFrontN(), out);
        tyre("rear", before.rear(), after.rear(), before.body().staticRearN(), out);
        toe("front", before.toeFrontRad(), after.toeFrontRad(), out);
        toe("rear", before.toeRearRad(), after.toeRearRad(), out);
        differential(before, after, out);
        brakes(before, after, out);
        drive(before, after, out);
        weight(before, after, out);
        return out;
    }

    private static void rollStiffness(CarModel before, CarModel after, List<String> out) {
        double was = rollShare(before.body());
        double is = rollShare(after.body());
        if (Math.abs(is - was) > 1.0e-4) {
            String loaded = is > was ? "front" : "rear";
            out.add(text(
                    "The front axle's share of the roll stiffness goes from %.1f to %.1f %%: the %s axle takes more of the"
                            + " lateral load transfer, and loaded tyres give less for each newton.",
                    100.0 * was, 100.0 * is, loaded));
        }
    }

    private static double rollShare(Body body) {
        double front = body.front().rollStiffness();
        return front / (front + body.rear().rollStiffness());
    }

    private static void heave(CarModel before, CarModel after, List<String> out) {
        heave(
                "front",
                before.body().front(),
                after.body().front(),
                before.body().staticFrontN(),
                out);
        heave("rear", before.body().rear(), after.body().rear(), before.body().staticRearN(), out);
    }

    private static void heave(String end, Axle was, Axle is, double load, List<String> out) {
        if (was.springNPerM() != is.springNPerM()) {
            double mass = load / Gravity.STANDARD_MPS2 - 0.5 * was.unsprungMassKg();
            out.add(text(
                    "The %s ride frequency goes from %.2f to %.2f Hz: under braking, on the throttle and under downforce that"
                            + " end moves %s.",
                    end,
                    hertz(was.rideRate(), mass),
                    hertz(is.rideRate(), mass),
                    is.springNPerM() > was.springNPerM() ? "less" : "more"));
        }
    }

    private static double hertz(double rate, double mass) {
        return Math.sqrt(rate / mass) / (2.0 * Math.PI);
    }

    private static void damping(CarModel before, CarModel after, List<String> out) {
        damping(
                "front",
                before.body().front(),
                after.body().front(),
                before.body().staticFrontN(),
                out);
        damping("rear", before.body().rear(), after.body().rear(), before.body().staticRearN(), out);
    }

    private static void damping(String end, Axle was, Axle is, double load, List<String> out) {
        if (was.damper().equals(is.damper()) || was.springNPerM() != is.springNPerM()) {
            return;
        }
        double mass = load / Gravity.STANDARD_MPS2 - 0.5 * was.unsprungMassKg();
        double critical = 2.0 * Math.sqrt(was.rideRate() * mass);
        out.add(text(
                "The %s slow damping goes from %.2f to %.2f of critical in bump and from %.2f to %.2f in rebound: it acts only"
                        + " while the body moves, and brings load to that end's wheels sooner, not later.",
                end,
                was.damper().bumpSlow() / critical,
                is.damper().bumpSlow() / critical,
                was.damper().reboundSlow() / critical,
                is.damper().reboundSlow() / critical));
    }

    private static void aero(CarModel before, CarModel after, List<String> out) {
        double frontWas = before.liftFrontN(REFERENCE_MPS, 0.0, 0.0);
        double rearWas = before.liftRearN(REFERENCE_MPS, 0.0, 0.0);
        double frontIs = after.liftFrontN(REFERENCE_MPS, 0.0, 0.0);
        double rearIs = after.liftRearN(REFERENCE_MPS, 0.0, 0.0);
        if (Math.abs(frontIs - frontWas) + Math.abs(rearIs - rearWas) < 1.0) {
            return;
        }
        out.add(text(
                "At 180 km/h the downforce goes from %.0f to %.0f N, the front's share of it from %.1f to %.1f %%, and the drag"
                        + " from %.0f to %.0f N: this grows with the square of speed.",
                frontWas + rearWas,
                frontIs + rearIs,
                100.0 * frontWas / (frontWas + rearWas),
                100.0 * frontIs / (frontIs + rearIs),
                before.aero().dragN(REFERENCE_MPS),
                after.aero().dragN(REFERENCE_MPS)));
    }

    private static void tyre(String end, MountedTyre was, MountedTyre is, double load, List<String> out) {
        if (was.inclination() == is.inclination() && was.pressure() == is.pressure()) {
            return;
        }
        double gripWas = was.tyre().lateralPeak(load, was.inclination(), was.pressure());
        double gripIs = is.tyre().lateralPeak(load, is.inclination(), is.pressure());
        double stiffWas = was.corneringStiffness(load);
        double stiffIs = is.corneringStiffness(load);
        out.add(text(
                "The %s tyres give %+.2f %% of grip and %+.1f %% of cornering stiffness.",
                end, 100.0 * (gripIs / gripWas - 1.0), 100.0 * (stiffIs / stiffWas - 1.0)));
    }

    private static void toe(String end, double was, double is, List<String> out) {
        if (was != is) {
            out.add(text(
                    "With %s toe-in the loaded outer %s wheel runs ahead of its axle: that end needs %s slip for the same force.",
                    is > was ? "more" : "less", end, is > was ? "less" : "more"));
        }
    }

    private static void differential(CarModel before, CarModel after, List<String> out) {
        if (before.differential().equals(after.differential())) {
            return;
        }
        double drive = 1500.0;
        double overrun = -300.0;
        out.add(text(
                "The differential holds %.0f instead of %.0f Nm on the overrun (at 300 Nm) and %.0f instead of %.0f Nm on the"
                        + " throttle (at 1500 Nm): what it holds turns the car out of the corner, and on the throttle keeps the"
                        + " unloaded inner wheel from spinning.",
                after.differential().lockNm(overrun),
                before.differential().lockNm(overrun),
                after.differential().lockNm(drive),
                before.differential().lockNm(drive)));
    }

    private static void brakes(CarModel before, CarModel after, List<String> out) {
        double was = before.brakes().frontShare();
        double is = after.brakes().frontShare();
        if (was != is) {
            Body body = before.body();
            double ideal = (body.toRearM() + body.heightM()) / body.wheelbaseM();
            out.add(text(
                    "The front brakes take %.1f instead of %.1f %% (at 1 g the load would ask for %.1f %%): the %s axle has less"
                            + " left for cornering while the brake is on.",
                    100.0 * is, 100.0 * was, 100.0 * ideal, is > was ? "front" : "rear"));
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

    private static void weight(CarModel before, CarModel after, List<String> out) {
        Body was = before.body();
        Body is = after.body();
        if (was.massKg() != is.massKg() || was.toFrontM() != is.toFrontM()) {
            out.add(text(
                    "The mass goes from %.0f to %.0f kg and the front axle's share of it from %.1f to %.1f %%.",
                    was.massKg(),
                    is.massKg(),
                    100.0 * was.toRearM() / was.wheelbaseM(),
                    100.0 * is.toRearM() / is.wheelbaseM()));
        }
        if (Math.abs(was.heightM() - is.heightM()) > 1.0e-6) {
            out.add(text(
                    "The centre of gravity moves by %+.1f mm: %s load is transferred.",
                    1000.0 * (is.heightM() - was.heightM()), is.heightM() < was.heightM() ? "less" : "more"));
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
