package setwright.benchmarks.growth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.benchmarks.laps.TenLaps;
import setwright.benchmarks.measure.FreshProcess;
import setwright.benchmarks.measure.JavaCommand;
import setwright.benchmarks.measure.Spent;
import setwright.core.car.CarSheet;
import setwright.core.circuit.NotEnoughLaps;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnostician;
import setwright.core.recording.Recording;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/** A process that diagnoses a file, part by part: once, just started, or again when it is warm. */
public final class PointProcess {
    private static final int WARM_UP = 3;
    private static final int FIGURES = 3;

    private PointProcess() {}

    /** {@code FILE TIMES WARM-UP}: writes a line of figures for each part into a file. */
    public static void main(String[] arguments) throws Exception {
        int warmUp = Integer.parseInt(arguments[2]);
        for (int i = 0; i < warmUp; i++) {
            run(Path.of(arguments[0]));
        }
        List<String> lines = new ArrayList<>();
        run(Path.of(arguments[0]))
                .forEach((part, spent) -> lines.add(part + " " + spent.wallS() + " " + spent.processorS()));
        Files.write(Path.of(arguments[1]), lines);
        System.exit(0); // pools of the core may outlive us
    }

    /** What {@code ./setwright diagnose} does between its start and its words. */
    static Map<Part, Spent> run(Path file) throws Exception {
        Map<Part, Spent> parts = new EnumMap<>(Part.class);
        CarSheet car = CarSheetReader.read(TenLaps.folder().resolve("car.yaml"));
        List<Recording> recording = new ArrayList<>();
        List<Stint> stint = new ArrayList<>();
        parts.put(
                Part.READ,
                Spent.on(() -> recording.add(RecordingReader.read(file, Optional.empty(), Optional.of(car))
                        .recording())));
        parts.put(Part.LAPS, Spent.on(() -> {
            try {
                stint.add(StintBuilder.build(recording.get(0)));
            } catch (NotEnoughLaps e) {
                stint.clear(); // a lap alone is refused: that is the answer
            }
        }));
        if (!stint.isEmpty()) {
            parts.put(Part.DIAGNOSIS, Spent.on(() -> Diagnostician.diagnose(stint.get(0), car)));
        }
        double wall = parts.values().stream().mapToDouble(Spent::wallS).sum();
        double processor =
                parts.values().stream().mapToDouble(Spent::processorS).sum();
        parts.put(Part.WHOLE, new Spent(wall, processor, Double.NaN));
        return parts;
    }

    /**
     * Starts one and returns what it measured.
     *
     * @param warm  the second compiler too, and some runs that do not count; else as {@code ./setwright diagnose} starts
     */
    static Map<Part, Spent> start(Path file, Path folder, boolean warm) throws IOException, InterruptedException {
        Path times = folder.resolve("times.txt");
        List<String> options = new ArrayList<>(List.of("-D" + TenLaps.HOME + "=" + TenLaps.home()));
        if (!warm) {
            options.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:Tier3BackEdgeThreshold=3000"));
        }
        double peak = FreshProcess.run(
                        JavaCommand.of(
                                options,
                                PointProcess.class,
                                List.of(file.toString(), times.toString(), String.valueOf(warm ? WARM_UP : 0))),
                        folder,
                        Map.of())
                .peakBytes();
        Map<Part, Spent> parts = new EnumMap<>(Part.class);
        for (String line : Files.readAllLines(times)) {
            String[] figures = line.split(" ", FIGURES);
            parts.put(
                    Part.valueOf(figures[0]),
                    new Spent(Double.parseDouble(figures[1]), Double.parseDouble(figures[2]), peak));
        }
        return parts;
    }
}
