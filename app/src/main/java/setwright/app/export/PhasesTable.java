package setwright.app.export;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import setwright.app.export.Material.Of;
import setwright.app.export.PhasesTable.PhaseOf;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.Slide;

/** The balance: one row per judged lap, corner and phase. */
final class PhasesTable implements Table<Of<PhaseOf>> {
    /** A phase of a pass. */
    record PhaseOf(CornerPass pass, PhaseBalance balance) {}

    @Override
    public String name() {
        return "phases";
    }

    @Override
    public String words() {
        return "One row per judged lap, corner and phase: the balance of the car. A phase that did not occur has no row.";
    }

    @Override
    public Source source() {
        return Source.LAPS;
    }

    @Override
    public List<Column<Of<PhaseOf>>> columns() {
        return List.of(
                Material.stint(),
                Column.whole(
                        "lap", "number of the lap", row -> row.value().pass().lap()),
                Column.whole(
                        "corner",
                        "number of the corner",
                        row -> row.value().pass().corner()),
                Column.text(
                        "phase",
                        "braking, entry, mid or exit",
                        row -> row.value().balance().phase().words()),
                number("from", Measure.DISTANCE, "station where it began", PhaseBalance::fromM),
                number("to", Measure.DISTANCE, "station where it ended", PhaseBalance::toM),
                number("time", Measure.TIME, "spent in it", PhaseBalance::timeS),
                number(
                        "balance",
                        Measure.ANGLE,
                        "slip angle of the front axle less that of the rear; positive: understeer; empty where the car"
                                + " hardly corners",
                        PhaseBalance::balanceRad),
                number(
                        "reference",
                        Measure.ANGLE,
                        "the same of a balanced car of these dimensions in the same motion, or what the baseline leads to expect on the same stretch of road",
                        PhaseBalance::referenceRad),
                number(
                        "excess",
                        Measure.ANGLE,
                        "balance less reference; positive: too much understeer",
                        PhaseBalance::excessRad),
                number(
                        "front use",
                        Measure.NUMBER,
                        "slip of the front axle over that at its peak",
                        PhaseBalance::frontUse),
                number(
                        "rear use",
                        Measure.NUMBER,
                        "slip of the rear axle over that at its peak",
                        PhaseBalance::rearUse),
                number(
                        "lateral acceleration",
                        Measure.ACCELERATION,
                        "mean, toward the inside of the corner",
                        PhaseBalance::lateralMps2),
                number("speed", Measure.SPEED, "mean", PhaseBalance::speedMps),
                Column.truth("front slides", "whether the front axle let go", row -> slides(row, Slide.Axle.FRONT)),
                Column.truth("rear slides", "whether the rear axle let go", row -> slides(row, Slide.Axle.REAR)));
    }

    private static Column<Of<PhaseOf>> number(
            String name, Measure measure, String words, ToDoubleFunction<PhaseBalance> value) {
        return Column.number(
                name, measure, words, row -> value.applyAsDouble(row.value().balance()));
    }

    private static boolean slides(Of<PhaseOf> row, Slide.Axle axle) {
        return row.value().pass().slides(axle, row.value().balance().phase());
    }

    @Override
    public Stream<Of<PhaseOf>> rows(Material material) {
        return material.each(one -> one.answer().diagnosis().passes().stream()
                .flatMap(pass -> Arrays.stream(Phase.values())
                        .flatMap(phase -> pass.phase(phase).stream())
                        .map(balance -> new PhaseOf(pass, balance))));
    }
}
