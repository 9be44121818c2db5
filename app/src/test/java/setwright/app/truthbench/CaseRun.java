package setwright.app.truthbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.simulation.logger.LoggedTable;
import setwright.core.simulation.logger.Logger;

/** Takes a case from its draw to its outcome. */
final class CaseRun {
    private CaseRun() {}

    /**
     * Runs a case.
     *
     * @param keep      where its files stay; empty for a folder that is gone afterwards
     * @param baseline  how much more grip there was on another day in good order, or less; empty where no such day may be asked
     * @throws Driven.Undriveable when the car was lost in every mood
     */
    static Outcome run(BenchCase drawn, Optional<Path> keep, OptionalDouble baseline) {
        Driven driven = Driven.of(drawn);
        Optional<GoodDay> goodDay = baseline.isPresent() ? driven.goodDay(baseline.getAsDouble()) : Optional.empty();
        CaseTruth truth = CaseTruth.of(driven, goodDay.map(GoodDay::driven));
        try (CaseFolder folder = CaseFolder.of(drawn, keep)) {
            return judged(driven, goodDay, truth, folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Outcome judged(Driven driven, Optional<GoodDay> goodDay, CaseTruth truth, CaseFolder folder)
            throws IOException {
        BenchCase benchCase = driven.last();
        LoggedTable table = Logger.log(driven.recorded().history(), driven.sheet(), benchCase.logger());
        CaseFiles files = CaseFiles.write(folder.path(), "stint1", benchCase, table);
        Optional<CaseFiles> good = Optional.empty();
        if (goodDay.isPresent()) {
            good = Optional.of(logged(goodDay.get(), folder.path()));
        }
        CaseAnswer answer = CaseAnswer.of(files, good, truth.named(benchCase.trigger()));
        Optional<ProposedChange> proposed = ProposedChange.of(driven, truth, answer);
        Outcome outcome =
                Outcome.of(driven, truth, answer, proposed, Reading.faults(answer, table, benchCase.logger()));
        if (folder.kept()) {
            Files.writeString(folder.path().resolve("truth.txt"), Notes.of(driven, truth, outcome));
        }
        return outcome;
    }

    private static CaseFiles logged(GoodDay day, Path folder) throws IOException {
        BenchCase good = day.plan();
        LoggedTable table = Logger.log(day.driven().history(), good.car().sheet(), good.logger());
        return CaseFiles.write(folder, "baseline", good, table);
    }
}
