package setwright.core.judgement;

import java.util.Optional;
import java.util.stream.Collectors;
import setwright.core.baseline.Baseline;
import setwright.core.car.setup.SetupDifference;
import setwright.core.judgement.TimeSince.Difference;

/** What is said of a car that shows the balance of its baseline. */
final class InGoodOrder {
    private InGoodOrder() {}

    /** Returns that it is as it was; empty without a baseline. */
    static Optional<String> words(Grounds grounds) {
        return grounds.baseline()
                .map(good -> "The car does what it did in " + good.name() + ", when it was in good order"
                        + grounds.lost()
                                .map(lost -> ", though the laps are " + lost.slower()
                                        + " with the same setup: tyres, " + (fuelIsKnown(grounds) ? "" : "fuel, ")
                                        + "track or driver."
                                        + where(grounds))
                                .orElse("."));
    }

    private static boolean fuelIsKnown(Grounds grounds) {
        return grounds.time().flatMap(TimeSince::fuel).isPresent();
    }

    private static String where(Grounds grounds) {
        return grounds.time()
                .flatMap(TimeSince::where)
                .map(places -> " " + places)
                .orElse("");
    }

    /** Returns that its laps are slower and the setup is another. */
    static String butSlower(Grounds grounds) {
        return "The balance is that of "
                + grounds.baseline().map(Baseline::name).orElse("the baseline")
                + ", when the car was in good order, but the laps are "
                + grounds.lost().map(Difference::slower).orElse("slower")
                + ": a driver holds back what he cannot use." + where(grounds) + " Changed since: "
                + grounds.standing().changed().stream()
                        .map(SetupDifference::words)
                        .collect(Collectors.joining(", "))
                + ".";
    }
}
