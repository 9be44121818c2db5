package setwright.fleet.spark;

import java.io.IOException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.apache.spark.ExecutorLostFailure;
import org.apache.spark.SparkConf;
import org.apache.spark.Success$;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.scheduler.SparkListener;
import org.apache.spark.scheduler.SparkListenerTaskEnd;
import org.apache.spark.scheduler.TaskInfo;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.failure.Trouble;
import setwright.core.judgement.Diagnostician;
import setwright.fleet.batch.Batch;
import setwright.fleet.circuits.CircuitSearch;
import setwright.fleet.tree.Recorded;
import setwright.fleet.work.BatchJudge;
import setwright.fleet.work.Task;

/** Spark, at work for one run. */
public final class Crew implements AutoCloseable {
    /** A piece of work that fails with a message does so again; that of a worker which died is tried much more often. */
    private static final int TRIES = 3;

    private final JavaSparkContext context;
    private final Places places;

    /** Starts Spark, or uses the one that runs in this process. */
    public Crew(SparkConf conf, Places places) {
        this.context = new JavaSparkContext(conf);
        this.places = places;
    }

    /** Returns how many cores there are. */
    public int cores() {
        return context.defaultParallelism();
    }

    /** A circuit's recordings, on their way to a worker. */
    private record Group(String name, ArrayList<Recorded> recordings) implements Serializable {}

    /** What a worker found. */
    private record Found(String name, String text) implements Serializable {}

    /**
     * Finds circuits, each of them one piece of work.
     *
     * @throws IOException when Spark gives up
     */
    public Map<String, String> circuits(Map<String, List<Recorded>> missing) throws IOException {
        List<Group> groups = new ArrayList<>();
        missing.forEach((name, recordings) -> groups.add(new Group(name, new ArrayList<>(recordings))));
        Places sent = places;
        Map<String, String> found = new TreeMap<>();
        collected(context.parallelize(groups, groups.size())
                        .map(group -> new Found(
                                group.name(),
                                CircuitSearch.first(sent.in(), group.recordings(), TaskContext.get()::isInterrupted)
                                        .orElse(""))))
                .forEach(one -> {
                    if (!one.text().isEmpty()) {
                        found.put(one.name(), one.text());
                    }
                });
        return found;
    }

    /**
     * Judges batches, each of them one piece of work.
     *
     * @param done  told how many recordings are judged, each time a batch is finished
     * @param told  of workers that died, in words
     * @return what kept a batch from being finished, if anything did
     * @throws IOException when Spark gives up
     */
    public Optional<String> judge(List<Batch> batches, boolean assumeCar, IntConsumer done, Consumer<String> told)
            throws IOException {
        Places sent = places;
        context.sc().addSparkListener(new Counting(batches, done, told));
        List<String> troubles =
                collected(context.parallelize(batches, batches.size()).map(batch -> attempt(batch, sent, assumeCar)));
        return troubles.stream().filter(trouble -> !trouble.isEmpty()).findFirst();
    }

    /** What Spark throws is checked, though no signature says so. */
    private static <T> List<T> collected(JavaRDD<T> work) throws IOException {
        try {
            return work.collect();
        } catch (Exception e) {
            String why = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
            throw new IOException(
                    "Spark gave up (" + why
                            + "). What is finished is kept: start the run again, perhaps with more memory",
                    e);
        }
    }

    /** On the worker. */
    private static String attempt(Batch batch, Places places, boolean assumeCar) throws Exception {
        TaskContext task = TaskContext.get();
        try {
            new BatchJudge(new FileDiagnoser(Diagnostician::diagnose), places.in(), places.out(), assumeCar)
                    .judge(batch, new Task(task.attemptNumber(), task::isInterrupted));
            return "";
        } catch (IOException | RuntimeException e) {
            if (task.attemptNumber() < TRIES - 1) {
                throw e;
            }
            return Trouble.of(e).message();
        }
    }

    /** Counts what is finished, and tells what is lost. */
    private static final class Counting extends SparkListener {
        private final List<Batch> batches;
        private final IntConsumer done;
        private final Consumer<String> told;
        private int recordings;

        Counting(List<Batch> batches, IntConsumer done, Consumer<String> told) {
            this.batches = batches;
            this.done = done;
            this.told = told;
        }

        @Override
        public void onTaskEnd(SparkListenerTaskEnd end) {
            TaskInfo task = end.taskInfo();
            if (task.index() >= batches.size()) {
                return;
            }
            int members = batches.get(task.index()).members().size();
            if (end.reason() instanceof Success$) {
                recordings += members;
                done.accept(recordings);
            } else if (end.reason() instanceof ExecutorLostFailure) {
                told.accept("a worker died at a batch of " + members + (members == 1 ? " recording" : " recordings")
                        + ", attempt " + (task.attemptNumber() + 1) + "; it is tried again.");
            }
        }
    }

    @Override
    public void close() {
        context.close();
    }
}
