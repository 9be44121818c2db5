package setwright.app.truthbench;

import java.util.List;
import java.util.Optional;
import setwright.core.handling.HandsEvent;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.driver.DriverEvent;

/** From where it is known what the hands did. */
enum HandsTruth {
    /** The simulated driver's own report: reactions to a sliding axle. Many move the wheel too little to be seen. */
    REPORTED("the driver's report") {
        @Override
        List<TrueGesture> of(DrivenStint stint, double wheelbaseM) {
            return stint.events().stream()
                    .filter(event -> event.toS() - event.fromS() >= SHORTEST_S)
                    .flatMap(event ->
                            kind(event).stream().map(kind -> new TrueGesture(kind, event.fromS(), event.toS())))
                    .toList();
        }

        @Override
        boolean meets(TrueGesture real, double fromS, double toS) {
            // the arms and a filter of 4 Hz come after the decision
            return real.meets(fromS, toS, SHORTEST_S, ARMS_S);
        }
    },
    /** What the trade calls these gestures, looked for in the true signals; see {@link DefinedHands}. */
    DEFINED("the definition on true signals") {
        @Override
        List<TrueGesture> of(DrivenStint stint, double wheelbaseM) {
            DriveHistory history = stint.history();
            return DefinedHands.in(history, wheelbaseM);
        }

        @Override
        boolean meets(TrueGesture real, double fromS, double toS) {
            return real.meets(fromS, toS, SHORTEST_S, SHORTEST_S);
        }
    };

    /** Shorter ones are over before the arms have answered, s. */
    private static final double SHORTEST_S = 0.1;

    private static final double ARMS_S = 0.5;

    private final String words;

    HandsTruth(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Returns what the hands did in a whole drive. */
    abstract List<TrueGesture> of(DrivenStint stint, double wheelbaseM);

    /** Tells whether a gesture that was found in a stretch of time, s, is this one. */
    abstract boolean meets(TrueGesture real, double fromS, double toS);

    private static Optional<HandsEvent.Kind> kind(DriverEvent event) {
        return switch (event.reaction()) {
            case HOLD -> Optional.of(HandsEvent.Kind.HOLD);
            case CORRECT -> Optional.of(HandsEvent.Kind.CORRECTION);
            case WIND_ON -> Optional.of(HandsEvent.Kind.WIND_ON);
            case NONE, LIFT -> Optional.empty();
        };
    }
}
