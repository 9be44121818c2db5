package setwright.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import setwright.core.recording.Quantity;
import setwright.core.simulation.driver.DriverScatter;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.logger.ChannelSet;
import setwright.core.simulation.logger.LoggedColumn;
import setwright.core.simulation.logger.LoggedTable;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.logger.LoggerPlan;

/**
 * Recordings of one drive, cut after 3, 10 and 30 laps: 100 rows a second of 40 columns, as a good logger keeps them. Columns that
 * the simulation has not (temperatures, pressures) are filled with noise; nothing reads them, but they stand in the file.
 */
final class WrittenLaps {
    static final List<Integer> LAPS = List.of(3, 10, 30);
    /** Folder of the files; the command sets it for the processes that measure. */
    static final String FOLDER = "setwright.recordings";

    static final int COLUMNS = 40;
    private static final double RATE_HZ = 100.0;
    private static final double NOISE = 0.05;

    private WrittenLaps() {}

    static Path file(Path folder, int laps) {
        return folder.resolve("laps-" + laps + ".csv");
    }

    /** Drives the longest of them and writes all. */
    static void write(Path folder, List<Integer> counts) {
        int most = counts.stream().mapToInt(Integer::intValue).max().orElseThrow();
        LoggerPlan good = LoggerPlan.good(1L, RATE_HZ);
        LoggerPlan plan = new LoggerPlan(
                1L,
                RATE_HZ,
                ChannelSet.FULL,
                good.place(),
                good.satellites(),
                good.noiseScale(),
                good.errors(),
                good.dropOuts(),
                good.lag(),
                good.layout());
        DriverScatter scatter = DriverStyle.good().scatter();
        LoggedTable table = Logger.log(
                DriveBenchmark.learnt().drive(scatter, most, 1L).history(),
                TenLaps.read().sheet(),
                plan);
        try {
            for (int laps : counts) {
                write(file(folder, laps), table, laps);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The out lap and so many after it. */
    private static void write(Path file, LoggedTable table, int laps) throws IOException {
        Random random = new Random(1L);
        LoggedColumn number = table.column(Quantity.LAP_NUMBER).orElseThrow();
        int spare = COLUMNS - table.columns().size();
        try (Writer out = Files.newBufferedWriter(file)) {
            StringBuilder row = new StringBuilder();
            for (LoggedColumn column : table.columns()) {
                row.append(row.isEmpty() ? "" : ",").append(column.name());
                row.append(" [").append(column.unit().symbol()).append(']');
            }
            for (int i = 1; i <= spare; i++) {
                row.append(",spare temperature ").append(i).append(" [C]");
            }
            out.append(row).append('\n');
            for (int i = 0; i < table.rowCount() && number.get(i) <= laps + 1; i++) {
                row.setLength(0);
                for (LoggedColumn column : table.columns()) {
                    row.append(row.isEmpty() ? "" : ",")
                            .append(String.format(Locale.ROOT, "%." + column.decimals() + "f", column.get(i)));
                }
                for (int k = 0; k < spare; k++) {
                    row.append(',').append(Math.round(100.0 * (80.0 + NOISE * random.nextGaussian())) / 100.0);
                }
                out.append(row).append('\n');
            }
        }
    }
}
