package setwright.app.truthbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.app.simulate.RecordingCsv;
import setwright.app.simulate.SheetText;
import setwright.core.simulation.logger.Logger;

/** Takes a case from its draw to its outcome. */
final class CaseRun {
    private CaseRun() {}

    /**
     * Runs a case.
     *
     * @param keep  where its files stay; empty for a folder that is gone afterwards
     * @throws Driven.Undriveable when the car was lost in every mood
     */
    static Outcome run(BenchCase drawn, Optional<Path> keep) {
        Driven driven = Driven.of(drawn);
        CaseTruth truth = CaseTruth.of(driven);
        try {
            Path folder = keep.isPresent()
                    ? Files.createDirectories(keep.get().resolve(String.format("case-%03d", drawn.number())))
                    : Files.createTempDirectory("truthbench");
            try {
                return judged(driven, truth, folder, keep.isPresent());
            } finally {
                if (keep.isEmpty()) {
                    remove(folder);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Outcome judged(Driven driven, CaseTruth truth, Path folder, boolean noted) throws IOException {
        BenchCase benchCase = driven.last();
        Path recording = folder.resolve("stint1.csv");
        Path sheet = folder.resolve("car.yaml");
        RecordingCsv.write(
                recording,
                Logger.record(driven.recorded().history(), driven.sheet(), benchCase.logger()),
                benchCase.csv());
        Files.writeString(sheet, SheetText.with(benchCase.car().sheetText(), benchCase.changes()));
        Outcome outcome = Outcome.of(driven, truth, CaseAnswer.of(recording, sheet, benchCase.trigger()));
        if (noted) {
            Files.writeString(folder.resolve("truth.txt"), Notes.of(driven, truth, outcome));
        }
        return outcome;
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
