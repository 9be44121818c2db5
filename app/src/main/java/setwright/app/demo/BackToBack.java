package setwright.app.demo;

import java.util.List;

/**
 * Before, changed, before again.
 *
 * @param lapTimeS    changed less the mean of both before, s
 * @param balanceDeg  the same of the target's balance, deg; positive is the way that was wanted
 * @param driftS      second before less first before, s: what tyres, fuel and driver did meanwhile
 */
public record BackToBack(Difference lapTimeS, Difference balanceDeg, Difference driftS) {

    /** What to do with the change. */
    public enum Verdict {
        KEEP,
        UNDO,
        UNDECIDED
    }

    static BackToBack of(DemoStint before, DemoStint changed, DemoStint again, Target target) {
        List<List<Double>> times = List.of(before.lapTimesS(), changed.lapTimesS(), again.lapTimesS());
        List<List<Double>> balance =
                List.of(target.perLapDeg(before), target.perLapDeg(changed), target.perLapDeg(again));
        return new BackToBack(
                Difference.of(times, -0.5, 1.0, -0.5),
                Difference.of(balance, -0.5, 1.0, -0.5).times(target.wanted()),
                Difference.of(times, -1.0, 0.0, 1.0));
    }

    /** Returns the verdict: the mechanism must have moved as wanted, and the lap must not be slower. */
    public Verdict verdict() {
        if (lapTimeS.low() > 0.0 || balanceDeg.high() < 0.0) {
            return Verdict.UNDO;
        }
        boolean better = balanceDeg.low() > 0.0 || lapTimeS.high() < 0.0;
        return better && lapTimeS.value() <= 0.0 ? Verdict.KEEP : Verdict.UNDECIDED;
    }
}
