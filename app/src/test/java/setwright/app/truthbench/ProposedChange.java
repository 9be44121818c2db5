package setwright.app.truthbench;

import java.util.Optional;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.limit.Envelope;
import setwright.core.limit.LapSimulator;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.proposal.Proposer;
import setwright.core.replay.Effect;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.truth.BalanceTable;
import setwright.core.simulation.truth.FlyingLaps;
import setwright.core.simulation.truth.TruePrice;

/**
 * The change that the program proposes, and what it really does.
 *
 * @param words        what is turned
 * @param balance      that it should cure
 * @param predictedS   change of the lap time, s
 * @param predicted    change of the balance that was found wrong, rad
 * @param lost         whether the driver loses the car with it
 * @param drivenS      lap with less lap without, the same driver learning it anew, s; NaN when lost
 * @param limitS       the same at the limit, without a driver, s
 * @param lapS         lap without, s
 * @param balanceRad   true change of the balance that was found wrong, rad; empty when lost or too short to say
 * @param errorRad     its standard error over the laps, rad
 */
record ProposedChange(
        String words,
        BalanceSign balance,
        Effect predictedS,
        Effect predicted,
        boolean lost,
        TruePrice drivenS,
        double limitS,
        double lapS,
        Optional<Double> balanceRad,
        double errorRad) {
    /** Of two laps at the limit, from the accuracy of their limits (docs/performance.md, twice the root mean square), s. */
    private static final double SAME_S = 0.028;

    private static final double HARM_SHARE = 0.001;
    /** Standard errors that a driven difference may be off by chance. */
    private static final double SURE = 2.0;
    /** Of a normal quantity, to either side of an 80 % interval, as the prediction's. */
    private static final double EIGHTY = 1.28;

    private static final double LEAST_S = 0.25;

    /** Asks for a proposal and tries it; empty when there is none. */
    static Optional<ProposedChange> of(Driven driven, CaseTruth truth, CaseAnswer answer) {
        if (answer.diagnosis().isEmpty()) {
            return Optional.empty();
        }
        Proposal proposal =
                Proposer.propose(answer.diagnosis().get(), answer.sheet().orElseThrow());
        return proposal.chosen()
                .map(chosen -> tried(driven, truth, chosen, proposal.target().orElseThrow()));
    }

    private static ProposedChange tried(Driven driven, CaseTruth truth, Candidate chosen, Finding target) {
        Envelope present = Envelope.of(driven.faulty());
        Envelope changed = Envelope.of(driven.with(chosen.turn().change()), present);
        double lap = LapSimulator.lap(present, driven.line()).timeS();
        double limit = LapSimulator.lap(changed, driven.line()).timeS() - lap;
        DrivenStint again = driven.again(driven.with(chosen.turn().change()));
        boolean lost = again.lost().isPresent();
        BalanceTable before = truth.recorded();
        Optional<BalanceTable.Cell> was = cell(before, target);
        Optional<BalanceTable.Cell> is = lost
                ? Optional.empty()
                : cell(BalanceTable.of(before.map(), again.history(), FlyingLaps.clean(again.lapsS())), target);
        return new ProposedChange(
                chosen.turn().change().toString(),
                target.balance(),
                chosen.prediction().lapTimeS(),
                chosen.target(),
                lost,
                lost
                        ? new TruePrice(Double.NaN, Double.NaN)
                        : TruePrice.of(again.lapsS(), driven.recorded().lapsS()),
                limit,
                lap,
                was.flatMap(cell -> is.map(other -> other.balanceRad() - cell.balanceRad())),
                was.flatMap(cell -> is.map(other -> Math.hypot(other.errorRad(), cell.errorRad())))
                        .orElse(Double.NaN));
    }

    private static Optional<BalanceTable.Cell> cell(BalanceTable table, Finding target) {
        return table.cell(target.phase(), corner -> target.speed().takes(corner.speed()))
                .filter(cell -> cell.timeS() >= LEAST_S);
    }

    /** Tells whether the driver is not slower with it, as far as his laps can tell. */
    boolean notSlowerDriven() {
        return !lost && drivenS.seconds() <= SURE * drivenS.errorS();
    }

    /** Tells whether the driver is slower with it by more than a thousandth, and not by chance; or loses the car. */
    boolean harmfulDriven() {
        return lost || drivenS.seconds() > Math.max(HARM_SHARE * lapS, SURE * drivenS.errorS());
    }

    boolean notSlowerAtTheLimit() {
        return limitS <= SAME_S;
    }

    boolean harmfulAtTheLimit() {
        return limitS > HARM_SHARE * lapS;
    }

    boolean intervalHoldsDriven() {
        double error = EIGHTY * drivenS.errorS();
        return !lost && drivenS.seconds() >= predictedS.low() - error && drivenS.seconds() <= predictedS.high() + error;
    }

    boolean intervalHoldsLimit() {
        return limitS >= predictedS.low() - SAME_S && limitS <= predictedS.high() + SAME_S;
    }

    /** Tells whether the true change of balance is clear of chance. */
    boolean balanceClear() {
        return balanceRad.filter(rad -> Math.abs(rad) > SURE * errorRad).isPresent();
    }

    boolean cures() {
        return balanceRad.filter(rad -> rad * balance.direction() < 0.0).isPresent();
    }

    boolean intervalHoldsBalance() {
        double error = EIGHTY * errorRad;
        return balanceRad
                .filter(rad -> rad >= predicted.low() - error && rad <= predicted.high() + error)
                .isPresent();
    }
}
