package setwright.app.command.sums;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.command.BadOption;

/** Which axle a sum is about. */
enum Axle {
    FRONT,
    REAR;

    /** Returns the axle as people call it. */
    String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns what belongs to this axle. */
    <T> T of(T front, T rear) {
        return this == FRONT ? front : rear;
    }

    /**
     * Returns the axles to work out: the chosen one, or both of a sheet.
     *
     * @param single  options that give the value of one axle only
     * @throws BadOption when such an option would hold for both
     */
    static List<Axle> chosen(Given given, Optional<Axle> axle, List<Optional<Double>> single) {
        if (axle.isPresent()) {
            return List.of(axle.get());
        }
        if (!given.hasSheet()) {
            return List.of(FRONT);
        }
        if (single.stream().anyMatch(Optional::isPresent)) {
            throw new BadOption("--axle is missing: the sheet has two axles and the options speak of one;"
                    + " add --axle front or --axle rear.");
        }
        return List.of(values());
    }

    /** Returns how a title names the axle; not at all where neither option nor sheet does. */
    String title(Given given, Optional<Axle> axle) {
        return given.hasSheet() || axle.isPresent() ? words() : "";
    }
}
