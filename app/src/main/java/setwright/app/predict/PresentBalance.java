package setwright.app.predict;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.evidence.BalanceTable;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;

/** What the balance is now, pooled as predictions are: the mean over corners, weighted with the time spent there. */
public final class PresentBalance {
    private final BalanceTable table;

    private PresentBalance(BalanceTable table) {
        this.table = table;
    }

    /** Returns the present balance of an answer. */
    public static PresentBalance of(PredictionAnswer answer) {
        return new PresentBalance(BalanceTable.of(answer.answer().diagnosis()));
    }

    /** Returns the corners and phases that it comes from. */
    public BalanceTable table() {
        return table;
    }

    /** Returns the balance against the balanced car in a phase, rad; of all corners when the class is empty. */
    public OptionalDouble rad(Phase phase, Optional<SpeedClass> speedClass) {
        double sum = 0.0;
        double weight = 0.0;
        for (BalanceTable.Row row : table.rows()) {
            List<BalanceTable.Cell> cells = row.cell(phase).stream().toList();
            for (BalanceTable.Cell cell : cells) {
                boolean counts = row.repeatable()
                        && speedClass.map(row.speedClass()::equals).orElse(true)
                        && Double.isFinite(cell.excess().median());
                if (counts && cell.timeS() > 0.0) {
                    sum += cell.timeS() * cell.excess().median();
                    weight += cell.timeS();
                }
            }
        }
        return weight > 0.0 ? OptionalDouble.of(sum / weight) : OptionalDouble.empty();
    }
}
