package setwright.benchmarks.laps;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/**
 * The stint that is measured: the practice recording with the longest laps. Its good laps are fewer than ten, so that the
 * first ones count again, under new numbers.
 *
 * @param stint  with ten good laps
 * @param sheet  of its car
 */
public record TenLaps(Stint stint, CarSheet sheet) {
    public static final int LAPS = 10;

    /** Folder of the sources; the command sets it, a test runs in the folder of its module. */
    public static final String HOME = "setwright.home";

    private static final String CASE = "intake/src/test/resources/cases/practice-01";

    /** Returns the folder of the sources. */
    public static String home() {
        return Path.of(System.getProperty(HOME, ".."))
                .toAbsolutePath()
                .normalize()
                .toString();
    }

    /** Returns where the recording and its car sheet lie. */
    public static Path folder() {
        return Path.of(home()).resolve(CASE);
    }

    /** Reads the recording and cuts it into laps. */
    public static TenLaps read() {
        Path folder = folder();
        CarSheet sheet = CarSheetReader.read(folder.resolve("car.yaml"));
        Stint found = StintBuilder.build(
                RecordingReader.read(folder.resolve("stint1.csv.gz"), Optional.empty(), Optional.of(sheet))
                        .recording());
        List<Lap> good = found.goodLaps();
        List<Lap> laps = new ArrayList<>(good);
        int number = found.laps().stream().mapToInt(Lap::number).max().orElse(0);
        for (int i = 0; laps.size() < LAPS; i++) {
            Lap again = good.get(i % good.size());
            number++;
            laps.add(new Lap(number, again.from(), again.to(), again.timeS(), again.kind(), again.why()));
        }
        return new TenLaps(
                new Stint(found.recording(), found.circuit(), laps.subList(0, LAPS), found.station(), found.offset()),
                sheet);
    }

    /**
     * Returns candidates as a search for the next change has them: each item a step up or a step down, the nearest first.
     *
     * @param count  how many
     */
    public List<List<SetupChange>> candidates(int count) {
        return Stream.iterate(1, steps -> steps + 1)
                .limit(count)
                .flatMap(steps -> sheet.setup().stream()
                        .flatMap(item -> Stream.of(steps, -steps)
                                .filter(signed -> allowed(item, signed))
                                .map(signed -> List.of(new SetupChange(
                                        item.name(), item.value(), item.value() + signed * item.step())))))
                .limit(count)
                .toList();
    }

    private static boolean allowed(SetupItem item, int steps) {
        double to = item.value() + steps * item.step();
        return to >= item.min() && to <= item.max();
    }
}
