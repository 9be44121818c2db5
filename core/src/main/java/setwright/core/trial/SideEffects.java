package setwright.core.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.Pool;
import setwright.core.trial.Trial.Besides;
import setwright.core.trial.Trial.Sector;

/** What a change did elsewhere: to the balance of other phases and corners, and to the parts of the lap. */
final class SideEffects {
    private static final List<Phase> PHASES = List.of(Phase.ENTRY, Phase.MID, Phase.EXIT);

    private final List<TrialRun> runs;
    private final TrialModel model;

    SideEffects(List<TrialRun> runs, TrialModel model) {
        this.runs = runs;
        this.model = model;
    }

    /**
     * Returns the change of balance of each phase, in all corners and in each class of them.
     *
     * @param knownDeviation  between runs, rad
     */
    List<Besides> balance(double knownDeviation) {
        List<Besides> found = new ArrayList<>();
        for (Phase phase : PHASES) {
            List<Pool> pools = new ArrayList<>(List.of(Pool.all(phase)));
            for (SpeedClass speed : SpeedClass.values()) {
                pools.add(Pool.of(phase, speed));
            }
            pools.forEach(pool -> model.of((run, lap) -> known(lap, pool), knownDeviation)
                    .ifPresent(estimated -> found.add(new Besides(pool, estimated.change(), false))));
        }
        return holm(found, Besides::balanceRad, (one, clear) -> new Besides(one.pool(), one.balanceRad(), clear));
    }

    private static OptionalDouble known(TrialLap lap, Pool pool) {
        Double value = lap.balanceRad().get(pool);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /**
     * Returns the change of the time of each part of the lap; nothing where not all laps have them.
     *
     * @param knownShare  deviation between runs as a share of the time
     */
    List<Sector> sectors(double knownShare) {
        int parts = runs.stream()
                .flatMap(run -> run.laps().stream())
                .mapToInt(lap -> lap.sectorsS().size())
                .min()
                .orElse(0);
        List<Sector> found = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            int part = i;
            double mean = runs.stream()
                    .flatMap(run -> run.laps().stream())
                    .mapToDouble(lap -> lap.sectorsS().get(part))
                    .average()
                    .orElse(Double.NaN);
            model.ofTime(lap -> lap.sectorsS().get(part), knownShare * mean)
                    .ifPresent(estimated -> found.add(new Sector(part + 1, estimated.change(), false)));
        }
        return holm(found, Sector::timeS, (one, clear) -> new Sector(one.number(), one.timeS(), clear));
    }

    /** Step down from the clearest one (Holm, Scandinavian Journal of Statistics 6, 1979). */
    private static <T> List<T> holm(List<T> all, Function<T, TrialEffect> effect, BiFunction<T, Boolean, T> told) {
        List<Integer> order = IntStream.range(0, all.size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        (Integer i) -> effect.apply(all.get(i)).byChance()))
                .toList();
        List<T> judged = new ArrayList<>(all);
        for (int rank = 0; rank < order.size(); rank++) {
            T one = all.get(order.get(rank));
            if (!effect.apply(one).clear(Looks.LEVEL / (order.size() - rank))) {
                break;
            }
            judged.set(order.get(rank), told.apply(one, true));
        }
        return judged;
    }
}
