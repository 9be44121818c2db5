package setwright.fleet.measure;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.apache.hadoop.conf.Configuration;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.failure.Trouble;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Verdict;
import setwright.fleet.circuits.CircuitSearch;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Depots;
import setwright.fleet.depot.TemporaryFolder;
import setwright.fleet.ledger.Status;
import setwright.fleet.tree.Recorded;
import setwright.fleet.tree.TreeReader;

/** What the same work takes without Spark: reads, judges and forgets recordings of a tree, on so many threads. */
final class BareCore {
    private final Path root;
    private final Map<String, Path> circuits = new TreeMap<>();
    private final List<Recorded> sample;
    private int finished;
    private long halfNs;
    private long halfProcessorNs;

    private BareCore(Path root, List<Recorded> sample) {
        this.root = root;
        this.sample = sample;
    }

    /**
     * Judges every so many of a tree.
     *
     * @return what came of each, and what the second half of them took, when everything was warm
     */
    static BareAnswer judge(Path root, int threads, int every) throws IOException, InterruptedException {
        Depot tree = Depots.open(root.toString(), new Configuration(false));
        List<Recorded> all = TreeReader.read(tree);
        BareCore core = new BareCore(root, Sample.of(all, InventedTree.broken(root), every));
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-bare")) {
            for (Map.Entry<String, List<Recorded>> group : all.stream()
                    .collect(Collectors.groupingBy(Recorded::circuit))
                    .entrySet()) {
                Optional<String> text = CircuitSearch.first(tree, group.getValue(), () -> false);
                if (text.isPresent()) {
                    Path file = folder.path().resolve(core.circuits.size() + ".json");
                    core.circuits.put(group.getKey(), Files.writeString(file, text.get()));
                }
            }
            List<Callable<Status>> work = core.sample.stream()
                    .<Callable<Status>>map(recorded -> () -> core.one(recorded))
                    .toList();
            Map<String, String> ends = new TreeMap<>();
            List<Future<Status>> done = pool.invokeAll(work);
            for (int i = 0; i < done.size(); i++) {
                ends.put(core.sample.get(i).path(), done.get(i).get().words());
            }
            return new BareAnswer(
                    all.size(),
                    ends,
                    1.0e-9 * (System.nanoTime() - core.halfNs),
                    1.0e-9 * (processorNs() - core.halfProcessorNs));
        } catch (ExecutionException e) {
            throw new IOException(e);
        } finally {
            pool.shutdown();
        }
    }

    private Status one(Recorded recorded) {
        Status status = judged(recorded);
        synchronized (this) {
            if (++finished == BareAnswer.half(sample.size())) {
                halfNs = System.nanoTime();
                halfProcessorNs = processorNs();
            }
        }
        return status;
    }

    private Status judged(Recorded recorded) {
        if (recorded.sheet().isEmpty()) {
            return Status.FAILED;
        }
        try {
            return new FileDiagnoser(Diagnostician::diagnose)
                                    .diagnose(
                                            DiagnoseRequest.of(
                                                    root.resolve(recorded.path()),
                                                    Optional.of(root.resolve(recorded.sheet())),
                                                    Optional.empty(),
                                                    Optional.ofNullable(circuits.get(recorded.circuit()))),
                                            Progress.silent())
                                    .diagnosis()
                                    .verdict()
                            == Verdict.NOT_ENOUGH_EVIDENCE
                    ? Status.NOT_ENOUGH_EVIDENCE
                    : Status.JUDGED;
        } catch (IOException | RuntimeException e) {
            return Trouble.of(e).kind() == Trouble.Kind.NOT_ENOUGH_EVIDENCE
                    ? Status.NOT_ENOUGH_EVIDENCE
                    : Status.FAILED;
        }
    }

    private static long processorNs() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof OperatingSystemMXBean machine
                ? machine.getProcessCpuTime()
                : 0;
    }
}
