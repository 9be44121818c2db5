package setwright.app.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.app.export.Material.Of;
import setwright.app.export.ProposalPhasesTable.Moved;
import setwright.app.export.ProposalsTable.Weighed;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/** What each change does to the balance: one row per change, phase and class of corners. */
final class ProposalPhasesTable implements Table<Of<Moved>> {
    /**
     * A change in one phase.
     *
     * @param selectivity  share of its whole effect that falls here
     */
    record Moved(Weighed weighed, PhaseEffect effect, double selectivity) {}

    @Override
    public String name() {
        return "proposal-phases";
    }

    @Override
    public String words() {
        return "One row per change of the table proposals, phase and class of corners: what it does to the balance there.";
    }

    @Override
    public Source source() {
        return Source.PROPOSALS;
    }

    @Override
    public List<Column<Of<Moved>>> columns() {
        List<Column<Of<Moved>>> columns = new ArrayList<>(List.of(Material.stint()));
        columns.addAll(Weighed.change(Moved::weighed));
        columns.add(Column.text(
                "phase",
                "braking, entry, mid or exit",
                row -> row.value().effect().phase().words()));
        columns.add(Column.text(
                "speed class",
                "low, medium or high; empty: all corners",
                row -> row.value().effect().speedClass().map(SpeedClass::words).orElse("")));
        columns.addAll(Predicted.columns(
                "balance",
                Measure.ANGLE,
                "predicted change of the balance angle; positive: toward understeer",
                row -> Optional.of(row.value().effect().balance())));
        columns.add(Column.number(
                "selectivity",
                Measure.NUMBER,
                "share of the change's whole effect that falls here, 0 to 1",
                row -> row.value().selectivity()));
        return columns;
    }

    @Override
    public Stream<Of<Moved>> rows(Material material) {
        return material.each(one -> one.proposal().stream().flatMap(Weighed::of).flatMap(ProposalPhasesTable::moved));
    }

    private static Stream<Moved> moved(Weighed weighed) {
        Prediction prediction = weighed.candidate().prediction();
        return IntStream.range(0, prediction.phases().size())
                .mapToObj(i -> new Moved(
                        weighed,
                        prediction.phases().get(i),
                        prediction.selectivity().get(i)));
    }
}
