package setwright.app.export;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.app.export.FindingsTable.Ranked;
import setwright.app.export.Material.Of;
import setwright.core.judgement.Finding;

/** What repeats: one row per finding. */
final class FindingsTable implements Table<Of<Ranked>> {
    /** A finding with its rank, the most costly first. */
    record Ranked(int rank, Finding finding) {}

    @Override
    public String name() {
        return "findings";
    }

    @Override
    public String words() {
        return "One row per problem that repeats, the most costly first. No row: nothing was found, or the laps do not tell.";
    }

    @Override
    public Source source() {
        return Source.LAPS;
    }

    @Override
    public List<Column<Of<Ranked>>> columns() {
        return List.of(
                Material.stint(),
                Column.whole("rank", "1 is the most costly", row -> row.value().rank()),
                text(
                        "phase",
                        "braking, entry, mid or exit",
                        finding -> finding.phase().words()),
                text(
                        "speed",
                        "in which corners: low, high or all",
                        finding -> finding.speed().words()),
                text(
                        "balance",
                        "understeer or oversteer",
                        finding -> finding.balance().words()),
                text(
                        "trigger",
                        "the most probable input that sets it off",
                        finding -> finding.trigger().words()),
                text("cause", "car or driver", finding -> finding.cause().words()),
                text("corners", "numbers of the corners that show it", FindingsTable::corners),
                number(
                        "lap share",
                        Measure.NUMBER,
                        "of the passes through these corners that show it",
                        Finding::lapShare),
                Column.truth(
                        "lap wide",
                        "whether it holds round the lap",
                        row -> row.value().finding().lapWide()),
                number("probability", Measure.NUMBER, "that it is real, 0 to 1", Finding::probability),
                number("size", Measure.ANGLE, "mean excess of the balance angle", Finding::sizeRad),
                number("size low", Measure.ANGLE, "lower end of its 95 % interval", Finding::sizeLowRad),
                number("size high", Measure.ANGLE, "upper end of it", Finding::sizeHighRad),
                number(
                        "price",
                        Measure.TIME,
                        "what it costs a lap, below zero where the laps are quicker than in the baseline",
                        finding -> finding.price().seconds()),
                number(
                        "price low",
                        Measure.TIME,
                        "lower end of its 90 % interval",
                        finding -> finding.price().low()),
                number(
                        "price high",
                        Measure.TIME,
                        "upper end of it",
                        finding -> finding.price().high()),
                text("why", "the reasons, one sentence each", finding -> String.join(" ", finding.why())));
    }

    private static String corners(Finding finding) {
        return finding.corners().stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static Column<Of<Ranked>> text(String name, String words, Function<Finding, String> value) {
        return Column.text(name, words, row -> value.apply(row.value().finding()));
    }

    private static Column<Of<Ranked>> number(
            String name, Measure measure, String words, ToDoubleFunction<Finding> value) {
        return Column.number(
                name, measure, words, row -> value.applyAsDouble(row.value().finding()));
    }

    @Override
    public Stream<Of<Ranked>> rows(Material material) {
        return material.each(one -> {
            List<Finding> findings = one.answer().diagnosis().findings();
            return IntStream.range(0, findings.size()).mapToObj(i -> new Ranked(i + 1, findings.get(i)));
        });
    }
}
