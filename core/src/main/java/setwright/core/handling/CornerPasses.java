package setwright.core.handling;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import setwright.core.car.BalancedCar;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/** Builds the evidence table: every good lap through every corner. */
public final class CornerPasses {
    /** Share of the rev limit at which the limiter acts; loggers round and engines overshoot by about this much. */
    private static final double ON_LIMITER = 0.995;

    /** Below a tenth of the limit no setup change shows in the balance angle, and what is left is noise. */
    private static final double LEAST_LATERAL_USE = 0.1;

    private CornerPasses() {}

    /**
     * Returns one pass for each good lap through each corner that the recording holds without a gap, lap by lap.
     *
     * @param stint  laps on the circuit
     * @param trace  of the same stint
     * @param sheet  of the car
     */
    public static List<CornerPass> of(Stint stint, HandlingTrace trace, CarSheet sheet) {
        List<CornerPass> passes = new ArrayList<>(stint.circuit().corners().parallelStream()
                .flatMap(corner -> through(corner, stint, trace, sheet).stream())
                .toList());
        passes.sort((a, b) ->
                a.lap() != b.lap() ? Integer.compare(a.lap(), b.lap()) : Integer.compare(a.corner(), b.corner()));
        return SawingFinder.mark(passes);
    }

    private static List<CornerPass> through(Corner corner, Stint stint, HandlingTrace trace, CarSheet sheet) {
        List<CornerPass> here = new ArrayList<>();
        for (Lap lap : stint.goodLaps()) {
            PassWindow window = PassWindow.of(stint, trace, lap, corner);
            if (!window.isEmpty()) {
                here.add(pass(window, stint, trace, sheet));
            }
        }
        SpeedClass usual = SpeedClass.of(Robust.median(
                here.stream().mapToDouble(CornerPass::lowestSpeedMps).toArray()));
        return here.stream().map(pass -> pass.in(usual)).toList();
    }

    private static CornerPass pass(PassWindow window, Stint stint, HandlingTrace trace, CarSheet sheet) {
        PassMarks marks = MarkFinder.find(window);
        Map<Phase, PhaseSplitter.Range> ranges = PhaseSplitter.split(window, marks);
        Map<Phase, PhaseBalance> phases = new EnumMap<>(Phase.class);
        ranges.forEach((phase, range) -> phases.put(phase, balance(window, trace.car(), phase, range)));
        double peak = marks.brakePeak() < 0 ? 0.0 : window.brake()[marks.brakePeak()];
        double steeringRatio = stint.recording().has(Quantity.STEERING_WHEEL_ANGLE) ? sheet.steeringRatio() : 1.0;
        return new CornerPass(
                window.lap(),
                window.corner().number(),
                SpeedClass.of(window.speed()[marks.lowestSpeed()]),
                events(window, marks),
                window.timeS(marks.turnIn()),
                phases,
                SlideFinder.find(window, marks, ranges, trace.car(), trace.balanceNoiseRad()),
                HandsFinder.find(window, marks, ranges, steeringRatio, trace.balanceNoiseRad()),
                HabitsFinder.find(window, marks, limiter(window, stint, sheet), steeringRatio, Traction.of(sheet)),
                shapes(window),
                window.speed()[marks.turnIn()],
                window.speed()[marks.lowestSpeed()],
                window.speed()[window.size() - 1],
                window.durationS(),
                peak > Pedals.PRESSED ? Math.max(window.brake()[marks.turnIn()], 0.0) / peak : 0.0);
    }

    private static PhaseBalance balance(PassWindow window, BalancedCar car, Phase phase, PhaseSplitter.Range range) {
        double weight = 0.0;
        double balance = 0.0;
        double reference = 0.0;
        double front = 0.0;
        double rear = 0.0;
        double lateral = 0.0;
        double limit = 0.0;
        double speed = 0.0;
        for (int k = range.from(); k < range.to(); k++) {
            // weighted with the lateral acceleration: slip on a straight is noise, slip in a corner is balance
            double w = Math.max(window.inward()[k], 0.0) + 1.0e-3;
            BalancedCar.AxleUse use = car.use(
                    window.speed()[k], Math.max(window.inward()[k], 0.0), window.forward()[k], window.tyre(k), 0.0);
            weight += w;
            balance += w * window.balance()[k];
            reference += w * window.reference()[k];
            front += w * use.frontUse();
            rear += w * use.rearUse();
            lateral += window.inward()[k];
            limit += window.limit()[k];
            speed += window.speed()[k];
        }
        int count = range.to() - range.from();
        boolean cornering = lateral > LEAST_LATERAL_USE * limit;
        return new PhaseBalance(
                phase,
                window.edgeM(range.from()),
                window.edgeM(range.to()),
                count * window.stepS(),
                cornering ? balance / weight : Double.NaN,
                cornering ? reference / weight : Double.NaN,
                0.0,
                front / weight,
                rear / weight,
                lateral / count,
                speed / count);
    }

    private static CornerEvents events(PassWindow window, PassMarks marks) {
        return new CornerEvents(
                at(window, marks.brakeOn()),
                at(window, marks.brakePeak()),
                at(window, marks.turnIn()),
                at(window, marks.brakeOff()),
                at(window, marks.highestSteer()),
                at(window, marks.lowestSpeed()),
                at(window, marks.throttlePickUp()),
                at(window, marks.fullThrottle()),
                at(window, marks.steerStraight()));
    }

    private static OptionalDouble at(PassWindow window, int sample) {
        return sample < 0 || sample >= window.size()
                ? OptionalDouble.empty()
                : OptionalDouble.of(window.station()[sample]);
    }

    private static double limiter(PassWindow window, Stint stint, CarSheet sheet) {
        if (!stint.recording().has(Quantity.ENGINE_SPEED)
                || sheet.revLimitRadPerS().isEmpty()) {
            return 0.0;
        }
        Channel engine = stint.recording().channel(Quantity.ENGINE_SPEED);
        double limit = ON_LIMITER * sheet.revLimitRadPerS().getAsDouble();
        int first = (int) Math.round(window.startTimeS() / window.stepS());
        int count = 0;
        for (int k = 0; k < window.size(); k++) {
            count += engine.get(first + k) >= limit ? 1 : 0;
        }
        return count * window.stepS();
    }

    private static PassShapes shapes(PassWindow window) {
        return new PassShapes(
                shape(window, window.speed()),
                shape(window, window.brake()),
                shape(window, window.throttle()),
                shape(window, window.offset()));
    }

    private static Channel shape(PassWindow window, double[] values) {
        double from = window.corner().startM();
        double step = (window.corner().endM() - from) / (PassShapes.POINTS - 1);
        double[] out = new double[PassShapes.POINTS];
        int k = 0;
        for (int i = 0; i < out.length; i++) {
            double station = from + i * step;
            while (k < window.size() - 2 && window.station()[k + 1] < station) {
                k++;
            }
            double span = window.station()[k + 1] - window.station()[k];
            double share = span > 0.0 ? Math.min(1.0, Math.max(0.0, (station - window.station()[k]) / span)) : 0.0;
            out[i] = values[k] + share * (values[k + 1] - values[k]);
        }
        return Channel.of(out);
    }
}
