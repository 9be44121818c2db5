package setwright.fleet.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Cuts recordings into batches.
 *
 * @param most       members of a batch
 * @param mostBytes  of their files together; a larger file is a batch of its own
 */
public record BatchCutter(int most, long mostBytes) {
    /** More members would save little of a task's own time, and lose more when a worker dies. */
    private static final int MOST = 32;
    /** So many batches for each core keep all busy until the end. */
    private static final int PER_CORE = 4;
    /** A recording needs several times its size in memory, but one after the other: this bounds what a lost worker costs. */
    private static final long MOST_BYTES = 1L << 30;

    private static final Comparator<Member> BIGGEST_FIRST = Comparator.<Member>comparingLong(
                    member -> -member.recorded().bytes())
            .thenComparing(member -> member.recorded().path());

    public BatchCutter {
        if (most < 1 || mostBytes < 1) {
            throw new IllegalArgumentException("a batch holds something, got " + most + " and " + mostBytes);
        }
    }

    /** Returns one that gives every core several batches, where there are that many recordings. */
    public static BatchCutter forCores(int recordings, int cores) {
        return new BatchCutter(Math.max(1, Math.min(MOST, recordings / (PER_CORE * Math.max(1, cores)))), MOST_BYTES);
    }

    /**
     * Cuts.
     *
     * @param members  of any circuits
     * @param kept     names of the circuits that are kept among the tables
     * @return the batch with the most bytes first
     */
    public List<Batch> cut(List<Member> members, Set<String> kept) {
        Map<String, List<Member>> circuits = new TreeMap<>();
        members.forEach(member -> circuits.computeIfAbsent(member.recorded().circuit(), name -> new ArrayList<>())
                .add(member));
        List<Batch> batches = new ArrayList<>();
        circuits.forEach((circuit, all) -> {
            all.sort(BIGGEST_FIRST);
            List<Member> some = new ArrayList<>();
            long bytes = 0;
            for (Member member : all) {
                if (!some.isEmpty()
                        && (some.size() == most || bytes + member.recorded().bytes() > mostBytes)) {
                    batches.add(batch(circuit, kept, some));
                    some.clear();
                    bytes = 0;
                }
                some.add(member);
                bytes += member.recorded().bytes();
            }
            batches.add(batch(circuit, kept, some));
        });
        batches.sort(Comparator.comparingLong((Batch batch) -> -batch.bytes()).thenComparing(Batch::id));
        return batches;
    }

    private static Batch batch(String circuit, Set<String> kept, List<Member> members) {
        return Batch.of(
                circuit,
                kept.contains(circuit),
                members.stream()
                        .sorted(Comparator.comparing(member -> member.recorded().path()))
                        .toList());
    }
}
