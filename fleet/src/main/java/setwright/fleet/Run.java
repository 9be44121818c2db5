package setwright.fleet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import setwright.app.fleet.FleetCount;
import setwright.app.fleet.FleetRequest;
import setwright.app.fleet.FleetRequest.Again;
import setwright.fleet.batch.Batch;
import setwright.fleet.batch.BatchCutter;
import setwright.fleet.batch.Digest;
import setwright.fleet.batch.Member;
import setwright.fleet.circuits.CircuitBook;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Depots;
import setwright.fleet.ledger.Done;
import setwright.fleet.ledger.Ledger;
import setwright.fleet.ledger.Status;
import setwright.fleet.spark.Crew;
import setwright.fleet.tree.Recorded;
import setwright.fleet.tree.TreeReader;
import setwright.fleet.work.ThisProcess;

/** One run: what is in the tree, what of it is done, and the rest to the crew. */
final class Run {
    /** A reader gets an impression from so many; all are in the ledger. */
    private static final int SHOWN_FAILURES = 10;

    private final FleetRequest request;
    private final Depot tree;
    private final Depot out;
    private final Supplier<Crew> hire;
    private final Consumer<String> told;
    /** Digests of companions, as many recordings share one. */
    private final Map<String, byte[]> companions = new HashMap<>();

    private Optional<Crew> crew = Optional.empty();

    /**
     * Prepares a run.
     *
     * @param hire  starts a crew, when there is work for one
     */
    Run(FleetRequest request, Depot tree, Depot out, Supplier<Crew> hire, Consumer<String> told) {
        this.request = request;
        this.tree = tree;
        this.out = out;
        this.hire = hire;
        this.told = told;
    }

    /** Runs to the end; what is finished stays finished whatever happens. */
    FleetCount run() throws IOException {
        long began = System.nanoTime();
        if (!tree.has("")) {
            throw new IOException(
                    "there is no folder " + tree.root() + ". Name the folder of the recordings with --in");
        }
        if (within(tree, out)) {
            throw new IOException("the tables would lie among the recordings, in " + out.root()
                    + ". Name a folder outside of " + tree.root() + " with --out");
        }
        List<Recorded> recordings = TreeReader.read(tree);
        if (recordings.isEmpty()) {
            throw new IOException("there is no recording in " + tree.root()
                    + ". They are known by their endings: csv, csv.gz, tsv, parquet, mf4, mdf, gpx, nmea");
        }
        try (Depot.Hold hold = Ledger.hold(out, owner())) {
            return run(recordings, began);
        } finally {
            crew.ifPresent(Crew::close);
        }
    }

    private FleetCount run(List<Recorded> recordings, long began) throws IOException {
        Ledger ledger = new Ledger(out);
        int swept = ledger.sweep();
        if (swept > 0) {
            told.accept(swept + " files of work that was not finished are swept away.");
        }
        Map<String, Done> done = ledger.read();
        CircuitBook circuits = new CircuitBook(tree, out, recordings);
        Map<String, List<Recorded>> missing = circuits.missing();
        missing.values().removeIf(group -> group.stream().allMatch(one -> isDone(done, member(one, circuits))));
        if (!missing.isEmpty()) {
            told.accept("looking for the corners of " + String.join(", ", missing.keySet()) + ".");
            crew().circuits(missing)
                    .forEach((name, text) -> circuits.found(name, text.getBytes(StandardCharsets.UTF_8)));
        }
        circuits.keep();
        List<Member> all = recordings.stream().map(one -> member(one, circuits)).toList();
        List<Member> toDo = all.stream()
                .filter(member -> !isDone(done, member))
                .limit(request.limit())
                .toList();
        int before = (int) all.stream().filter(member -> isDone(done, member)).count();
        ledger.forget(
                done,
                toDo.stream()
                        .map(member -> member.recorded().path())
                        .filter(done::containsKey)
                        .toList());
        if (!toDo.isEmpty()) {
            judge(toDo, circuits);
        }
        return count(recordings, before, ledger.read(), 1.0e-9 * (System.nanoTime() - began));
    }

    private void judge(List<Member> toDo, CircuitBook circuits) throws IOException {
        List<Batch> batches = BatchCutter.forCores(toDo.size(), crew().cores()).cut(toDo, circuits.names());
        told.accept(toDo.size() + " recordings in " + batches.size() + " batches, on " + crew().cores() + " cores.");
        Optional<String> trouble =
                crew().judge(batches, request.assumeCar(), new ProgressWords(toDo.size(), told)::finished, told);
        if (trouble.isPresent()) {
            throw new IOException("not all tables could be written: " + trouble.get()
                    + " Start the run again when that is mended; what is finished is kept");
        }
    }

    private Crew crew() {
        Crew hired = crew.orElseGet(hire);
        crew = Optional.of(hired);
        return hired;
    }

    private Member member(Recorded recorded, CircuitBook circuits) {
        return new Member(
                recorded,
                Digest.of(List.of(
                        companion(recorded.sheet()),
                        companion(recorded.map()),
                        circuits.text(recorded.circuit()),
                        new byte[] {
                            (byte) (request.assumeCar() && recorded.sheet().isEmpty() ? 1 : 0)
                        })));
    }

    private byte[] companion(String name) {
        return companions.computeIfAbsent(name, known -> {
            try {
                return known.isEmpty()
                        ? new byte[0]
                        : Digest.of(List.of(tree.read(known))).getBytes(StandardCharsets.UTF_8);
            } catch (IOException e) {
                return new byte[] {0}; // who judges the recording says what is wrong with it
            }
        });
    }

    private boolean isDone(Map<String, Done> done, Member member) {
        Done one = done.get(member.recorded().path());
        return one != null
                && one.bytes() == member.recorded().bytes()
                && one.modifiedMs() == member.recorded().modifiedMs()
                && one.inputs().equals(member.inputs())
                && request.again() != Again.ALL
                && !(request.again() == Again.FAILED && one.status() == Status.FAILED);
    }

    private FleetCount count(List<Recorded> recordings, int before, Map<String, Done> done, double seconds) {
        Map<Status, Integer> counts = new HashMap<>();
        List<FleetCount.Failure> failures = new ArrayList<>();
        int left = 0;
        for (Recorded recorded : recordings) {
            Done one = done.get(recorded.path());
            if (one == null) {
                left++;
            } else {
                counts.merge(one.status(), 1, Integer::sum);
                if (one.status() == Status.FAILED && failures.size() < SHOWN_FAILURES) {
                    failures.add(new FleetCount.Failure(recorded.path(), one.reason()));
                }
            }
        }
        return new FleetCount(
                recordings.size(),
                before,
                counts.getOrDefault(Status.JUDGED, 0),
                counts.getOrDefault(Status.NOT_ENOUGH_EVIDENCE, 0),
                counts.getOrDefault(Status.FAILED, 0),
                left,
                failures,
                seconds);
    }

    private static boolean within(Depot tree, Depot out) throws IOException {
        String above = real(tree);
        return (real(out) + "/").startsWith(above.endsWith("/") ? above : above + "/");
    }

    /** Links followed, as far as there is anything. */
    private static String real(Depot depot) throws IOException {
        if (!Depots.isLocal(depot)) {
            return depot.root();
        }
        Path path = Path.of(depot.root());
        Path there = path;
        while (there.getParent() != null && !there.toFile().exists()) {
            there = there.getParent();
        }
        return there.toRealPath().resolve(there.relativize(path)).normalize().toString();
    }

    private static String owner() {
        return "a run by " + System.getProperty("user.name") + " on " + ThisProcess.words() + ", at work since "
                + Instant.now().truncatedTo(ChronoUnit.SECONDS) + ",";
    }
}
