package setwright.app.server.stint;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import setwright.app.evidence.Answer;
import setwright.app.evidence.ToldHands;
import setwright.app.report.MapFrame;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.ReferenceLine;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.slip.AxleTrace;

/** What the page draws over distance or time: a description, and the samples of all laps as they were recorded. */
final class LapColumns {
    /** Steps at which the map's points are told. */
    private static final double MAP_STEP_M = 5.0;

    /**
     * What the samples are.
     *
     * @param lengthM  of the circuit
     * @param columns  names, in their order
     * @param laps     in driving order
     * @param corners  in driving order
     * @param map      the line on the drawing of the circuit, every 5 m from the start line
     * @param marks    what happened where
     */
    record About(
            double lengthM,
            List<String> columns,
            List<LapAbout> laps,
            List<CornerAbout> corners,
            MapLine map,
            List<LapMark> marks) {}

    /**
     * A lap.
     *
     * @param from  place of its first number among all
     */
    record LapAbout(int number, double timeS, boolean good, String why, int samples, long from) {}

    /** A corner, in stations along the line, m. */
    record CornerAbout(int number, String direction, double startM, double turnInM, double apexM, double endM) {}

    /** Points of the drawing, which is 1000 wide. */
    record MapLine(double stepM, double height, List<Double> x, List<Double> y) {}

    private record Column(String name, IntToDoubleFunction value) {}

    private final About about;
    private final byte[] samples;

    private LapColumns(About about, byte[] samples) {
        this.about = about;
        this.samples = samples;
    }

    /** Returns what is where. */
    About about() {
        return about;
    }

    /** Returns 32-bit floats, least byte first: lap after lap, of each lap column after column; NaN where unknown. */
    byte[] samples() {
        return samples;
    }

    /** Gathers them. */
    static LapColumns of(Answer answer) {
        Stint stint = answer.diagnosis().stint();
        List<Column> columns = columns(answer);
        List<Lap> laps = stint.laps();
        int numbers = laps.stream().mapToInt(lap -> lap.to() - lap.from()).sum() * (columns.size() + 2);
        ByteBuffer buffer = ByteBuffer.allocate(Float.BYTES * numbers).order(ByteOrder.LITTLE_ENDIAN);
        List<LapAbout> abouts = new ArrayList<>();
        for (Lap lap : laps) {
            abouts.add(new LapAbout(
                    lap.number(),
                    lap.timeS(),
                    lap.good(),
                    lap.why(),
                    lap.to() - lap.from(),
                    buffer.position() / Float.BYTES));
            for (int i = lap.from(); i < lap.to(); i++) {
                buffer.putFloat((float) ((i - lap.from()) * stint.recording().stepS()));
            }
            put(buffer, stations(stint, lap));
            for (Column column : columns) {
                for (int i = lap.from(); i < lap.to(); i++) {
                    buffer.putFloat((float) column.value().applyAsDouble(i));
                }
            }
        }
        List<String> names = new ArrayList<>(List.of("time", "station"));
        columns.forEach(column -> names.add(column.name()));
        return new LapColumns(
                new About(
                        stint.circuit().line().lengthM(),
                        names,
                        abouts,
                        stint.circuit().corners().stream()
                                .map(LapColumns::about)
                                .toList(),
                        map(stint.circuit().line()),
                        LapMark.of(ToldHands.of(answer.diagnosis()))),
                buffer.array());
    }

    private static void put(ByteBuffer buffer, double[] values) {
        for (double value : values) {
            buffer.putFloat((float) value);
        }
    }

    private static List<Column> columns(Answer answer) {
        HandlingTrace trace = answer.diagnosis().trace();
        double ratio = answer.car().steeringRatio();
        List<Column> columns = new ArrayList<>(List.of(
                new Column("speed", trace.speed()::get),
                new Column("steering", i -> Math.toDegrees(trace.steer().get(i)) * ratio),
                new Column("throttle", trace.throttle()::get),
                new Column("brake", trace.brake()::get),
                new Column(
                        "balance",
                        i -> Math.toDegrees(
                                trace.balance().get(i) - trace.reference().get(i))),
                new Column("lateral", trace.lateral()::get),
                new Column("yaw", i -> Math.toDegrees(trace.yawRate().get(i))),
                new Column("offset", answer.diagnosis().stint().offset()::get)));
        answer.diagnosis().axles().ifPresent(axles -> {
            AxleTrace use = axles.trace();
            columns.add(new Column("frontUse", use.frontUse()::get));
            columns.add(new Column("rearUse", use.rearUse()::get));
        });
        return columns;
    }

    /** Stations of a lap that never go back: across the start line they go on, and noise is held. */
    private static double[] stations(Stint stint, Lap lap) {
        double length = stint.circuit().line().lengthM();
        double[] stations = new double[lap.to() - lap.from()];
        double before = Double.NaN;
        double furthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < stations.length; i++) {
            double station = stint.station().get(lap.from() + i);
            if (Double.isFinite(station)) {
                double unwrapped = Double.isNaN(before)
                        ? (station > 0.5 * length && lap.good() ? station - length : station)
                        : before + Math.IEEEremainder(station - before, length);
                before = unwrapped;
                furthest = Math.max(furthest, unwrapped);
            }
            stations[i] = Double.isFinite(furthest) ? furthest : Double.NaN;
        }
        return stations;
    }

    private static CornerAbout about(Corner corner) {
        return new CornerAbout(
                corner.number(),
                corner.direction().name().toLowerCase(Locale.ROOT),
                corner.startM(),
                corner.turnInM(),
                corner.apexM(),
                corner.endM());
    }

    private static MapLine map(ReferenceLine line) {
        MapFrame frame = MapFrame.around(line);
        int count = (int) Math.ceil(line.lengthM() / MAP_STEP_M);
        double step = line.lengthM() / count;
        double[] x = new double[count];
        double[] y = new double[count];
        Arrays.setAll(x, i -> tenth(frame.x(line, i * step)));
        Arrays.setAll(y, i -> tenth(frame.y(line, i * step)));
        return new MapLine(
                step,
                frame.height(),
                Arrays.stream(x).boxed().toList(),
                Arrays.stream(y).boxed().toList());
    }

    private static double tenth(double value) {
        return 0.1 * Math.rint(10.0 * value);
    }
}
