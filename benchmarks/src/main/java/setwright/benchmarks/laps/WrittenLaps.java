package setwright.benchmarks.laps;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.logger.ChannelSet;
import setwright.core.simulation.logger.LoggedColumn;
import setwright.core.simulation.logger.LoggedTable;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.logger.LoggerPlan;

/**
 * Files of one drive, as a good logger keeps them, cut after some laps. Columns that the simulation has not are filled with noise;
 * nothing reads them, but they stand in the file and must be told from the others.
 */
public final class WrittenLaps {
    private static final double NOISE = 0.05;
    private static final int TEMPERATURES = 15;
    private static final int BUFFER_BYTES = 1 << 20;

    private final DriveHistory drive;
    private final CarSheet sheet;
    private final int most;

    private WrittenLaps(DriveHistory drive, CarSheet sheet, int most) {
        this.drive = drive;
        this.sheet = sheet;
        this.most = most;
    }

    /**
     * Drives; the same laps whenever it is called.
     *
     * @param most  laps after the out lap
     */
    public static WrittenLaps drive(int most) {
        return new WrittenLaps(
                LearntDriver.learn()
                        .drive(DriverStyle.good().scatter(), most, 1L)
                        .history(),
                TenLaps.read().sheet(),
                most);
    }

    /** Writes the out lap and as many laps after it as the shape wants; returns the file. */
    public Path write(Path folder, FileShape shape) throws IOException {
        if (shape.laps() > most) {
            throw new IllegalArgumentException("only " + most + " laps were driven, not " + shape.laps());
        }
        Path file = folder.resolve(shape.fileName());
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), BUFFER_BYTES)) {
            rows(out, shape, Long.MAX_VALUE);
        }
        return file;
    }

    /**
     * Writes all laps of the drive again and again, time and lap number going on, until the file has its size: for reading only, as
     * the same laps come back.
     */
    public Path writeBytes(Path folder, long bytes) throws IOException {
        Path file = folder.resolve("laps-" + bytes / 1_000_000 + "mb.csv");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), BUFFER_BYTES)) {
            rows(out, FileShape.of(most), bytes);
        }
        return file;
    }

    private void rows(OutputStream to, FileShape shape, long bytes) throws IOException {
        LoggedTable table = Logger.log(drive, sheet, plan(shape, shape.channels()));
        // A small logger keeps no lap number; where laps end is the same in each.
        LoggedColumn number = table.column(Quantity.LAP_NUMBER)
                .or(() ->
                        Logger.log(drive, sheet, plan(shape, ChannelSet.USUAL)).column(Quantity.LAP_NUMBER))
                .orElseThrow();
        int spare = shape.columns() - table.columns().size();
        Random random = new Random(1L);
        Counted out = new Counted(to);
        CellText cells = new CellText(out);
        header(cells, table, spare);
        int end = end(number, 0, shape.laps() + 1);
        // Later rounds leave out the out lap; they begin where the first lap did.
        int first = end(number, 0, (int) number.get(0));
        double shiftS = 0.0;
        double shiftLaps = 0.0;
        for (int row = 0; out.written < bytes; row++) {
            if (row == end) {
                if (bytes == Long.MAX_VALUE) {
                    break;
                }
                row = first;
                shiftS += (end - first) / shape.rateHz();
                shiftLaps += number.get(end - 1) - number.get(first) + 1.0;
            }
            row(cells, table, row, shiftS, shiftLaps);
            for (int k = 0; k < spare; k++) {
                cells.mark(',');
                spare(cells, k, random);
            }
            cells.mark('\n');
        }
    }

    private static int end(LoggedColumn number, int from, int lap) {
        int end = from;
        while (end < number.size() && number.get(end) <= lap) {
            end++;
        }
        return end;
    }

    private static LoggerPlan plan(FileShape shape, ChannelSet channels) {
        LoggerPlan good = LoggerPlan.good(1L, shape.rateHz());
        return new LoggerPlan(
                1L,
                shape.rateHz(),
                channels,
                good.place(),
                good.satellites(),
                good.noiseScale(),
                good.errors(),
                good.dropOuts(),
                good.lag(),
                good.layout());
    }

    private static void header(CellText cells, LoggedTable table, int spare) throws IOException {
        String before = "";
        for (LoggedColumn column : table.columns()) {
            cells.text(before + column.name() + " [" + column.unit().symbol() + "]");
            before = ",";
        }
        for (int k = 0; k < spare; k++) {
            cells.text(
                    k < TEMPERATURES || k % 3 == 0
                            ? ",spare temperature " + (k + 1) + " [C]"
                            : k % 3 == 1 ? ",spare sensor " + (k + 1) + " [V]" : ",spare " + (k + 1));
        }
        cells.mark('\n');
    }

    private static void row(CellText cells, LoggedTable table, int row, double shiftS, double shiftLaps)
            throws IOException {
        boolean first = true;
        for (LoggedColumn column : table.columns()) {
            if (!first) {
                cells.mark(',');
            }
            first = false;
            double shift = column.quantity() == Quantity.TIME
                    ? shiftS
                    : column.quantity() == Quantity.LAP_NUMBER ? shiftLaps : 0.0;
            cells.number(column.get(row) + shift, column.decimals());
        }
    }

    /** The first ones are temperatures; of more, some are voltages, and some say nothing of themselves. */
    private static void spare(CellText cells, int k, Random random) throws IOException {
        double noise = random.nextGaussian();
        if (k < TEMPERATURES || k % 3 == 0) {
            cells.number(80.0 + NOISE * noise, 2);
        } else if (k % 3 == 1) {
            cells.number(2.5 + NOISE * noise, 3);
        } else {
            cells.number(100.0 * noise, 1);
        }
    }

    /** Counts bytes as they go by. */
    private static final class Counted extends OutputStream {
        private final OutputStream to;
        private long written;

        Counted(OutputStream to) {
            this.to = to;
        }

        @Override
        public void write(int one) throws IOException {
            written++;
            to.write(one);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            written += length;
            to.write(bytes, offset, length);
        }
    }
}
