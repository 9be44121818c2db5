package setwright.benchmarks;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import setwright.core.car.CarSheet;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.recording.Recording;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/** The whole diagnosis, from the bytes of a file of 40 columns at 100 rows a second to the answer, by the number of laps. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DiagnosisBenchmark {
    /** Laps after the out lap. */
    @Param({"3", "10", "30"})
    public int laps;

    private Path file;
    private Path sheet;

    /** Finds the files; reads nothing, so that a first run is a first run. */
    @Setup
    public void find() {
        file = WrittenLaps.file(Path.of(System.getProperty(WrittenLaps.FOLDER, ".")), laps);
        sheet = TenLaps.folder().resolve("car.yaml");
    }

    /** What ./setwright diagnose does between its start and its words. */
    @Benchmark
    public Diagnosis whole() {
        CarSheet car = CarSheetReader.read(sheet);
        return Diagnostician.diagnose(StintBuilder.build(recording(car)), car);
    }

    /** The part of it that reads and understands the file. */
    @Benchmark
    public Recording read() {
        return recording(CarSheetReader.read(sheet));
    }

    private Recording recording(CarSheet car) {
        return RecordingReader.read(file, Optional.empty(), Optional.of(car)).recording();
    }
}
