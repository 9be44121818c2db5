package setwright.fleet.measure;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import setwright.core.recording.Quantity;
import setwright.core.simulation.logger.LoggedColumn;
import setwright.core.simulation.logger.LoggedTable;
import setwright.intake.columns.ParquetTable;
import setwright.intake.columns.ParquetTable.Head;
import setwright.intake.columns.ParquetTable.Kind;

/**
 * Laps of a simulated drive with noise on the last decimal of every measured column, so that no two files are the same.
 *
 * @param table  of the drive
 * @param seed   of the noise
 */
record NoisyTable(LoggedTable table, long seed) {
    private static final Set<Quantity> EXACT = Set.of(Quantity.LAP_NUMBER, Quantity.LAP_TRIGGER, Quantity.GEAR);

    private List<Head> heads() {
        return table.columns().stream()
                .map(column -> new Head(name(column), Kind.NUMBER))
                .toList();
    }

    private static String name(LoggedColumn column) {
        String unit = column.unit().symbol();
        return unit.isEmpty() ? column.name() : column.name() + " [" + unit + "]";
    }

    /** Time is the first column. */
    private static boolean noisy(LoggedTable table, int column) {
        return column > 0 && !EXACT.contains(table.columns().get(column).quantity());
    }

    /** The value in units of its last decimal. */
    private long scaled(int column, int row, SplittableRandom random) {
        LoggedColumn one = table.columns().get(column);
        long noise = noisy(table, column) ? random.nextInt(3) - 1 : 0;
        return Math.round(one.get(row) * Math.pow(10.0, one.decimals())) + noise;
    }

    void writeParquet(Path file) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        ParquetTable.write(file, heads(), cells -> {
            for (int row = 0; row < table.rowCount(); row++) {
                cells.row();
                for (int column = 0; column < table.columns().size(); column++) {
                    LoggedColumn one = table.columns().get(column);
                    if (Double.isNaN(one.get(row))) {
                        cells.empty();
                    } else {
                        cells.number(scaled(column, row, random) / Math.pow(10.0, one.decimals()));
                    }
                }
            }
        });
    }

    void writeCsv(Path file) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(String.join(",", heads().stream().map(Head::header).toList()) + "\n");
            StringBuilder line = new StringBuilder();
            for (int row = 0; row < table.rowCount(); row++) {
                line.setLength(0);
                for (int column = 0; column < table.columns().size(); column++) {
                    LoggedColumn one = table.columns().get(column);
                    line.append(column == 0 ? "" : ",");
                    if (!Double.isNaN(one.get(row))) {
                        append(line, scaled(column, row, random), one.decimals());
                    }
                }
                out.append(line).append('\n');
            }
        }
    }

    private static void append(StringBuilder line, long scaled, int decimals) {
        String digits = String.valueOf(Math.abs(scaled));
        digits = "0".repeat(Math.max(0, decimals + 1 - digits.length())) + digits;
        line.append(scaled < 0 ? "-" : "").append(digits, 0, digits.length() - decimals);
        if (decimals > 0) {
            line.append('.').append(digits, digits.length() - decimals, digits.length());
        }
    }
}
