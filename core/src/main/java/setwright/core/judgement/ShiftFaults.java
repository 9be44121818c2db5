package setwright.core.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Stint;
import setwright.core.handling.Upshift;
import setwright.core.handling.UpshiftFinder;
import setwright.core.judgement.DrivingFault.Proof;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;

/*
 * Design note. The next gear is due where it pulls as hard as this one, or at the limiter when that comes first (common
 * practice; it follows from the greatest acceleration at each speed). Too late: the next gear pulls harder straight after the
 * change. Too early: this gear pulled harder, and the engine had revs left.
 */

/** Finds upshifts that come too late or too early. */
final class ShiftFaults {
    /** Of the same gear; fewer tell nothing. */
    private static final int FEWEST = 4;
    /** What the next gear must pull more for the change to be late: twice what drag and the settling of the filter hide, m/s². */
    private static final double LATE_MPS2 = 0.2;
    /** What this gear must pull more for the change to be early: the steps of a close gearbox cost a tenth (common practice). */
    private static final double EARLY_SHARE = 0.15;

    private static final double EARLY_MPS2 = 0.4;
    /** Revs left, as a share of the limit, from which on it is early: lights are set 3 to 5 % below it (common practice). */
    private static final double REVS_LEFT = 0.08;

    private ShiftFaults() {}

    static List<DrivingFault> find(Stint stint, CarSheet sheet) {
        List<Upshift> shifts = UpshiftFinder.find(stint);
        double limit = limit(stint, sheet);
        List<DrivingFault> faults = new ArrayList<>();
        fault(
                        "upshift too late: the next gear already pulls harder",
                        "m/s²",
                        shifts,
                        stint,
                        shift -> shift.nextPullMps2() > shift.pullMps2() + LATE_MPS2,
                        shift -> shift.nextPullMps2() - shift.pullMps2())
                .ifPresent(faults::add);
        fault(
                        "upshift too early: this gear still pulls harder and has revs left",
                        "m/s²",
                        shifts,
                        stint,
                        shift -> early(shift, limit),
                        shift -> shift.pullMps2() - shift.nextPullMps2())
                .ifPresent(faults::add);
        return faults;
    }

    private static boolean early(Upshift shift, double limit) {
        double more = shift.pullMps2() - shift.nextPullMps2();
        return shift.engineRadPerS() < (1.0 - REVS_LEFT) * limit
                && more > EARLY_MPS2
                && more > EARLY_SHARE * shift.pullMps2();
    }

    /** The rev limit of the sheet; else the most that was turned; NaN without an engine speed. */
    private static double limit(Stint stint, CarSheet sheet) {
        if (!stint.recording().has(Quantity.ENGINE_SPEED)) {
            return Double.NaN;
        }
        return sheet.revLimitRadPerS()
                .orElseGet(() -> Robust.quantile(
                        stint.recording().channel(Quantity.ENGINE_SPEED).toArray(), 0.999));
    }

    private static Optional<DrivingFault> fault(
            String kind,
            String unit,
            List<Upshift> all,
            Stint stint,
            Predicate<Upshift> shows,
            ToDoubleFunction<Upshift> size) {
        Map<Integer, List<Upshift>> byGear = all.stream().collect(Collectors.groupingBy(Upshift::from));
        List<Upshift> showing = new ArrayList<>();
        int seen = 0;
        for (List<Upshift> shifts : byGear.values()) {
            List<Upshift> here = shifts.stream().filter(shows).toList();
            if (shifts.size() >= FEWEST && 2 * here.size() > shifts.size()) {
                showing.addAll(here);
                seen += shifts.size();
            }
        }
        if (showing.isEmpty()) {
            return Optional.empty();
        }
        Map<Integer, List<Upshift>> byCorner = new TreeMap<>(
                showing.stream().collect(Collectors.groupingBy(shift -> cornerBefore(stint, shift.stationM()))));
        List<Proof> proofs = new ArrayList<>();
        byCorner.forEach((corner, here) -> {
            Upshift worst = here.stream().max(Comparator.comparingDouble(size)).orElseThrow();
            proofs.add(new Proof(
                    corner,
                    here.stream().map(Upshift::lap).distinct().sorted().toList(),
                    worst.lap(),
                    size.applyAsDouble(worst)));
        });
        return Optional.of(new DrivingFault(
                kind,
                proofs.stream().map(Proof::corner).toList(),
                showing.size() / (double) seen,
                Robust.median(showing.stream().mapToDouble(size).toArray()),
                unit,
                proofs,
                Optional.empty(),
                false));
    }

    private static int cornerBefore(Stint stint, double stationM) {
        List<Corner> corners = stint.circuit().corners();
        return corners.stream()
                .filter(corner -> corner.apexM() <= stationM)
                .max(Comparator.comparingDouble(Corner::apexM))
                .or(() -> corners.stream().max(Comparator.comparingDouble(Corner::apexM)))
                .map(Corner::number)
                .orElse(1);
    }
}
