package setwright.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.core.car.CarSheet;
import setwright.intake.gather.Gatherer;
import setwright.intake.gather.RecordingFiles;
import setwright.intake.map.ChannelMap;
import setwright.intake.table.Table;

/** Files of any length, read part by part, each as if the file held nothing else. Most have one part. */
public final class LongRecording {
    /** One is read while another is written: both cores are busy, and memory stays bounded. */
    private static final int AT_ONCE = 2;

    private final Table table;
    private final Optional<ChannelMap> map;
    private final Optional<CarSheet> car;
    private final List<Parts.Part> parts;

    private LongRecording(Table table, Optional<ChannelMap> map, Optional<CarSheet> car, List<Parts.Part> parts) {
        this.table = table;
        this.map = map;
        this.car = car;
        this.parts = parts;
    }

    /**
     * Opens files, as {@link RecordingReader#read} does, and finds their parts.
     *
     * @throws setwright.intake.problem.InputProblem when they cannot be read
     */
    public static LongRecording open(RecordingFiles files, Optional<ChannelMap> map, Optional<CarSheet> car) {
        return open(files, map, car, Parts.LONGEST_S);
    }

    /** The same with another longest time of a part. */
    static LongRecording open(RecordingFiles files, Optional<ChannelMap> map, Optional<CarSheet> car, double longestS) {
        Table table = Gatherer.read(files);
        return new LongRecording(table, map, car, Parts.of(table, map, car, longestS));
    }

    /** Returns how many parts there are, at least one. */
    public int count() {
        return parts.size();
    }

    /** Returns what part {@code index}, counted from 0, is called behind the name of the file; empty when there is only one. */
    public String suffix(int index) {
        return count() == 1 ? "" : String.format(Locale.ROOT, ", part %d of %d", index + 1, count());
    }

    /**
     * Works on all parts, two at a time: so many are in memory. Where one fails, no later one is begun.
     *
     * @param work  for a part, counted from 0; on a thread of its own when there are many
     * @return what came of each, in order
     */
    public <T> List<T> each(IntFunction<T> work) {
        if (count() == 1) {
            return List.of(work.apply(0));
        }
        ExecutorService threads = Executors.newFixedThreadPool(AT_ONCE);
        AtomicInteger failed = new AtomicInteger(count());
        List<CompletableFuture<T>> coming = IntStream.range(0, count())
                .mapToObj(k -> CompletableFuture.supplyAsync(() -> unless(failed, work, k), threads))
                .toList();
        threads.shutdown();
        coming.forEach(one -> one.exceptionally(failure -> null).join());
        try {
            return coming.stream().map(CompletableFuture::join).toList();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Error own) {
                throw own;
            }
            throw e.getCause() instanceof RuntimeException own ? own : e;
        }
    }

    /** Unless an earlier part has failed: so the first that did is found first. */
    private static <T> T unless(AtomicInteger failed, IntFunction<T> work, int part) {
        if (failed.get() < part) {
            throw new CancellationException();
        }
        try {
            return work.apply(part);
        } catch (RuntimeException | Error e) {
            failed.accumulateAndGet(part, Math::min);
            throw e;
        }
    }

    /**
     * Reads a part; whoever reads many goes by {@link #each}.
     *
     * @param index  counted from 0
     * @throws setwright.intake.problem.InputProblem when it cannot be used
     */
    public Intake read(int index) {
        if (count() == 1) {
            return RecordingReader.read(table, map, car);
        }
        Parts.Part part = parts.get(index);
        Intake read = RecordingReader.read(table.part(part.from(), part.to()), map, car);
        boolean last = index == count() - 1;
        String remark = String.format(
                Locale.ROOT,
                "The file lasts longer than a stint: this is part %d of %d, lines %d to %d%s.",
                index + 1,
                count(),
                table.lineOf(part.from()),
                table.lineOf(part.to() - 1),
                last
                        ? ""
                        : part.atRest()
                                ? ", cut where the car stands"
                                : ", cut in the midst of a lap: the car never stood");
        return new Intake(
                read.recording(),
                read.proposal(),
                Stream.concat(Stream.of(remark), read.remarks().stream()).toList());
    }
}
