package setwright.app.truthbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.logger.LoggedTable;
import setwright.core.simulation.logger.Logger;

/** Takes a case from its draw to its outcome. */
final class CaseRun {
    private CaseRun() {}

    /**
     * Runs a case.
     *
     * @param keep      where its files stay; empty for a folder that is gone afterwards
     * @param baseline  whether the answer may hold it against a stint of the car in good order
     * @throws Driven.Undriveable when the car was lost in every mood
     */
    static Outcome run(BenchCase drawn, Optional<Path> keep, boolean baseline) {
        Driven driven = Driven.of(drawn);
        CaseTruth truth = CaseTruth.of(driven);
        try {
            Path folder = keep.isPresent()
                    ? Files.createDirectories(keep.get().resolve(String.format("case-%03d", drawn.number())))
                    : Files.createTempDirectory("truthbench");
            try {
                return judged(driven, truth, folder, keep.isPresent(), baseline);
            } finally {
                if (keep.isEmpty()) {
                    remove(folder);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Outcome judged(Driven driven, CaseTruth truth, Path folder, boolean noted, boolean baseline)
            throws IOException {
        BenchCase benchCase = driven.last();
        LoggedTable table = Logger.log(driven.recorded().history(), driven.sheet(), benchCase.logger());
        CaseFiles files = CaseFiles.write(folder, "stint1", benchCase, table);
        Optional<CaseFiles> good = baseline ? goodDay(driven, folder) : Optional.empty();
        CaseAnswer answer = CaseAnswer.of(files, good, benchCase.trigger());
        Optional<ProposedChange> proposed = ProposedChange.of(driven, truth, answer);
        Outcome outcome =
                Outcome.of(driven, truth, answer, proposed, Reading.faults(answer, table, benchCase.logger()));
        if (noted) {
            Files.writeString(folder.resolve("truth.txt"), Notes.of(driven, truth, outcome));
        }
        return outcome;
    }

    private static Optional<CaseFiles> goodDay(Driven driven, Path folder) throws IOException {
        Optional<DrivenStint> stint = driven.goodDay();
        if (stint.isEmpty()) {
            return Optional.empty();
        }
        BenchCase good = driven.last().inGoodOrder();
        LoggedTable table = Logger.log(stint.get().history(), good.car().sheet(), good.logger());
        return Optional.of(CaseFiles.write(folder, "baseline", good, table));
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
