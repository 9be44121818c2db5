package setwright.core.judgement;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceBelief.Estimate;
import setwright.core.replay.Pool;
import setwright.core.standing.SetupStanding;

/*
 * Design note. Against the same car in good order the laps tell the balance five times as well as against a reckoned one, so that each
 * place can be asked by itself, and what it is called is what was seen there. On 38 faults of the truth bench's tuning seed the middles over
 * the corners alone, without any belief, name 29; pooled by phase and class with the setup, and evened out between them, 17.
 */

/** The balance of a car that is held against itself in good order, place by place: what its changed items do, then what the laps show. */
final class MeasuredBalance {
    private final Map<Pool, RepeatedBalance> shown = new HashMap<>();
    private final Map<Pool, Estimate> believed = new HashMap<>();

    private MeasuredBalance() {}

    /**
     * Measures it.
     *
     * @param passes    held against the baseline
     * @param standing  what changed since
     */
    static MeasuredBalance of(List<CornerPass> passes, SetupStanding standing) {
        MeasuredBalance measured = new MeasuredBalance();
        for (Phase phase : BalanceBelief.PHASES) {
            for (SpeedRange range : SpeedRange.values()) {
                measured.look(passes, standing, range.pool(phase));
            }
        }
        return measured;
    }

    private void look(List<CornerPass> passes, SetupStanding standing, Pool pool) {
        RepeatedBalance.of(passes, pool).ifPresent(repeated -> {
            shown.put(pool, repeated);
            believed.put(pool, believed(repeated, pool, standing));
        });
    }

    private static Estimate believed(RepeatedBalance repeated, Pool pool, SetupStanding standing) {
        Reference reference = Reference.BASELINE;
        double expected =
                standing.covarianceRad2(pool, pool) + reference.unlistedRad2(1.0) + reference.unlistedCellRad2();
        double doubt = Math.sqrt(reference.commonRad2(1.0)
                + repeated.errorRad() * repeated.errorRad()
                + repeated.otherwiseRad() * repeated.otherwiseRad());
        return new Estimate(standing.balanceRad(pool), Math.sqrt(expected)).after(repeated.rad(), doubt);
    }

    /** Returns what is believed; empty where hardly any time is spent. */
    Optional<Estimate> at(Pool pool) {
        return Optional.ofNullable(believed.get(pool));
    }

    /** Returns what the laps alone show; empty where hardly any time is spent. */
    Optional<RepeatedBalance> shown(Pool pool) {
        return Optional.ofNullable(shown.get(pool));
    }
}
