package setwright.app.truthbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.app.world.RecordingWriter;
import setwright.app.world.SheetCopy;
import setwright.core.simulation.logger.LoggedTable;
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
        Path recording = folder.resolve(benchCase.csv().gzip() ? "stint1.csv.gz" : "stint1.csv");
        Path sheet = folder.resolve("car.yaml");
        LoggedTable table = Logger.log(driven.recorded().history(), driven.sheet(), benchCase.logger());
        RecordingWriter.write(recording, table, benchCase.csv());
        Files.writeString(
                sheet, SheetCopy.with(benchCase.car().name(), benchCase.car().sheetText(), benchCase.changes()));
        CaseAnswer answer = CaseAnswer.of(recording, sheet, benchCase.trigger());
        Optional<ProposedChange> proposed = ProposedChange.of(driven, truth, answer);
        Outcome outcome =
                Outcome.of(driven, truth, answer, proposed, Reading.faults(answer, table, benchCase.logger()));
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
