package setwright.app.logbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.core.car.SetupChange;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.proposal.LearntEffects;
import setwright.core.proposal.MeasuredEffect;
import setwright.core.replay.Pool;
import setwright.logbook.Tables;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.TrialItemRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.TriedEffectRow;

/** What the trials of a car tell of the changes to come. */
final class Learnt {
    private Learnt() {}

    /** Returns what trials of one item measured, each by its last verdict; lap times only from this circuit, balance from all. */
    static LearntEffects of(Tables tables, CarRow car, CircuitRow circuit) {
        return before(tables, car, circuit, Long.MAX_VALUE);
    }

    /** Returns what was known before a trial. */
    static LearntEffects before(Tables tables, CarRow car, CircuitRow circuit, long trial) {
        List<MeasuredEffect> measured = new ArrayList<>();
        for (TrialRow tried : tables.trials().ofCar(car.id())) {
            List<TrialItemRow> items = tables.trials().items(tried.id());
            Optional<SetupChange> change = items.size() == 1 ? change(items.get(0)) : Optional.empty();
            if (tried.id() < trial && change.isPresent()) {
                tables.verdicts()
                        .last(tried.id())
                        .ifPresent(verdict -> tables.verdicts().effects(verdict.id()).stream()
                                .filter(effect -> effect.unit().equals("rad") || tried.circuitId() == circuit.id())
                                .forEach(effect -> effect(change.get(), effect).ifPresent(measured::add)));
            }
        }
        return LearntEffects.of(measured);
    }

    /** Words, such as a tyre compound, cannot be brought to another size. */
    static Optional<SetupChange> change(TrialItemRow item) {
        try {
            return Optional.of(new SetupChange(
                    item.item(), Double.parseDouble(item.fromValue()), Double.parseDouble(item.toValue())));
        } catch (NumberFormatException word) {
            return Optional.empty();
        }
    }

    private static Optional<MeasuredEffect> effect(SetupChange change, TriedEffectRow row) {
        if (!(row.error() > 0.0) || !Double.isFinite(row.error()) || !Double.isFinite(row.measured())) {
            return Optional.empty();
        }
        Optional<Pool> pool = row.phase().isEmpty() ? Optional.empty() : Optional.of(pool(row));
        return Optional.of(new MeasuredEffect(change, pool, row.measured(), row.error()));
    }

    private static Pool pool(TriedEffectRow row) {
        Phase phase = Arrays.stream(Phase.values())
                .filter(one -> one.words().equals(row.phase()))
                .findFirst()
                .orElseThrow();
        return new Pool(
                phase,
                Arrays.stream(SpeedClass.values())
                        .filter(one -> one.words().equals(row.speed()))
                        .findFirst());
    }
}
