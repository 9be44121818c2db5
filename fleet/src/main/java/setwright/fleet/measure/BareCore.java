package setwright.fleet.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
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
import setwright.fleet.circuits.CircuitSearch;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Depots;
import setwright.fleet.depot.TemporaryFolder;
import setwright.fleet.tree.Recorded;
import setwright.fleet.tree.TreeReader;

/** What the same work takes without Spark: reads, judges and forgets every recording of a tree, on so many threads. */
final class BareCore {
    private BareCore() {}

    /** Judges all, and returns how many came to which end. */
    static Map<String, Integer> judge(Path root, int threads) throws IOException, InterruptedException {
        Depot tree = Depots.open(root.toString(), new Configuration(false));
        List<Recorded> all = TreeReader.read(tree);
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-bare")) {
            Map<String, Path> circuits = new TreeMap<>();
            for (Map.Entry<String, List<Recorded>> group : all.stream()
                    .collect(Collectors.groupingBy(Recorded::circuit))
                    .entrySet()) {
                Optional<String> text = CircuitSearch.first(tree, group.getValue(), () -> false);
                if (text.isPresent()) {
                    Path file = folder.path().resolve(circuits.size() + ".json");
                    circuits.put(group.getKey(), Files.writeString(file, text.get()));
                }
            }
            List<Callable<String>> work = all.stream()
                    .sorted(Comparator.comparingLong(recorded -> -recorded.bytes()))
                    .<Callable<String>>map(recorded -> () -> one(root, recorded, circuits))
                    .toList();
            Map<String, Integer> ends = new TreeMap<>();
            for (Future<String> end : pool.invokeAll(work)) {
                ends.merge(end.get(), 1, Integer::sum);
            }
            return ends;
        } catch (ExecutionException e) {
            throw new IOException(e);
        } finally {
            pool.shutdown();
        }
    }

    private static String one(Path root, Recorded recorded, Map<String, Path> circuits) {
        if (recorded.sheet().isEmpty()) {
            return "failed";
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
                    .words();
        } catch (IOException | RuntimeException e) {
            return Trouble.of(e).kind() == Trouble.Kind.NOT_ENOUGH_EVIDENCE ? "not enough evidence" : "failed";
        }
    }
}
