package setwright.fleet.work;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import setwright.fleet.batch.Batch;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Listed;
import setwright.fleet.ledger.OutLayout;

/*
 * Design note. What kills a worker leaves no exception behind. So each attempt puts a mark beside the tables before it takes up a recording
 * and removes it afterwards; the mark names the process for whoever looks. A mark that a later attempt finds tells where the attempt before died. What else the worker had in hand dies with
 * it and is suspected, too: so suspects go last, where they hardly meet again, and the third time is no accident. Then the recording is
 * listed, and the batch goes on without it. Marks of earlier runs are swept away when a run begins.
 */

/** Remembers over the attempts of a batch which recording a worker died at. */
final class Deaths {
    /** A worker may die for reasons of its own, or of its neighbour's. */
    static final int TOO_MANY = 3;

    private final Depot out;
    private final String folder;
    private final int attempt;
    private final Map<Integer, Integer> counts = new HashMap<>();

    Deaths(Depot out, Batch batch, int attempt) throws IOException {
        this.out = out;
        this.folder = OutLayout.TRYING + "/" + batch.id();
        this.attempt = attempt;
        if (attempt > 0) {
            for (Listed mark : out.list(folder)) {
                String name = mark.name().substring(mark.name().lastIndexOf('/') + 1);
                if (name.matches("[0-9]+-[0-9]+")) {
                    counts.merge(Integer.valueOf(name.substring(0, name.indexOf('-'))), 1, Integer::sum);
                }
            }
        }
    }

    /** Returns the order in which members are judged: suspects last. */
    List<Integer> order(int members) {
        return IntStream.range(0, members)
                .boxed()
                .sorted(Comparator.comparing(this::of))
                .toList();
    }

    /** Returns how often a worker died at a recording, counted from 0 within its batch. */
    int of(int member) {
        return counts.getOrDefault(member, 0);
    }

    void begin(int member) throws IOException {
        out.put(ThisProcess.words().getBytes(StandardCharsets.UTF_8), mark(member));
    }

    void end(int member) throws IOException {
        out.delete(mark(member));
    }

    /** Nobody will ask any more. */
    void over() throws IOException {
        out.delete(folder);
    }

    private String mark(int member) {
        return folder + "/" + member + "-" + attempt;
    }
}
