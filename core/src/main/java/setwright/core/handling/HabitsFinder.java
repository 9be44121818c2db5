package setwright.core.handling;

/** Measures what the feet did in a pass. */
final class HabitsFinder {
    /** Near the most of both lock and lateral acceleration the turn-in is over, so braking there is braking in the middle. */
    private static final double NEAR_MOST = 0.85;

    private static final double BOTH_PRESSED = 0.10;

    /** Share of the most lateral acceleration at which braking is looked at: a round friction circle leaves 0.6 beside it. */
    private static final double IN_BEND = 0.8;

    private HabitsFinder() {}

    static Habits find(PassWindow pass, PassMarks marks, double limiterS, double steeringRatio, Traction traction) {
        int straight = Math.min(marks.steerStraight(), pass.size() - 1);
        int top = pass.indexOfMost(pass.inward(), marks.turnIn(), straight + 1);
        double most = pass.inward()[top];
        int held = 0;
        double heldSum = 0.0;
        int both = 0;
        int coasting = 0;
        int coastFrom = Math.max(marks.brakeOff(), marks.turnIn());
        int coastTo = marks.throttlePickUp();
        for (int k = 0; k < pass.size(); k++) {
            double brake = pass.brake()[k];
            double throttle = pass.throttle()[k];
            boolean inCorner = k >= marks.turnIn() && k <= straight;
            boolean middle = pass.inward()[k] > NEAR_MOST * most
                    && pass.steer()[k] > NEAR_MOST * pass.steer()[marks.highestSteer()];
            if (inCorner && middle && brake > Pedals.PRESSED) {
                held++;
                heldSum += brake;
            }
            if (brake > BOTH_PRESSED && throttle > BOTH_PRESSED) {
                both++;
            }
            if (k > coastFrom && k < coastTo && brake <= Pedals.PRESSED && throttle <= Pedals.PRESSED) {
                coasting++;
            }
        }
        double step = pass.stepS();
        Lift lift = lift(pass, marks, straight);
        return new Habits(
                held * step,
                held == 0 ? 0.0 : heldSum / held,
                lift.size(),
                both * step,
                brakeAgain(pass, marks),
                coasting * step,
                limiterS,
                HandsFinder.reversalsPerSecond(pass, marks),
                HandsFinder.LEAST_SHARE * Math.max(pass.steer()[marks.highestSteer()], 0.0) * steeringRatio,
                brakeInBend(pass, marks, straight),
                marks.brakePeak() < 0 ? 0.0 : pass.brake()[marks.brakePeak()],
                lift.size() > 0.0 && most > 0.0 ? Math.max(0.0, pass.inward()[lift.from()]) / most : 0.0,
                throttleAhead(pass, marks, lift),
                pickUpEarly(pass, marks, straight),
                FrictionShape.braking(pass, marks, top),
                FrictionShape.driving(pass, marks, top, straight, traction));
    }

    /** How far the throttle was closed again, 0..1, the sample at which it was most open before, and that at which it was least open. */
    private record Lift(double size, int from, int to) {}

    private static double brakeInBend(PassWindow pass, PassMarks marks, int straight) {
        int top = pass.indexOfMost(pass.inward(), marks.turnIn(), straight + 1);
        double hardest = 0.0;
        double there = 0.0;
        boolean reached = false;
        for (int k = 0; k <= top; k++) {
            double braking = Math.max(0.0, -pass.tyre(k));
            hardest = Math.max(hardest, braking);
            if (!reached && k >= marks.turnIn() && pass.inward()[k] >= IN_BEND * pass.inward()[top]) {
                reached = true;
                there = braking;
            }
        }
        return hardest > 0.0 ? there / hardest : 0.0;
    }

    private static double pickUpEarly(PassWindow pass, PassMarks marks, int straight) {
        if (marks.throttlePickUp() < 0) {
            return Double.NaN;
        }
        int tightest = marks.turnIn();
        for (int k = marks.turnIn(); k <= straight; k++) {
            tightest = pass.curvature(k) > pass.curvature(tightest) ? k : tightest;
        }
        return (tightest - marks.throttlePickUp()) * pass.stepS();
    }

    private static Lift lift(PassWindow pass, PassMarks marks, int straight) {
        if (marks.throttlePickUp() < 0) {
            return new Lift(0.0, 0, 0);
        }
        int top = marks.throttlePickUp();
        Lift most = new Lift(0.0, top, top);
        for (int k = marks.throttlePickUp(); k <= straight; k++) {
            top = pass.throttle()[k] > pass.throttle()[top] ? k : top;
            double closed = pass.throttle()[top] - pass.throttle()[k];
            most = closed > most.size() ? new Lift(closed, top, k) : most;
        }
        return most;
    }

    private static double throttleAhead(PassWindow pass, PassMarks marks, Lift lift) {
        for (int k = marks.throttlePickUp(); lift.size() > 0.0 && k <= lift.from(); k++) {
            if (pass.throttle()[k] >= pass.throttle()[lift.to()]) {
                return (lift.to() - k) * pass.stepS();
            }
        }
        return Double.NaN;
    }

    private static double brakeAgain(PassWindow pass, PassMarks marks) {
        if (marks.brakeOn() < 0) {
            return 0.0;
        }
        double top = 0.0;
        double low = 1.0;
        double most = 0.0;
        boolean eased = false;
        for (int k = marks.brakeOn(); k <= marks.brakeOff(); k++) {
            double brake = pass.brake()[k];
            top = Math.max(top, brake);
            if (brake < 0.5 * top) {
                eased = true;
            }
            low = eased ? Math.min(low, brake) : 1.0;
            most = eased ? Math.max(most, brake - low) : most;
        }
        return most;
    }
}
