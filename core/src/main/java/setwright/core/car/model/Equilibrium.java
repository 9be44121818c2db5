package setwright.core.car.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.car.body.Body;
import setwright.core.car.model.SlipPath.Point;
import setwright.core.car.model.SteadySolver.Wanted;
import setwright.core.car.tyre.Tyre;

/** Steady states of the car of {@link VehicleEquations}; workspace, for one thread. */
public final class Equilibrium {
    private static final int REFINEMENTS = 40;

    /** In which axes the accelerations are prescribed. */
    public enum Axes {
        /** Along and across the car, as a recorder on board reads them. */
        CAR,
        /** Along and across the path: with no acceleration along, the speed stays. */
        PATH
    }

    /** The axle that gives out first. */
    public enum End {
        FRONT,
        REAR
    }

    /**
     * The greatest lateral acceleration.
     *
     * @param lateralMps2  m/s²
     * @param end          the axle that can give no more
     * @param state        there
     */
    public record Limit(double lateralMps2, End end, SteadyState state) {}

    private final SteadySolver solver;
    private final Axes axes;
    private final SlipPath path;
    private final LimitSearch search;

    /** Makes a solver with accelerations along and across the car. */
    public Equilibrium(CarModel car) {
        this(car, Axes.CAR);
    }

    /** Makes a solver. */
    public Equilibrium(CarModel car, Axes axes) {
        this(car, axes, car.front().tyre(), car.rear().tyre());
    }

    /** Makes a solver for a car on other tyres; camber and pressure stay those of the car. */
    public Equilibrium(CarModel car, Axes axes, Tyre frontTyre, Tyre rearTyre) {
        this.axes = axes;
        this.solver = new SteadySolver(car, axes, new FourWheels(car, frontTyre, rearTyre));
        Body body = car.body();
        double peakSlips = frontTyre.peakSlipAngle(
                        body.staticFrontN(),
                        car.front().inclination(),
                        car.front().pressure())
                + rearTyre.peakSlipAngle(
                        body.staticRearN(), car.rear().inclination(), car.rear().pressure());
        this.path = new SlipPath(solver, peakSlips);
        this.search = new LimitSearch(path, car);
    }

    /**
     * Returns the state with a lateral acceleration.
     *
     * @param speedMps     m/s, above 3
     * @param forwardMps2  acceleration along, m/s²
     * @param lateralMps2  acceleration across, m/s²
     * @return empty when the tyres cannot give it
     */
    public Optional<SteadyState> at(double speedMps, double forwardMps2, double lateralMps2) {
        solver.guess(speedMps, forwardMps2, lateralMps2);
        if (solver.solve(Wanted.LATERAL, lateralMps2, speedMps, forwardMps2) && solver.risesStill()) {
            return Optional.of(solver.result(speedMps));
        }
        return beyondTheFirstGuess(speedMps, forwardMps2, lateralMps2);
    }

    /**
     * Returns the state with a steering angle.
     *
     * @param speedMps     m/s, above 3
     * @param forwardMps2  acceleration along, m/s²
     * @param steerRad     mean angle of the front wheels, rad
     * @return empty when there is none or none was found
     */
    public Optional<SteadyState> atSteer(double speedMps, double forwardMps2, double steerRad) {
        path.to(speedMps, forwardMps2);
        if (!path.straight()) {
            return Optional.empty();
        }
        double start = solver.unknown[SteadySolver.STEER];
        int pieces = 1 + (int) (Math.abs(steerRad - start) / (0.25 * SteadySolver.LONGEST));
        for (int i = 1; i <= pieces; i++) {
            if (!solver.solve(Wanted.STEER, start + (steerRad - start) * i / pieces, speedMps, forwardMps2)) {
                return Optional.empty();
            }
        }
        return Optional.of(solver.result(speedMps));
    }

    /**
     * Returns the greatest lateral acceleration to the left.
     *
     * @param speedMps     m/s, above 3
     * @param forwardMps2  acceleration along, m/s²
     * @return empty when the tyres cannot even give the acceleration along
     */
    public Optional<Limit> greatestLateral(double speedMps, double forwardMps2) {
        path.to(speedMps, forwardMps2);
        return search.fromStraight().map(point -> limit(point, speedMps));
    }

    /**
     * Returns the same, sought first about a limit close by: that of another speed, acceleration or setup. Several times as quick.
     *
     * @param speedMps     m/s, above 3
     * @param forwardMps2  acceleration along, m/s²
     * @param near         the state at the other limit
     */
    public Optional<Limit> greatestLateral(double speedMps, double forwardMps2, SteadyState near) {
        path.to(speedMps, forwardMps2);
        return search.near(near, speedMps, forwardMps2)
                .map(point -> limit(point, speedMps))
                .or(() -> greatestLateral(speedMps, forwardMps2));
    }

    /**
     * Returns a limit close to a state, which need not be the one met on the way from straight ahead.
     *
     * @param speedMps     m/s, above 3
     * @param forwardMps2  acceleration along, m/s²
     * @param near         a guess
     * @param known        the state at a limit known there, which is not looked for again
     * @return empty when there is none close by, or none but the one known
     */
    public Optional<Limit> limitNear(
            double speedMps, double forwardMps2, SteadyState near, Optional<SteadyState> known) {
        path.to(speedMps, forwardMps2);
        if (known.isPresent() && search.sameBranch(near, known.get(), speedMps, forwardMps2)) {
            return Optional.empty();
        }
        return search.near(near, speedMps, forwardMps2).map(point -> limit(point, speedMps));
    }

    /**
     * Returns the states on the way from straight ahead to a limit; where the car has several, on the way that begins straight ahead.
     *
     * @param limit   of this car
     * @param shares  of the limit's lateral acceleration, 0..1, rising
     * @return fewer than asked for when the way ends before
     */
    public List<SteadyState> below(Limit limit, double... shares) {
        return below(limit, List.of(), shares);
    }

    /**
     * Returns the same, each sought first about that of a limit close by.
     *
     * @param limit   of this car
     * @param near    the same states of another limit close by, as guesses; may be empty
     * @param shares  of the limit's lateral acceleration, 0..1, rising
     * @return fewer than asked for when the way ends before
     */
    public List<SteadyState> below(Limit limit, List<SteadyState> near, double... shares) {
        SteadyState state = limit.state();
        double forward = state.forwardMps2() * Math.cos(state.sideslipRad())
                + state.lateralMps2() * Math.sin(state.sideslipRad());
        double given = axes == Axes.PATH ? forward : state.forwardMps2();
        path.to(state.speedMps(), given);
        List<SteadyState> states = new ArrayList<>();
        if (!path.straight()) {
            return states;
        }
        Point here = path.point();
        for (double share : shares) {
            double wanted = share * limit.lateralMps2();
            boolean found = false;
            if (states.size() < near.size()) {
                search.put(near.get(states.size()), state.speedMps(), given);
                found = path.turning(wanted);
            }
            if (!found && !path.turnIn(here, wanted)) {
                break;
            }
            here = path.point();
            states.add(solver.result(state.speedMps()));
        }
        return states;
    }

    private Limit limit(Point point, double speedMps) {
        return new Limit(point.lateral(), solver.nearerToItsPeak(), solver.result(speedMps));
    }

    private Optional<SteadyState> beyondTheFirstGuess(double speedMps, double forwardMps2, double lateralMps2) {
        double wanted = Math.abs(lateralMps2);
        Optional<Limit> limit = greatestLateral(speedMps, forwardMps2);
        if (limit.isEmpty() || limit.get().lateralMps2() < wanted) {
            return Optional.empty();
        }
        Point high = path.point();
        if (!path.straight()) {
            return Optional.empty();
        }
        Point here = path.point();
        Point before = here;
        while (here.lateral() < wanted && here.slips() < high.slips()) {
            Point further = path.next(before, here, LimitSearch.STRIDE * path.peakSlips);
            before = here;
            here = further;
        }
        high = here.lateral() < wanted ? high : here;
        Point low = before;
        for (int i = 0; i < REFINEMENTS; i++) {
            Point middle = path.between(low, high, 0.5 * (low.slips() + high.slips()));
            if (middle.lost()) {
                break;
            }
            low = middle.lateral() < wanted ? middle : low;
            high = middle.lateral() < wanted ? high : middle;
        }
        path.goTo(high);
        SteadyState state = solver.result(speedMps);
        return Optional.of(lateralMps2 < 0.0 ? mirrored(state) : state);
    }

    private static SteadyState mirrored(SteadyState s) {
        return new SteadyState(
                s.speedMps(),
                s.forwardMps2(),
                -s.lateralMps2(),
                -s.yawRate(),
                -s.sideslipRad(),
                -s.steerRad(),
                -s.frontSlipRad(),
                -s.rearSlipRad(),
                List.of(
                        s.loadsN().get(1),
                        s.loadsN().get(0),
                        s.loadsN().get(3),
                        s.loadsN().get(2)),
                s.frontUse(),
                s.rearUse(),
                s.engineN(),
                s.brakeN(),
                s.heaveM(),
                s.pitchRad(),
                -s.rollRad());
    }
}
