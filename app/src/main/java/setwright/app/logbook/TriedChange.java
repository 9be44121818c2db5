package setwright.app.logbook;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import setwright.core.car.setup.SetupDifference;
import setwright.logbook.Tables;
import setwright.logbook.row.TrialItemRow;
import setwright.logbook.row.TrialRow;

/** The change that a trial tries, as its rows have it. */
final class TriedChange {
    private TriedChange() {}

    static List<TrialItemRow> rows(long trial, List<SetupDifference> changes) {
        return changes.stream()
                .map(change -> new TrialItemRow(trial, change.item(), change.from(), change.to(), change.unit()))
                .toList();
    }

    /** Tells whether changes are what a trial tries, in whatever order. */
    static boolean is(Tables tables, TrialRow trial, List<SetupDifference> changes) {
        Set<TrialItemRow> items = new HashSet<>(tables.trials().items(trial.id()));
        return items.equals(new HashSet<>(rows(trial.id(), changes)));
    }

    static String words(List<SetupDifference> changes) {
        return changes.stream()
                .map(change -> change.item() + " " + change.from() + " to " + change.to()
                        + (change.unit().isEmpty() ? "" : " " + change.unit()))
                .collect(Collectors.joining(", "));
    }
}
