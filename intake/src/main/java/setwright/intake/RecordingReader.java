package setwright.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.numerics.LocalPolynomial;
import setwright.core.recording.Calibration;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.calibrate.Bench;
import setwright.intake.calibrate.Calibrator;
import setwright.intake.gather.Gatherer;
import setwright.intake.gather.RecordingFiles;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.MapProposer;
import setwright.intake.map.Proposal;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;

/** Reads a file into a calibrated recording on a uniform time base. */
public final class RecordingReader {
    /** Short enough to keep a brake application, long enough to beat the noise of a speed signal, s. */
    private static final double DERIVATIVE_WINDOW_S = 0.4;

    private RecordingReader() {}

    /**
     * Reads a recording.
     *
     * @param files  of any kind that {@link setwright.intake.source.Formats} knows
     * @param map   which column is what; proposed when empty
     * @param car   for wheelbase, steering ratio, tyre radius and brake pressure, when known
     * @throws InputProblem when the file cannot be used, or the map contradicts the data
     */
    public static Intake read(RecordingFiles files, Optional<ChannelMap> map, Optional<CarSheet> car) {
        return read(Gatherer.read(files), map, car);
    }

    /** Turns a table into a recording. */
    static Intake read(Table table, Optional<ChannelMap> map, Optional<CarSheet> car) {
        Proposal proposal =
                map.isPresent() ? MapProposer.check(table, map.get(), car) : MapProposer.propose(table, car);
        return read(table, proposal, car);
    }

    /** Reads a recording that is one file. */
    public static Intake read(Path file, Optional<ChannelMap> map, Optional<CarSheet> car) {
        return read(RecordingFiles.of(file), map, car);
    }

    /** Turns a table into a recording by a map that has been proposed or checked. */
    static Intake read(Table table, Proposal proposal, Optional<CarSheet> car) {
        Requirements.check(table, proposal);
        Requirements.checkSize(table, proposal.map());
        double[] timesS = MapProposer.timesS(table, proposal.map());
        Requirements.checkLapCounter(table, proposal.map(), timesS);
        List<String> remarks = new ArrayList<>(proposal.remarks());
        TimeBase base = ColumnReader.base(table, proposal.map(), timesS);
        ColumnReader columns = new ColumnReader(table, proposal.map(), base, car);
        Map<Quantity, double[]> channels = columns.read();
        remarks.addAll(columns.remarks());
        project(channels);
        Bench bench = new Bench(base.rateHz(), channels);
        Calibrator.run(bench);
        remarks.addAll(bench.remarks());
        if (base.rateHz() < base.nativeHz()) {
            remarks.add(String.format(
                    java.util.Locale.ROOT,
                    "Recorded at %.4g Hz, kept at %.4g Hz behind an anti-alias filter.",
                    base.nativeHz(),
                    base.rateHz()));
        }
        Map<Quantity, double[]> done = new EnumMap<>(bench.channels());
        derive(done, base.rateHz(), remarks);
        List<Calibration> calibrations = new ArrayList<>(columns.calibrations());
        calibrations.addAll(bench.calibrations());
        Map<Quantity, Channel> held = new EnumMap<>(Quantity.class);
        done.forEach((quantity, samples) -> held.put(quantity, Channel.holding(samples)));
        return new Intake(new Recording(table.file(), base.rateHz(), held, calibrations), proposal, remarks);
    }

    private static void project(Map<Quantity, double[]> channels) {
        double[] latitude = channels.get(Quantity.LATITUDE);
        double[] longitude = channels.get(Quantity.LONGITUDE);
        if (latitude != null && longitude != null && !channels.containsKey(Quantity.POSITION_X)) {
            LocalPlane plane = LocalPlane.of(latitude, longitude);
            channels.put(Quantity.POSITION_X, plane.eastM());
            channels.put(Quantity.POSITION_Y, plane.northM());
        }
    }

    private static void derive(Map<Quantity, double[]> channels, double rateHz, List<String> remarks) {
        double[] speed = channels.get(Quantity.SPEED);
        if (!channels.containsKey(Quantity.LONGITUDINAL_ACCELERATION) && speed != null) {
            double[] rise = LocalPolynomial.quadraticOver(DERIVATIVE_WINDOW_S, 1.0 / rateHz)
                    .derivative(speed, 1.0 / rateHz);
            channels.put(Quantity.LONGITUDINAL_ACCELERATION, rise);
            remarks.add(
                    "The longitudinal acceleration is the rate of change of the speed, because none was recorded that"
                            + " could be used.");
        }
    }
}
