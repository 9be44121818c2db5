package setwright.app.logbook;

import java.util.Optional;
import setwright.app.diagnose.Baselines;
import setwright.logbook.Tables;

/** Stints of which people said that the car was in good order. */
final class GoodOrder {
    private GoodOrder() {}

    /** Returns the last one of the same car on the same circuit besides a stint itself; what its sheet cannot be compared with is passed over. */
    static Optional<KeptStint> beside(Tables tables, KeptStint stint) {
        return tables.stints().inGoodOrder(stint.car().id(), stint.circuit().id()).stream()
                .filter(row -> row.id() != stint.number())
                .map(row -> KeptStint.of(tables, row))
                .filter(good -> Baselines.areOfOneCar(Setups.sheet(good.setup()), Setups.sheet(stint.setup())))
                .findFirst();
    }
}
