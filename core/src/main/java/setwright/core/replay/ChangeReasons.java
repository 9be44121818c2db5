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
    static final double REFERENCE_MPS = 50.0;

    /** Less is not shown of a grip. */
    private static final double LEAST_GRIP = 5.0e-5;
    /** A kilogram of fuel moves the centre of gravity by less: nobody turns that for the balance. */
    private static final double LEAST_SHIFT_M = 0.001;

    private ChangeReasons() {}

    /** Returns one sentence for each mechanism that the change moves. */
    static List<String> of(CarModel before, CarModel after) {
        List<String> out = new ArrayList<>();
        rollStiffness(before, after, out);
        heave(before, after, out);
        stops("front", before.body().front(), after.body().front(), out);
        stops("rear", before.body().rear(), after.body().rear(), out);
        damping(before, after, out);
        aero(before, after, out);
        tyre("front", before.front(), after.front(), before.body().staticFrontN(), out);
        tyre("rear", before.rear(), after.rear(), before.body().staticRearN(), out);
        toe("front", before.toeFrontRad(), after.toeFrontRad(), out);
        toe("rear", before.toeRearRad(), after.toeRearRad(), out);
        DriveReasons.add(before, after, out);
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
                            + " lateral load transfer, and loaded tyres give less for each newton, %s.",
                    100.0 * was, 100.0 * is, loaded, toward(is > was)));
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

    private static void stops(String end, Axle was, Axle is, List<String> out) {
        if (was.bumpStopGapM() != is.bumpStopGapM()) {
            boolean sooner = is.bumpStopGapM() < was.bumpStopGapM();
            out.add(text(
                    "The %s bump stops begin after %.0f instead of %.0f mm of compression: where they are met, most of all in fast"
                            + " corners, the %s axle takes %s of the lateral load transfer, %s.",
                    end,
                    1000.0 * is.bumpStopGapM(),
                    1000.0 * was.bumpStopGapM(),
                    end,
                    sooner ? "more" : "less",
                    toward(sooner == end.equals("front"))));
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
        boolean stiffer = is.damper().bumpSlow() + is.damper().reboundSlow()
                > was.damper().bumpSlow() + was.damper().reboundSlow();
        out.add(text(
                "The %s slow damping goes from %.2f to %.2f of critical in bump and from %.2f to %.2f in rebound: it acts only"
                        + " while the body moves. While it rolls in, that end takes %s of the lateral load transfer: %s on entry, the"
                        + " other way as it rolls back out, nothing in the middle. Load along the car comes to its wheels %s.",
                end,
                was.damper().bumpSlow() / critical,
                is.damper().bumpSlow() / critical,
                was.damper().reboundSlow() / critical,
                is.damper().reboundSlow() / critical,
                stiffer ? "more" : "less",
                toward(stiffer == end.equals("front")),
                stiffer ? "sooner" : "later"));
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
                        + " from %.0f to %.0f N: %s, and that grows with the square of speed.",
                frontWas + rearWas,
                frontIs + rearIs,
                100.0 * frontWas / (frontWas + rearWas),
                100.0 * frontIs / (frontIs + rearIs),
                before.aero().dragN(REFERENCE_MPS),
                after.aero().dragN(REFERENCE_MPS),
                more((frontIs - frontWas) / before.body().staticFrontN()
                        - (rearIs - rearWas) / before.body().staticRearN())));
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
                "The %s tyres give %+.2f %% of grip%s and %+.1f %% of cornering stiffness.",
                end,
                100.0 * (gripIs / gripWas - 1.0),
                Math.abs(gripIs / gripWas - 1.0) < LEAST_GRIP
                        ? ""
                        : " (" + toward((gripIs < gripWas) == end.equals("front")) + ")",
                100.0 * (stiffIs / stiffWas - 1.0)));
    }

    private static void toe(String end, double was, double is, List<String> out) {
        if (was != is) {
            out.add(text(
                    "With %s toe-in the loaded outer %s wheel runs ahead of its axle: that end needs %s slip for the same force:"
                            + " %s, as an angle.",
                    is > was ? "more" : "less",
                    end,
                    is > was ? "less" : "more",
                    toward((is < was) == end.equals("front"))));
        }
    }

    private static void weight(CarModel before, CarModel after, List<String> out) {
        Body was = before.body();
        Body is = after.body();
        if (was.massKg() != is.massKg() || was.toFrontM() != is.toFrontM()) {
            out.add(text(
                    "The mass goes from %.0f to %.0f kg and the front axle's share of it from %.1f to %.1f %%%s.",
                    was.massKg(),
                    is.massKg(),
                    100.0 * was.toRearM() / was.wheelbaseM(),
                    100.0 * is.toRearM() / is.wheelbaseM(),
                    Math.abs(is.toRearM() - was.toRearM()) < LEAST_SHIFT_M
                            ? ""
                            : ": the heavier end gives up first, " + toward(is.toRearM() > was.toRearM())));
        }
        if (Math.abs(was.heightM() - is.heightM()) > 1.0e-6) {
            out.add(text(
                    "The centre of gravity moves by %+.1f mm: %s load is transferred.",
                    1000.0 * (is.heightM() - was.heightM()), is.heightM() < was.heightM() ? "less" : "more"));
        }
    }

    static String toward(boolean understeer) {
        return understeer ? "toward understeer" : "toward oversteer";
    }

    /** A balance in which more at the front is toward oversteer. */
    private static String more(double front) {
        return toward(front < 0.0);
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
