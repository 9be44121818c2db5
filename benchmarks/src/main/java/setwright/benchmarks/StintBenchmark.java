package setwright.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import setwright.benchmarks.laps.TenLaps;
import setwright.core.car.SetupChange;
import setwright.core.identification.FittedCar;
import setwright.core.identification.Identifier;
import setwright.core.identification.TracedStint;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.replay.Prediction;
import setwright.core.replay.Predictor;

/** What a person waits for after ten laps: the diagnosis, the car that fits them, and the effect of each candidate change. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class StintBenchmark {

    /** Number of candidate changes: all single steps of a sheet with twenty items. */
    @Param("40")
    public int candidates;

    private TenLaps laps;
    private List<TracedStint> traced;
    private Predictor predictor;
    private List<List<SetupChange>> changes;

    /** Takes what each measured part is handed by the part before it. */
    @Setup
    public void prepare() {
        laps = TenLaps.read();
        changes = laps.candidates(candidates);
        Diagnosis diagnosis = diagnose();
        traced = List.of(new TracedStint(diagnosis.stint(), diagnosis.trace(), diagnosis.passes()));
        predictor = Predictor.of(
                diagnosis.stint(),
                diagnosis.trace(),
                diagnosis.passes(),
                laps.sheet(),
                identify().belief());
    }

    @Benchmark
    public Diagnosis diagnose() {
        return Diagnostician.diagnose(laps.stint(), laps.sheet());
    }

    @Benchmark
    public FittedCar identify() {
        return Identifier.identify(traced, laps.sheet());
    }

    @Benchmark
    public List<Prediction> predict() {
        return predictor.predict(changes);
    }
}
