package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import setwright.core.circuit.Corner;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Diagnosis;
import setwright.core.simulation.truth.BalanceTable;
import setwright.core.simulation.truth.CornerPhases;

/**
 * The balance of one phase of one corner as measured and as it is, means over laps, rad.
 *
 * @param phase        of the corner
 * @param speed        class of the corner, true
 * @param measured     balance angle
 * @param excess       beyond the reference of the judgement
 * @param truth        balance angle
 * @param difference   true, against the car without its fault
 * @param lateralMps2  mean lateral acceleration
 */
record BalancePair(
        Phase phase,
        SpeedClass speed,
        double measured,
        double excess,
        double truth,
        double difference,
        double lateralMps2) {

    static List<BalancePair> of(Diagnosis diagnosis, CaseTruth truth) {
        List<BalancePair> pairs = new ArrayList<>();
        double scale = truth.recorded().map().lengthM()
                / diagnosis.stint().circuit().line().lengthM();
        for (Corner found : diagnosis.stint().circuit().corners()) {
            for (Phase phase : Phase.values()) {
                corner(found, scale, truth)
                        .flatMap(real -> pair(diagnosis, found, real, phase, truth))
                        .ifPresent(pairs::add);
            }
        }
        return pairs;
    }

    /** The true corner that the apex of a found one lies in. */
    private static Optional<CornerPhases> corner(Corner found, double scale, CaseTruth truth) {
        double apex = found.apexM() * scale;
        double length = truth.recorded().map().lengthM();
        return truth.recorded().map().corners().stream()
                .filter(real -> real.corner().direction() == found.direction())
                .filter(real -> within(real.corner(), apex) || within(real.corner(), apex - length))
                .findFirst();
    }

    private static boolean within(Corner real, double station) {
        return station >= real.turnInM() && station <= real.turnOutM();
    }

    private static Optional<BalancePair> pair(
            Diagnosis diagnosis, Corner found, CornerPhases real, Phase phase, CaseTruth truth) {
        int number = real.corner().number();
        Optional<BalanceTable.Cell> cell = truth.recorded().cell(phase, number);
        double measured = mean(diagnosis, found, phase, PhaseBalance::balanceRad);
        double excess = mean(diagnosis, found, phase, PhaseBalance::excessRad);
        if (cell.isEmpty() || Double.isNaN(measured) || Double.isNaN(excess)) {
            return Optional.empty();
        }
        double without = truth.without()
                .cell(phase, number)
                .map(BalanceTable.Cell::balanceRad)
                .orElse(Double.NaN);
        return Optional.of(new BalancePair(
                phase,
                real.speed(),
                measured,
                excess,
                cell.get().balanceRad(),
                cell.get().balanceRad() - without,
                cell.get().lateralMps2()));
    }

    /** Weighted with lateral acceleration and time, as the truth is. */
    private static double mean(Diagnosis diagnosis, Corner corner, Phase phase, ToDoubleFunction<PhaseBalance> angle) {
        double sum = 0.0;
        double weights = 0.0;
        for (CornerPass pass : diagnosis.passes()) {
            Optional<PhaseBalance> balance = pass.corner() == corner.number() ? pass.phase(phase) : Optional.empty();
            if (balance.isPresent() && Double.isFinite(angle.applyAsDouble(balance.get()))) {
                double weight =
                        Math.abs(balance.get().lateralMps2()) * balance.get().timeS();
                sum += weight * angle.applyAsDouble(balance.get());
                weights += weight;
            }
        }
        return weights > 0.0 ? sum / weights : Double.NaN;
    }
}
