package setwright.app.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.app.export.Material.Of;
import setwright.app.export.ProposalCornersTable.There;
import setwright.app.export.ProposalsTable.Weighed;
import setwright.core.handling.Phase;
import setwright.core.replay.CornerEffect;

/** What each change does corner by corner: one row per change and corner. */
final class ProposalCornersTable implements Table<Of<There>> {
    /** A change in one corner. */
    record There(Weighed weighed, CornerEffect effect) {}

    @Override
    public String name() {
        return "proposal-corners";
    }

    @Override
    public String words() {
        return "One row per change of the table proposals and corner: what it does to balance and time there.";
    }

    @Override
    public Source source() {
        return Source.PROPOSALS;
    }

    @Override
    public List<Column<Of<There>>> columns() {
        List<Column<Of<There>>> columns = new ArrayList<>(List.of(Material.stint()));
        columns.addAll(Weighed.change(There::weighed));
        columns.add(Column.whole(
                "corner", "number of the corner", row -> row.value().effect().corner()));
        columns.add(Column.text(
                "speed class",
                "low, medium or high",
                row -> row.value().effect().speedClass().words()));
        columns.addAll(Predicted.columns(
                "time",
                Measure.TIME,
                "predicted change from the corner's start to the next one's; negative: quicker",
                row -> Optional.of(row.value().effect().timeS())));
        for (Phase phase : Phase.values()) {
            columns.addAll(Predicted.columns(
                    phase.words() + " balance",
                    Measure.ANGLE,
                    "predicted change of the balance angle " + phase.place()
                            + "; positive: toward understeer; empty where the car hardly corners",
                    row -> row.value().effect().balance(phase)));
        }
        return columns;
    }

    @Override
    public Stream<Of<There>> rows(Material material) {
        return material.each(one -> one.proposal().stream()
                .flatMap(Weighed::of)
                .flatMap(weighed ->
                        weighed.candidate().prediction().corners().stream().map(effect -> new There(weighed, effect))));
    }
}
