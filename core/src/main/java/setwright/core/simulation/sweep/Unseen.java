package setwright.core.simulation.sweep;

import java.util.Optional;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupItemKind;

/** Which setup items a quasi-steady lap cannot see. */
public final class Unseen {
    private Unseen() {}

    /** Returns why an item makes no difference to a quasi-steady lap; empty when it may make one. */
    public static Optional<String> why(String item) {
        return SetupCatalogue.find(item).map(SetupItemKind::family).flatMap(family -> switch (family) {
            case BUMP, REBOUND, BUMP_LOW, BUMP_HIGH, REBOUND_LOW, REBOUND_HIGH ->
                Optional.of("dampers act only while the body moves, and in a quasi-steady lap it does not");
            default -> Optional.empty();
        });
    }
}
