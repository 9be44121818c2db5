package setwright.benchmarks.table;

import setwright.benchmarks.laps.TenLaps;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarPrior;
import setwright.core.circuit.ReferenceLine;
import setwright.core.limit.Envelope;
import setwright.core.limit.LapSimulator;

/** Laps of the practice recording's own circuit, simulated; nothing to compare them with. */
final class LapPair implements Pair {
    private static final int LAPS = 100;

    private final Envelope envelope;
    private final ReferenceLine line;

    LapPair() {
        TenLaps laps = TenLaps.read();
        envelope = Envelope.of(
                new CarAssembler(laps.sheet()).build(CarPrior.of(laps.sheet()).middle()));
        line = laps.stint().circuit().line();
    }

    @Override
    public int oursAtOnce() {
        return LAPS;
    }

    @Override
    public void ours() {
        double total = 0.0;
        for (int i = 0; i < LAPS; i++) {
            total += LapSimulator.lap(envelope, line).timeS();
        }
        if (!(total > 0.0)) {
            throw new IllegalStateException("laps took no time");
        }
    }

    @Override
    public void reference() {}
}
