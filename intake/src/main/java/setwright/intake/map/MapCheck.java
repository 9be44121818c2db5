package setwright.intake.map;

import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.intake.csv.Table;

/** Puts a user's map to the test of physics. */
final class MapCheck {
    private MapCheck() {}

    static Proposal check(Table table, ChannelMap map, Optional<CarSheet> car) {
        return new Proposal(
                map,
                MapProposer.conclude(MapProposer.search(table, car, Optional.of(map)))
                        .reasons(),
                java.util.List.of());
    }
}
