package setwright.app.truthbench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.judgement.SpeedRange;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.truth.BalanceTable;
import setwright.core.simulation.truth.FlyingLaps;
import setwright.core.simulation.truth.PhaseMap;
import setwright.core.simulation.truth.ProblemLabeller;
import setwright.core.simulation.truth.TriggerWitness;
import setwright.core.simulation.truth.TriggerWitness.Moment;
import setwright.core.simulation.truth.TrueDriving;
import setwright.core.simulation.truth.TruePrice;
import setwright.core.simulation.truth.TrueProblem;
import setwright.core.simulation.truth.TrueTrigger;

/**
 * What is really going on in a case.
 *
 * @param driving    how steady it was
 * @param recorded   balance of the recorded stint
 * @param without    balance without the fault; the same without a fault
 * @param problem    what the fault does; empty without one
 * @param days       how the recorded stint differs from a day without the fault, measured without error; empty without such a day
 * @param price      what it costs; empty without one
 * @param witnesses  what the corners say about the trigger
 */
record CaseTruth(
        TrueDriving driving,
        BalanceTable recorded,
        BalanceTable without,
        Optional<TrueProblem> problem,
        Optional<TrueProblem> days,
        Optional<TruePrice> price,
        Map<Moment, Integer> witnesses) {

    static CaseTruth of(Driven driven, Optional<DrivenStint> goodDay) {
        List<Integer> laps = FlyingLaps.clean(driven.recorded().lapsS());
        List<Integer> lapsWithout = FlyingLaps.clean(driven.without().lapsS());
        PhaseMap map = PhaseMap.of(driven.line(), driven.recorded().history(), laps);
        BalanceTable recorded = BalanceTable.of(map, driven.recorded().history(), laps);
        BalanceTable without = BalanceTable.of(map, driven.without().history(), lapsWithout);
        TrueDriving driving = TrueDriving.of(driven.recorded().lapsS());
        boolean compares = driven.without() != driven.recorded();
        Optional<TrueProblem> problem = compares ? ProblemLabeller.label(recorded, without) : Optional.empty();
        return new CaseTruth(
                driving,
                recorded,
                without,
                problem,
                goodDay.flatMap(good -> ProblemLabeller.label(
                        recorded, BalanceTable.of(map, good.history(), FlyingLaps.clean(good.lapsS())))),
                compares
                        ? Optional.of(TruePrice.of(
                                driven.recorded().lapsS(), driven.without().lapsS()))
                        : Optional.empty(),
                problem.map(found -> TriggerWitness.ask(
                                map,
                                driven.recorded().history(),
                                laps,
                                driven.without().history(),
                                lapsWithout,
                                found))
                        .orElse(Map.of()));
    }

    /**
     * Returns the trigger that is to be named. What wings do is asked for in the fast corners where the truth lies there; where it
     * calls for all corners, or the slow ones, a finding cannot have both names, and it is as steady as what tyres do.
     */
    TrueTrigger named(TrueTrigger mechanism) {
        return named(mechanism, problem);
    }

    static TrueTrigger named(TrueTrigger mechanism, Optional<TrueProblem> problem) {
        boolean fast = problem.filter(found -> found.speed() == SpeedRange.HIGH).isPresent();
        return mechanism == TrueTrigger.SPEED && !fast ? TrueTrigger.STEADY : mechanism;
    }
}
