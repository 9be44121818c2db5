package setwright.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import setwright.benchmarks.laps.TenLaps;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.ReferenceLine;
import setwright.core.limit.Envelope;
import setwright.core.limit.LapSimulator;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweepItem;
import setwright.core.simulation.sweep.Sweeper;

/** Quasi-steady laps: the envelope of a car, that of a neighbouring setup, a lap of 5 km at steps of 2 m, and 60 setups. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LapBenchmark {
    static final int SETUPS = 60;
    static final double LENGTH_M = 5000.0;
    private static final double STEP_M = 2.0;
    private static final int ENVELOPES = 10;
    private static final int LAPS = 100;
    /** Station of the apex, length and radius (left positive) of each corner, m. */
    private static final double[][] CORNERS = {
        {300, 120, 25}, {700, 60, -18}, {1100, 150, 60}, {1500, 200, -120}, {2000, 90, 15}, {2300, 90, -30},
        {2700, 180, 90}, {3200, 80, 12}, {3500, 150, -45}, {3900, 250, 200}, {4300, 100, 22}, {4600, 120, -35}
    };

    private CarModel present;
    private CarModel changed;
    private Envelope envelope;
    private ReferenceLine line;
    private Sweeper sweeper;
    private List<SweepItem> items;

    /** Reads the car and bends the line. */
    @Setup
    public void prepare() {
        CarSheet sheet = TenLaps.read().sheet();
        double[] parameters = CarPrior.of(sheet).middle();
        CarAssembler assembler = new CarAssembler(sheet);
        present = assembler.build(parameters);
        double bar = sheet.item("front_bar").orElseThrow().value();
        changed = assembler.build(sheet.with(List.of(new SetupChange("front_bar", bar, bar + 1.0))), parameters);
        envelope = Envelope.of(present);
        double[] curvature = curvature();
        double[] none = new double[curvature.length];
        line = new ReferenceLine(STEP_M, none, none, none, curvature);
        sweeper = new Sweeper(sheet, parameters, new Circuit("invented", line, List.of(), new Circuit.Unanchored()));
        items = List.of(
                new SweepItem(sheet.item("front_bar").orElseThrow(), List.of(1.0, 2.0, 3.0, 5.0, 7.0, 9.0)),
                new SweepItem(
                        sheet.item("rear_wing").orElseThrow(),
                        IntStream.rangeClosed(3, 12).mapToObj(Double::valueOf).toList()));
    }

    @Benchmark
    @OperationsPerInvocation(ENVELOPES)
    public void envelope(Blackhole hole) {
        for (int i = 0; i < ENVELOPES; i++) {
            hole.consume(Envelope.of(present));
        }
    }

    @Benchmark
    @OperationsPerInvocation(ENVELOPES)
    public void neighbour(Blackhole hole) {
        for (int i = 0; i < ENVELOPES; i++) {
            hole.consume(Envelope.of(changed, envelope));
        }
    }

    @Benchmark
    @OperationsPerInvocation(LAPS)
    public void lap(Blackhole hole) {
        for (int i = 0; i < LAPS; i++) {
            hole.consume(LapSimulator.lap(envelope, line));
        }
    }

    @Benchmark
    public SetupSweep sweep() {
        return sweeper.sweep(items, () -> {});
    }

    private static double[] curvature() {
        double[] curvature = new double[(int) Math.round(LENGTH_M / STEP_M)];
        for (double[] corner : CORNERS) {
            for (int i = 0; i < curvature.length; i++) {
                double away = Math.abs(i * STEP_M - corner[0]) / (0.5 * corner[1]);
                curvature[i] += away < 1.0 ? Math.pow(Math.cos(0.5 * Math.PI * away), 2) / corner[2] : 0.0;
            }
        }
        return curvature;
    }
}
