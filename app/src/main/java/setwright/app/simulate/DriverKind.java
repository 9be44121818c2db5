package setwright.app.simulate;

import java.util.Arrays;
import java.util.Optional;
import setwright.core.simulation.driver.DriverScatter;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.driver.Reaction;

/** Drivers that can be asked for by name. */
public enum DriverKind {
    STEADY("steady", "laps within a few tenths of a percent"),
    LOOSE("loose", "brakes, turns in and picks up the throttle at other places every lap"),
    BRAKES_LONG("brakes-long", "keeps on the brake deep into the corner"),
    EARLY_THROTTLE("early-throttle", "picks up the throttle before the car is ready"),
    HOLDS("holds", "holds the wheel still when the rear slides"),
    WINDS_ON("winds-on", "winds on lock when the front slides"),
    LIFTS("lifts", "lifts the throttle when an axle slides");

    private final String words;
    private final String description;

    DriverKind(String words, String description) {
        this.words = words;
        this.description = description;
    }

    /** Returns the name that people write. */
    public String words() {
        return words;
    }

    /** Returns what he does, in a few words. */
    public String description() {
        return description;
    }

    /** Returns how he drives. */
    public DriverStyle style() {
        DriverStyle good = DriverStyle.good();
        return switch (this) {
            case STEADY -> good;
            case LOOSE ->
                good.withEffort(0.9).withScatter(DriverScatter.steady().times(4.2));
            case BRAKES_LONG -> good.withFeet(2.6, good.power(), 0.0);
            case EARLY_THROTTLE -> good.withFeet(good.trail(), 2.4, 8.0);
            case HOLDS -> good.withReactions(Reaction.HOLD, Reaction.NONE);
            case WINDS_ON -> good.withReactions(Reaction.CORRECT, Reaction.WIND_ON);
            case LIFTS -> good.withReactions(Reaction.LIFT, Reaction.LIFT);
        };
    }

    /** Returns the driver of a name. */
    public static Optional<DriverKind> find(String name) {
        return Arrays.stream(values()).filter(kind -> kind.words.equals(name)).findFirst();
    }
}
