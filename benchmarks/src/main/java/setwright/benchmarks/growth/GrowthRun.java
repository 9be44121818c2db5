package setwright.benchmarks.growth;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import setwright.benchmarks.laps.FileShape;
import setwright.benchmarks.laps.TenLaps;
import setwright.benchmarks.laps.WrittenLaps;
import setwright.benchmarks.measure.Figure;
import setwright.benchmarks.measure.MarkdownTable;
import setwright.benchmarks.measure.Scratch;
import setwright.benchmarks.measure.Spent;
import setwright.benchmarks.measure.Spread;

/** One run of all growth curves: every file in turn, round by round. */
public final class GrowthRun {
    private static final int MANY = 100;
    private static final int QUICK_MOST = 3;

    private final PrintStream out;
    private final Path to;
    private final int rounds;
    private final boolean warm;
    private final boolean quick;

    /**
     * Makes one.
     *
     * @param out     where tables are printed
     * @param to      folder of the CSV file and the drawings
     * @param rounds  of each file
     * @param warm    in processes that are warm, else in ones that have just started
     * @param quick   the smallest files only, to see that all works
     */
    public GrowthRun(PrintStream out, Path to, int rounds, boolean warm, boolean quick) {
        this.out = out;
        this.to = to;
        this.rounds = rounds;
        this.warm = warm;
        this.quick = quick;
    }

    /** Measures, prints, and writes CSV and drawings. */
    public void print() throws IOException, InterruptedException {
        Map<FileShape, List<Map<Part, Spent>>> times = new HashMap<>();
        Map<FileShape, Long> bytes = new HashMap<>();
        try (Scratch scratch = Scratch.make()) {
            Map<FileShape, Path> files = write(scratch.folder());
            for (Map.Entry<FileShape, Path> file : files.entrySet()) {
                bytes.put(file.getKey(), Files.size(file.getValue()));
            }
            for (int round = 0; round < rounds; round++) {
                for (Map.Entry<FileShape, Path> file : files.entrySet()) {
                    times.computeIfAbsent(file.getKey(), shape -> new ArrayList<>())
                            .add(PointProcess.start(file.getValue(), scratch.folder(), warm));
                }
            }
        }
        Map<Series, List<Point>> all = new EnumMap<>(Series.class);
        for (Series series : Series.values()) {
            List<Point> points = values(series).stream()
                    .map(value -> {
                        FileShape shape = series.shape(value);
                        return new Point(value, bytes.getOrDefault(shape, 0L), times.getOrDefault(shape, List.of()));
                    })
                    .toList();
            all.put(series, points);
        }
        report(all);
    }

    /** Prints tables and writes CSV and drawings. */
    void report(Map<Series, List<Point>> all) throws IOException {
        Files.createDirectories(to);
        List<String> csv = new ArrayList<>();
        csv.add("varied,value,file bytes,part,clock s,clock least s,clock most s,"
                + "processor s,processor least s,processor most s,most memory bytes");
        for (Map.Entry<Series, List<Point>> entry : all.entrySet()) {
            Series series = entry.getKey();
            List<Point> points = entry.getValue();
            table(series, points);
            csv(series, points, csv);
            Files.writeString(to.resolve(series.fileName()), GrowthPlot.draw(series, points));
        }
        Files.write(to.resolve("growth.csv"), csv);
    }

    private List<Integer> values(Series series) {
        return quick ? series.points().subList(0, 2) : series.points();
    }

    private Map<FileShape, Path> write(Path folder) throws IOException {
        Set<FileShape> shapes = new LinkedHashSet<>();
        for (Series series : Series.values()) {
            values(series).forEach(value -> shapes.add(series.shape(value)));
        }
        Map<FileShape, Path> files = new java.util.LinkedHashMap<>();
        WrittenLaps few = WrittenLaps.drive(TenLaps.LAPS);
        for (FileShape shape : shapes) {
            if (shape.laps() <= TenLaps.LAPS) {
                files.put(shape, few.write(folder, shape));
            }
        }
        int most = shapes.stream().mapToInt(FileShape::laps).max().orElse(QUICK_MOST);
        if (most > TenLaps.LAPS) {
            WrittenLaps many = WrittenLaps.drive(most);
            for (FileShape shape : shapes) {
                if (shape.laps() > TenLaps.LAPS) {
                    files.put(shape, many.write(folder, shape));
                }
            }
        }
        return files;
    }

    private void table(Series series, List<Point> points) {
        out.println();
        out.println("By " + series.words() + " (" + series.rest() + "); processor time, and on the clock in brackets:");
        List<String> heads = new ArrayList<>(List.of(series.axis(), "file"));
        for (Part part : Part.values()) {
            heads.add(part.words());
        }
        heads.add("least to most");
        heads.add("most memory");
        MarkdownTable table = new MarkdownTable(out, heads.toArray(String[]::new));
        for (Point point : points) {
            List<String> cells =
                    new ArrayList<>(List.of(String.valueOf(point.value()), Figure.size((double) point.bytes())));
            for (Part part : Part.values()) {
                Spread wall = point.of(part, Spent::wallS);
                cells.add(
                        wall.known()
                                ? Figure.time(point.of(part, Spent::processorS).median()) + " ("
                                        + Figure.time(wall.median()) + ")"
                                : "too few laps");
            }
            Spread whole = point.of(Part.WHOLE, Spent::processorS);
            cells.add(Figure.time(whole.least()) + " to " + Figure.time(whole.most()));
            cells.add(Figure.size(point.of(Part.WHOLE, Spent::peakBytes).most()));
            table.row(cells.toArray(String[]::new));
        }
        out.println();
        for (Part part : Part.values()) {
            line(series, points, part);
        }
    }

    /** Points whose laps were refused do not count. */
    private void line(Series series, List<Point> all, Part part) {
        List<Point> points = all.stream()
                .filter(point -> point.of(Part.DIAGNOSIS, Spent::wallS).known())
                .toList();
        if (points.size() < 2) {
            return;
        }
        double[] x = points.stream().mapToDouble(Point::value).toArray();
        double[] y = points.stream()
                .mapToDouble(point -> point.of(part, Spent::processorS).median())
                .toArray();
        StraightLine line = StraightLine.through(x, y);
        StringBuilder words = new StringBuilder(String.format(
                Locale.ROOT,
                "- %s: straight line %s s + %s ms for each of %s, no point farther from it than %.0f %% of its value",
                part.words(),
                Figure.digits(line.start()),
                Figure.digits(1000.0 * line.slope()),
                series.words(),
                100.0 * line.off()));
        if (series == Series.LAPS) {
            double hundred = at(points, part, MANY);
            double ten = at(points, part, TenLaps.LAPS);
            if (Double.isFinite(hundred / ten)) {
                words.append("; 100 laps over 10 laps: ").append(Figure.digits(hundred / ten));
            }
        }
        out.println(words.append('.'));
    }

    private static double at(List<Point> points, Part part, int value) {
        return points.stream()
                .filter(point -> point.value() == value)
                .mapToDouble(point -> point.of(part, Spent::processorS).median())
                .findFirst()
                .orElse(Double.NaN);
    }

    private static void csv(Series series, List<Point> points, List<String> csv) {
        for (Point point : points) {
            for (Part part : Part.values()) {
                Spread wall = point.of(part, Spent::wallS);
                Spread processor = point.of(part, Spent::processorS);
                csv.add(String.format(
                        Locale.ROOT,
                        "%s,%d,%d,%s,%.4f,%.4f,%.4f,%.4f,%.4f,%.4f,%.0f",
                        series.words(),
                        point.value(),
                        point.bytes(),
                        part.words().replace(",", ""),
                        wall.median(),
                        wall.least(),
                        wall.most(),
                        processor.median(),
                        processor.least(),
                        processor.most(),
                        point.of(part, Spent::peakBytes).most()));
            }
        }
    }
}
