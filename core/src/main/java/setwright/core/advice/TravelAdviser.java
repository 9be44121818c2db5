package setwright.core.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import setwright.core.advice.Advice.Move;
import setwright.core.advice.AdviceReview.Silent;
import setwright.core.advice.TravelAdvice.End;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.chassis.HeightSensors;
import setwright.core.chassis.TravelDirection;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.judgement.Diagnosis;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/*
 * Design note. Travel is taken to be that of the wheel against the body. Which way it counts is read from the braking: it compresses
 * the front against the rear. Its zero is where the car stands in slow, gentle driving; without any such the recording's own zero
 * is taken. An end is met where the sheet puts it (ride height to the ground, gap to the bump stop), or, whatever the sheet says, where
 * the travel is cut off: at its greatest a sensor that still moves spends no time, one that is held spends much.
 */

/** Looks for axles that run out of travel. */
final class TravelAdviser {
    private static final List<Quantity> TRAVEL = TravelDirection.TRAVEL;

    /** Quiet driving, where a car stands as at rest: hardly any air, hardly any acceleration. */
    private static final double SLOW_MPS = 15.0;

    private static final double QUIET_MPS2 = 2.0;
    private static final int FEWEST_QUIET = 50;
    /** Sensors resolve a fifth of a millimetre (orientation); a stop that is met again and again lies within so much. */
    private static final double SAME_M = 0.5e-3;
    /** A travel that is held at its end spends five times as long in its last half millimetre as in the one before (our choice). */
    private static final double HELD = 5.0;

    /** Less a lap than this is one kerb. */
    private static final double LEAST_S_PER_LAP = 0.1;

    private static final double LEAST_COMPRESSION_M = 5.0e-3;
    private static final int STEPS_UP = 2;

    private final Stint stint;
    private final HandlingTrace trace;
    private final CarSheet sheet;

    private TravelAdviser(Diagnosis diagnosis, CarSheet sheet) {
        this.stint = diagnosis.stint();
        this.trace = diagnosis.trace();
        this.sheet = sheet;
    }

    static void look(Diagnosis diagnosis, CarSheet sheet, List<Advice> advice, List<Silent> silent) {
        boolean travel = TRAVEL.stream().allMatch(diagnosis.stint().recording()::has);
        TravelAdviser adviser = new TravelAdviser(diagnosis, sheet);
        if (!travel && !adviser.heights()) {
            silent.add(
                    new Silent(Topic.RIDE_HEIGHT, false, "neither suspension travel nor ride heights were recorded"));
            return;
        }
        double side = travel ? TravelDirection.of(diagnosis.stint(), diagnosis.trace()) : 0.0;
        if (side == 0.0 && !adviser.heights()) {
            silent.add(new Silent(
                    Topic.RIDE_HEIGHT,
                    true,
                    "which way the travel counts cannot be told: the car does not dive on the brake"));
            return;
        }
        List<Advice> found = new ArrayList<>();
        for (boolean front : new boolean[] {true, false}) {
            Optional<Advice> byTravel =
                    side == 0.0 ? Optional.empty() : adviser.end(front, adviser.compression(front, side));
            byTravel.or(() -> adviser.endByHeight(front)).ifPresent(found::add);
        }
        advice.addAll(found);
        if (found.isEmpty()) {
            silent.add(new Silent(Topic.RIDE_HEIGHT, true, "neither axle comes to the end of its travel"));
        }
    }

    private boolean heights() {
        return HeightSensors.between(stint.recording(), true).isPresent()
                || HeightSensors.between(stint.recording(), false).isPresent();
    }

    /** A measured height is held against the one at rest: of the sheet, else that of slow and gentle driving. */
    private Optional<Advice> endByHeight(boolean front) {
        return HeightSensors.between(stint.recording(), front).flatMap(height -> {
            double sheets = metres((front ? "front" : "rear") + "_ride_height");
            double rest = Double.isFinite(sheets) ? sheets : rest(height);
            double[] compression = Arrays.stream(height).map(h -> rest - h).toArray();
            return rest > 0.0 ? end(front, compression, rest) : Optional.empty();
        });
    }

    /** The greater of both wheels' compressions from rest at each sample, m. */
    private double[] compression(boolean front, double side) {
        double[] left = stint.recording().channel(TRAVEL.get(front ? 0 : 2)).toArray();
        double[] right = stint.recording().channel(TRAVEL.get(front ? 1 : 3)).toArray();
        double restLeft = rest(left);
        double restRight = rest(right);
        double[] most = new double[left.length];
        Arrays.setAll(most, i -> Math.max(side * (left[i] - restLeft), side * (right[i] - restRight)));
        return most;
    }

    private double rest(double[] travel) {
        double[] quiet = new double[travel.length];
        int count = 0;
        for (int i = 0; i < travel.length; i++) {
            boolean still = trace.speed().get(i) < SLOW_MPS
                    && Math.abs(trace.forward().get(i)) < QUIET_MPS2
                    && Math.abs(trace.lateral().get(i)) < QUIET_MPS2;
            if (still && Double.isFinite(travel[i])) {
                quiet[count++] = travel[i];
            }
        }
        return count < FEWEST_QUIET ? 0.0 : Robust.median(Arrays.copyOf(quiet, count));
    }

    private Optional<Advice> end(boolean front, double[] compression) {
        return end(front, compression, metres((front ? "front" : "rear") + "_ride_height"));
    }

    private Optional<Advice> end(boolean front, double[] compression, double ground) {
        double most = 0.0;
        for (Lap lap : stint.goodLaps()) {
            for (int i = lap.from(); i < lap.to(); i++) {
                most = Math.max(most, compression[i]);
            }
        }
        String axle = front ? "front" : "rear";
        if (most > ground) {
            return advice(front, End.GROUND, compression, most, ground);
        }
        if (cutOff(compression, most)) {
            return advice(front, End.UNKNOWN_STOP, compression, most, most - SAME_M);
        }
        double ratio = front ? sheet.motionRatioFront() : sheet.motionRatioRear();
        double stop = metres(axle + "_bump_stop_gap") / ratio;
        return most > stop ? advice(front, End.BUMP_STOP, compression, most, stop) : Optional.empty();
    }

    /** Length of an item in m; infinite when the sheet does not have it. */
    private double metres(String item) {
        return sheet.item(item)
                .map(found -> found.value() * (found.unit().equals("mm") ? 1.0e-3 : Double.NaN))
                .filter(Double::isFinite)
                .orElse(Double.POSITIVE_INFINITY);
    }

    private boolean cutOff(double[] compression, double most) {
        int last = 0;
        int before = 0;
        for (Lap lap : stint.goodLaps()) {
            for (int i = lap.from(); i < lap.to(); i++) {
                last += compression[i] > most - SAME_M ? 1 : 0;
                before += compression[i] > most - 2.0 * SAME_M && compression[i] <= most - SAME_M ? 1 : 0;
            }
        }
        double seconds = last * stint.recording().stepS() / stint.goodLaps().size();
        return most > LEAST_COMPRESSION_M && seconds > LEAST_S_PER_LAP && last > HELD * Math.max(before, 1);
    }

    private Optional<Advice> advice(boolean front, End end, double[] compression, double most, double room) {
        TreeSet<Integer> laps = new TreeSet<>();
        TreeSet<Integer> corners = new TreeSet<>();
        int count = 0;
        Channel station = stint.station();
        for (Lap lap : stint.goodLaps()) {
            for (int i = lap.from(); i < lap.to(); i++) {
                if (compression[i] > room) {
                    count++;
                    laps.add(lap.number());
                    corner(station.get(i)).ifPresent(corners::add);
                }
            }
        }
        double seconds = count * stint.recording().stepS() / stint.goodLaps().size();
        boolean shows = laps.size() > 0.5 * stint.goodLaps().size() && seconds > LEAST_S_PER_LAP;
        return shows
                ? Optional.of(new TravelAdvice(
                        front,
                        end,
                        most,
                        room,
                        seconds,
                        List.copyOf(laps),
                        List.copyOf(corners),
                        sheet.item((front ? "front" : "rear") + "_ride_height").flatMap(TravelAdviser::up)))
                : Optional.empty();
    }

    private Optional<Integer> corner(double stationM) {
        return stint.circuit().corners().stream()
                .filter(corner -> stationM >= corner.startM() && stationM <= corner.endM())
                .map(Corner::number)
                .findFirst();
    }

    private static Optional<Move> up(SetupItem item) {
        double room = Math.floor((item.max() - item.value()) / item.step() + 1.0e-9);
        double steps = Math.min(STEPS_UP, room);
        return steps >= 1.0
                ? Optional.of(new Move(item.name(), item.value(), item.value() + steps * item.step(), item.unit()))
                : Optional.empty();
    }
}
