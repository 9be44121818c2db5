package setwright.fleet.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import setwright.fleet.tree.Recorded;

/** Which recordings of a tree the bare core judges. */
final class Sample {
    /** The same one for each turn. */
    private static final long SEED = 1;

    private Sample() {}

    /**
     * Returns one in so many, spread over the whole tree, in an order that has nothing to do with size or place; broken ones in their share. All of
     * them, the biggest first, when every one is asked for.
     *
     * @param all     of the tree, in order
     * @param broken  paths of those that were broken on purpose
     */
    static List<Recorded> of(List<Recorded> all, Set<String> broken, int every) {
        List<Recorded> sample = new ArrayList<>();
        if (every == 1) {
            sample.addAll(all);
            sample.sort(Comparator.comparingLong(recorded -> -recorded.bytes()));
            return sample;
        }
        for (boolean asBroken : List.of(false, true)) {
            List<Recorded> alike = all.stream()
                    .filter(recorded -> broken.contains(recorded.path()) == asBroken)
                    .toList();
            // From each stretch of so many another place: the tree itself repeats, by sessions and drivers.
            Random random = new Random(SEED);
            for (int from = 0; from < alike.size(); from += every) {
                int place = from + random.nextInt(every);
                if (place < alike.size()) {
                    sample.add(alike.get(place));
                }
            }
        }
        Collections.shuffle(sample, new Random(SEED));
        return sample;
    }
}
