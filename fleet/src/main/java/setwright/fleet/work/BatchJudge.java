package setwright.fleet.work;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import setwright.app.diagnose.Diagnoser;
import setwright.app.evidence.Answer;
import setwright.app.export.GrowingParquet;
import setwright.app.failure.Trouble;
import setwright.core.circuit.Lap;
import setwright.core.judgement.Diagnosis;
import setwright.core.numerics.Robust;
import setwright.fleet.batch.Batch;
import setwright.fleet.batch.Member;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.TemporaryFolder;
import setwright.fleet.ledger.LedgerRow;
import setwright.fleet.ledger.LedgerTable;
import setwright.fleet.ledger.OutLayout;

/**
 * Judges batches.
 *
 * @param diagnoser  that reads and judges
 * @param tree       of the recordings
 * @param out        of the tables
 * @param assumeCar  whether a recording without a car sheet is judged
 */
public record BatchJudge(Diagnoser diagnoser, Depot tree, Depot out, boolean assumeCar) {
    private static final double NANO = 1.0e-9;

    /**
     * Judges a batch and puts its tables there. Does nothing when an earlier attempt has done so.
     *
     * @throws IOException when tables cannot be written
     * @throws InterruptedException when it is stopped
     */
    public void judge(Batch batch, Task task) throws IOException, InterruptedException {
        String ledger = OutLayout.file(OutLayout.LEDGER, batch.circuit(), batch.id());
        if (out.has(ledger)) {
            return;
        }
        Deaths deaths = new Deaths(out, batch, task.attempt());
        List<TableFile<?>> tables = new ArrayList<>();
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-batch");
                GrowingParquet<LedgerRow> done = GrowingParquet.open(LedgerTable.columns())) {
            Optional<Path> circuit = batch.circuitKept()
                    ? Optional.of(out.local(
                            OutLayout.circuit(batch.circuit()), folder.path().resolve("circuit")))
                    : Optional.empty();
            for (String table : OutLayout.TABLES) {
                tables.add(table.equals(OutTables.SETUPS) ? TableFile.setups() : TableFile.exported(table));
            }
            for (int i : deaths.order(batch.members().size())) {
                LedgerRow row = deaths.of(i) >= Deaths.TOO_MANY
                        ? row(batch.members().get(i), killer(deaths.of(i)), 0.0, false)
                        : attempt(batch.members().get(i), i, deaths, circuit, tables, task);
                done.ready(List.of(row).stream()).add();
            }
            for (TableFile<?> table : tables) {
                Path file = folder.path().resolve(table.name());
                table.finish(file);
                out.put(file, OutLayout.file(table.name(), batch.circuit(), batch.id()));
            }
            Path file = folder.path().resolve(OutLayout.LEDGER);
            done.finish(file);
            out.put(file, ledger);
            deaths.over();
        } finally {
            for (TableFile<?> table : tables) {
                table.close();
            }
        }
    }

    private LedgerRow attempt(
            Member member, int index, Deaths deaths, Optional<Path> circuit, List<TableFile<?>> tables, Task task)
            throws IOException, InterruptedException {
        deaths.begin(index);
        try {
            long began = System.nanoTime();
            Outcome outcome = new RecordingJudge(diagnoser, tree, assumeCar).judge(member.recorded(), circuit, task);
            Outcome told = added(member, outcome, tables);
            return row(member, told, NANO * (System.nanoTime() - began), circuit.isPresent());
        } finally {
            deaths.end(index);
        }
    }

    /** All rows of a recording, or none and the reason why. */
    private static Outcome added(Member member, Outcome outcome, List<TableFile<?>> tables) throws IOException {
        if (outcome.answer().isEmpty()) {
            return outcome;
        }
        List<GrowingParquet.Ready> ready = new ArrayList<>();
        try {
            for (TableFile<?> table : tables) {
                ready.add(table.ready(member.recorded(), outcome.answer().get()));
            }
        } catch (RuntimeException | StackOverflowError e) {
            return Outcome.failed(Trouble.of(e).message());
        }
        for (GrowingParquet.Ready rows : ready) {
            rows.add();
        }
        return outcome;
    }

    private static Outcome killer(int times) {
        return Outcome.failed("the worker died " + times
                + " times while it judged this recording, perhaps for want of memory. Try it with setwright diagnose.");
    }

    private static LedgerRow row(Member member, Outcome outcome, double seconds, boolean sharedCorners) {
        Optional<Diagnosis> diagnosis = outcome.answer().map(Answer::diagnosis);
        List<Lap> laps = diagnosis.map(found -> found.stint().laps()).orElse(List.of());
        double[] times = laps.stream().filter(Lap::good).mapToDouble(Lap::timeS).toArray();
        return new LedgerRow(
                member.recorded(),
                member.inputs(),
                outcome.status(),
                diagnosis.map(found -> found.verdict().words()).orElse(""),
                outcome.reason(),
                sharedCorners && diagnosis.isPresent(),
                laps.size(),
                times.length,
                times.length == 0 ? Double.NaN : Robust.median(times),
                seconds,
                Objects.requireNonNullElse(BatchJudge.class.getPackage().getImplementationVersion(), ""));
    }
}
