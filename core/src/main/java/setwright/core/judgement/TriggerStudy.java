package setwright.core.judgement;

import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.identification.TracedStint;
import setwright.core.replay.DrivenLap;
import setwright.core.replay.GripWorth;
import setwright.core.replay.Predictor;
import setwright.core.standing.SetupStanding;

/** The evidence for a trigger by itself, for fitting how much each witness counts. */
public final class TriggerStudy {
    private TriggerStudy() {}

    /**
     * Returns what speaks for the triggers of the largest level of balance, however probable that is.
     *
     * @return empty without corners to judge by
     */
    public static Optional<TriggerEvidence> ofLargestLevel(Stint stint, CarSheet sheet) {
        HandlingTrace trace = HandlingTracer.trace(stint, sheet);
        List<CornerPass> passes = CornerPasses.of(stint, trace, sheet);
        List<DrivenLap> driven = DrivenLap.of(stint, trace, passes);
        SetupStanding standing = Diagnostician.car(
                        new TracedStint(stint, trace, passes), driven, sheet, Optional.empty())
                .map(belief -> SetupStanding.of(sheet, Predictor.of(stint, trace, passes, driven, sheet, belief)))
                .orElse(SetupStanding.unknown());
        BalanceBelief belief = BalanceBelief.of(passes, standing);
        TriggerJudge triggers = new TriggerJudge(passes, belief, standing, FeetSince.NONE, sheet.drivenAxle());
        PriceEstimator prices = new PriceEstimator(passes, belief, standing, GripWorth.of(stint, driven, sheet));
        return LevelPattern.find(passes, belief, standing, triggers, prices)
                .map(found -> triggers.ofLevel(found.phase(), found.speed(), found.balance()));
    }
}
