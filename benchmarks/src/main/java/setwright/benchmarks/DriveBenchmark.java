package setwright.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import setwright.benchmarks.laps.LearntDriver;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.driver.DriverScatter;
import setwright.core.simulation.driver.StintSimulator;

/**
 * The whole car in time with its driver: milliseconds for a second of driving, on one core. Below 50 is twenty times faster than real
 * time.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DriveBenchmark {
    /** Seconds that are driven at least; the run goes on to the end of its lap. */
    static final int SECONDS = 300;

    private StintSimulator driver;
    private int laps;

    /** Lets the driver learn a car on a circuit, and counts how many laps the seconds are. */
    @Setup
    public void learn() {
        driver = LearntDriver.learn();
        double lap = driver.drive(DriverScatter.NONE, 1, 1L).lapsS().get(1);
        laps = (int) Math.ceil(SECONDS / lap);
    }

    /** Drives {@link #SECONDS} and a little more, so that the figure errs to the slow side. */
    @Benchmark
    @OperationsPerInvocation(SECONDS)
    public DrivenStint driven() {
        return driver.drive(DriverScatter.NONE, laps, 1L);
    }
}
