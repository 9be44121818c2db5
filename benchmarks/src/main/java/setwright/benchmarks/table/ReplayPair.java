package setwright.benchmarks.table;

import java.util.List;
import setwright.benchmarks.laps.TenLaps;
import setwright.core.car.SetupChange;
import setwright.core.identification.Identifier;
import setwright.core.identification.TracedStint;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.replay.Predictor;

/** Replay of ten laps with many candidate changes, against their diagnosis. */
final class ReplayPair implements Pair {
    private static final int CANDIDATES = 40;

    private final TenLaps laps = TenLaps.read();
    private final List<List<SetupChange>> candidates = laps.candidates(CANDIDATES);
    private final Predictor predictor;

    ReplayPair() {
        Diagnosis diagnosis = Diagnostician.diagnose(laps.stint(), laps.sheet());
        List<TracedStint> traced = List.of(new TracedStint(diagnosis.stint(), diagnosis.trace(), diagnosis.passes()));
        predictor = Predictor.of(
                diagnosis.stint(),
                diagnosis.trace(),
                diagnosis.passes(),
                laps.sheet(),
                Identifier.identify(traced, laps.sheet()).belief());
    }

    @Override
    public int oursAtOnce() {
        return CANDIDATES;
    }

    @Override
    public void ours() {
        predictor.predict(candidates);
    }

    @Override
    public void reference() {
        Diagnostician.diagnose(laps.stint(), laps.sheet());
    }
}
