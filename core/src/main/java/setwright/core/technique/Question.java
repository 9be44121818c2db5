package setwright.core.technique;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Finding;
import setwright.core.technique.TechniqueLever.Response;

/**
 * Does this lever move that problem? With what the passes say.
 *
 * @param rank       of the finding, from 1; 0 for a fault of the driving
 * @param lever      asked for
 * @param direction  that can cure it
 * @param response   what is held against the lever
 * @param firstStep  against a fault of the driving, by the fault itself
 * @param corners    corner by corner
 * @param slope      found; empty where no corner could tell
 */
record Question(
        int rank,
        Optional<Finding> finding,
        Optional<DrivingFault> fault,
        Lever lever,
        Direction direction,
        Response response,
        Optional<FirstStep> firstStep,
        List<Here> corners,
        Optional<PooledSlope> slope) {

    /** What is to be cured. */
    record Problem(
            int rank,
            Optional<Finding> finding,
            Optional<DrivingFault> fault,
            Response response,
            Optional<FirstStep> firstStep,
            List<Integer> corners,
            ToDoubleFunction<CornerPass> size) {}

    /** One corner: lap numbers, the lever's values and the problem's sizes, pass by pass. */
    @SuppressWarnings("ArrayRecordComponent") // only this package reads them
    record Here(int corner, double[] laps, double[] values, double[] sizes) {}

    static Question ask(Problem problem, Lever lever, Direction direction, Stint stint, List<CornerPass> passes) {
        Map<Integer, List<CornerPass>> byCorner = passes.stream()
                .filter(pass -> problem.corners().contains(pass.corner()))
                .collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        List<Here> corners = new ArrayList<>();
        List<CornerSlope> slopes = new ArrayList<>();
        for (Corner corner : stint.circuit().corners()) {
            List<CornerPass> here = byCorner.getOrDefault(corner.number(), List.of());
            if (here.isEmpty()) {
                continue;
            }
            Here found = new Here(
                    corner.number(),
                    here.stream().mapToDouble(CornerPass::lap).toArray(),
                    LeverValues.of(lever, corner, here),
                    here.stream().mapToDouble(problem.size()).toArray());
            corners.add(found);
            CornerSlope.of(found.corner(), found.laps(), found.values(), found.sizes())
                    .ifPresent(slopes::add);
        }
        return new Question(
                problem.rank(),
                problem.finding(),
                problem.fault(),
                lever,
                direction,
                problem.response(),
                problem.firstStep(),
                corners,
                slopes.isEmpty() ? Optional.empty() : Optional.of(PooledSlope.of(slopes)));
    }

    double pValue() {
        return slope.map(found -> found.pValue(direction)).orElse(1.0);
    }

    /** +1 when more of the lever cures, -1 when less does. */
    double side() {
        return switch (direction) {
            case MORE -> 1.0;
            case LESS -> -1.0;
            case EITHER, NONE -> slope.map(found -> -Math.signum(found.slope())).orElse(0.0);
        };
    }
}
