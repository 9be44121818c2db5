package setwright.app.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import setwright.core.baseline.Baseline;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.Slide;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.TimeSince;
import setwright.core.judgement.TimeSince.Difference;

/**
 * Balance by corner and phase, over the judged laps.
 *
 * @param rows         one per corner that was driven, in driving order
 * @param yardstickRad what one typical setup change does to the balance, rad: what sizes are compared with
 * @param baseline     name of the laps that they are held against; empty where that is a reckoned car
 * @param since        by corner, what it takes more than in the baseline with the straight after it; empty without one
 */
public record BalanceTable(
        List<Row> rows, double yardstickRad, Optional<String> baseline, Map<Integer, Difference> since) {
    /** Used where the diagnosis has no yardstick of its own, rad: common practice, about one step of a bar. */
    private static final double USUAL_YARDSTICK_RAD = Math.toRadians(0.15);

    public BalanceTable {
        rows = List.copyOf(rows);
        since = Map.copyOf(since);
    }

    /**
     * One corner.
     *
     * @param corner          on the circuit
     * @param speedClass      of most passes
     * @param lowestSpeedMps  median over the laps, m/s
     * @param timeS           median time in the corner, s
     * @param repeatable      whether the car is judged here
     * @param passes          judged passes, in lap order
     * @param cells           by phase; a phase that did not occur is absent
     */
    public record Row(
            Corner corner,
            SpeedClass speedClass,
            double lowestSpeedMps,
            double timeS,
            boolean repeatable,
            List<CornerPass> passes,
            Map<Phase, Cell> cells) {
        public Row {
            passes = List.copyOf(passes);
            cells = Map.copyOf(cells);
        }

        /** Returns the cell of a phase, when it occurred. */
        public Optional<Cell> cell(Phase phase) {
            return Optional.ofNullable(cells.get(phase));
        }

        /** Returns the cell whose evident imbalance is largest. */
        public Optional<Cell> worst() {
            return cells.values().stream()
                    .filter(Cell::evident)
                    .max(Comparator.comparingDouble(
                            cell -> Math.abs(cell.excess().median())));
        }
    }

    /**
     * One phase of one corner.
     *
     * @param phase    which
     * @param excess   balance against the balanced car, rad; positive: understeer
     * @param fromM    where it usually begins, m along the reference line, unwrapped
     * @param toM      where it usually ends, m
     * @param timeS    median time spent in it, s
     * @param frontSlides  passes in which the front axle let go in it
     * @param rearSlides   passes in which the rear axle let go in it
     */
    public record Cell(
            Phase phase, Spread excess, double fromM, double toM, double timeS, int frontSlides, int rearSlides) {
        /** Tells whether these laps show the sign of the imbalance beyond chance. */
        public boolean evident() {
            return excess.clearOfZero();
        }
    }

    /** Draws the table from a diagnosis. */
    public static BalanceTable of(Diagnosis diagnosis) {
        Set<Integer> good =
                diagnosis.stint().goodLaps().stream().map(Lap::number).collect(Collectors.toSet());
        List<Row> rows = new ArrayList<>();
        List<CornerPass> told = ToldHands.of(diagnosis);
        for (Corner corner : diagnosis.stint().circuit().corners()) {
            List<CornerPass> passes = told.stream()
                    .filter(pass -> pass.corner() == corner.number() && good.contains(pass.lap()))
                    .sorted(Comparator.comparingInt(CornerPass::lap))
                    .toList();
            if (!passes.isEmpty()) {
                boolean repeatable = diagnosis
                        .repeatability()
                        .at(corner.number())
                        .map(entry -> entry.repeatable())
                        .orElse(true);
                rows.add(row(corner, passes, repeatable));
            }
        }
        double step = diagnosis.repeatability().stepBalanceRad();
        return new BalanceTable(
                rows,
                step > 0.0 && Double.isFinite(step) ? step : USUAL_YARDSTICK_RAD,
                diagnosis.grounds().baseline().map(Baseline::name),
                diagnosis.grounds().time().map(TimeSince::corners).orElse(Map.of()));
    }

    /** Returns what balances are held against, in words. */
    public String against() {
        return baseline.map(name -> "the baseline, " + name).orElse("a balanced car of the same dimensions");
    }

    /** Returns what a corner takes more than in the baseline, with the straight after it. */
    public Optional<Difference> since(Row row) {
        return Optional.ofNullable(since.get(row.corner().number()));
    }

    /** Returns the row of a corner. */
    public Optional<Row> row(int corner) {
        return rows.stream().filter(row -> row.corner().number() == corner).findFirst();
    }

    /** Returns the corner whose evident imbalance is largest, else the first. */
    public Optional<Row> worstRow() {
        return rows.stream()
                .max(Comparator.comparingDouble(row -> row.worst()
                        .map(cell -> Math.abs(cell.excess().median()))
                        .orElse(0.0)));
    }

    private static Row row(Corner corner, List<CornerPass> passes, boolean repeatable) {
        Map<Phase, Cell> cells = new EnumMap<>(Phase.class);
        for (Phase phase : Phase.values()) {
            List<PhaseBalance> balances =
                    passes.stream().flatMap(pass -> pass.phase(phase).stream()).toList();
            if (!balances.isEmpty()) {
                cells.put(
                        phase,
                        new Cell(
                                phase,
                                Spread.of(balances.stream()
                                        .mapToDouble(PhaseBalance::excessRad)
                                        .toArray()),
                                median(balances.stream()
                                        .mapToDouble(PhaseBalance::fromM)
                                        .toArray()),
                                median(balances.stream()
                                        .mapToDouble(PhaseBalance::toM)
                                        .toArray()),
                                median(balances.stream()
                                        .mapToDouble(PhaseBalance::timeS)
                                        .toArray()),
                                slides(passes, Slide.Axle.FRONT, phase),
                                slides(passes, Slide.Axle.REAR, phase)));
            }
        }
        SpeedClass speedClass = passes.stream()
                .collect(Collectors.groupingBy(CornerPass::speedClass, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(SpeedClass.MEDIUM);
        return new Row(
                corner,
                speedClass,
                median(passes.stream().mapToDouble(CornerPass::lowestSpeedMps).toArray()),
                median(passes.stream().mapToDouble(CornerPass::timeS).toArray()),
                repeatable,
                passes,
                cells);
    }

    private static int slides(List<CornerPass> passes, Slide.Axle axle, Phase phase) {
        return (int) passes.stream().filter(pass -> pass.slides(axle, phase)).count();
    }

    private static double median(double[] values) {
        return Spread.of(values).median();
    }
}
