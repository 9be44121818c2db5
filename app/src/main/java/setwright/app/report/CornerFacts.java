package setwright.app.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.evidence.BalanceTable;
import setwright.app.evidence.BalanceTable.Cell;
import setwright.app.evidence.BalanceTable.Row;
import setwright.app.units.Figures;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;

/** What matters most at a corner: the first finding that names it, else its largest imbalance. */
final class CornerFacts {
    private final BalanceTable table;
    private final List<Finding> findings;
    private final Figures figures;

    CornerFacts(BalanceTable table, List<Finding> findings, Figures figures) {
        this.table = table;
        this.findings = findings;
        this.figures = figures;
    }

    /** Returns the corner in one line: where it is, how fast, what is wrong. */
    String line(Row row) {
        String place = row.corner().direction().name().toLowerCase(Locale.ROOT) + ", "
                + row.speedClass().words() + " speed, " + figures.speed(row.lowestSpeedMps());
        if (!row.repeatable()) {
            return place + "; left out, the driving differs from lap to lap";
        }
        Optional<Finding> finding = finding(row);
        if (finding.isPresent()) {
            return place + "; " + finding.get().phase().words() + " "
                    + finding.get().balance().words() + ", finding " + (findings.indexOf(finding.get()) + 1);
        }
        return place
                + worst(row)
                        .map(cell ->
                                "; " + cell.phase().words() + " " + shade(cell).words() + " "
                                        + figures.degrees(cell.excess().median()))
                        .orElse("; balanced");
    }

    /** Returns how the corner as a whole is coloured. */
    Shade shade(Row row) {
        return finding(row)
                .map(finding -> new Shade(finding.balance() == BalanceSign.UNDERSTEER ? 2 : -2, false))
                .or(() -> worst(row).map(this::shade))
                .orElse(new Shade(0, false));
    }

    /** Returns the corner that shows the first finding best, else the one with the largest imbalance, else the first. */
    Optional<Row> telling() {
        Optional<Finding> top = findings.stream().findFirst();
        return table.rows().stream()
                .filter(row -> top.isEmpty()
                        || top.get().corners().contains(row.corner().number()))
                .max(java.util.Comparator.comparingDouble(
                        row -> top.map(finding -> strength(row, finding)).orElse(size(row))))
                .or(table::worstRow);
    }

    private double strength(Row row, Finding finding) {
        boolean push = finding.balance() == BalanceSign.UNDERSTEER;
        return row.cell(finding.phase())
                .filter(cell -> Double.isFinite(cell.excess().median()))
                .map(cell -> (push ? cell.frontSlides() : cell.rearSlides())
                                / (double) Math.max(1, row.passes().size())
                        + (push ? 1.0 : -1.0) * cell.excess().median() / table.yardstickRad())
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private static double size(Row row) {
        return row.worst().map(cell -> Math.abs(cell.excess().median())).orElse(0.0);
    }

    private Optional<Finding> finding(Row row) {
        return findings.stream()
                .filter(finding -> finding.corners().contains(row.corner().number()))
                .findFirst();
    }

    private Optional<Cell> worst(Row row) {
        return row.worst().filter(cell -> shade(cell).step() != 0);
    }

    private Shade shade(Cell cell) {
        return Shade.of(cell, table.yardstickRad());
    }

    /** Tells whether an axle lets go in a phase in most passes: -1 the rear, +1 the front, 0 neither. */
    static int letsGo(Row row, Phase phase) {
        int half = row.passes().size() / 2;
        return row.cell(phase)
                .map(cell -> cell.rearSlides() > half ? -1 : cell.frontSlides() > half ? 1 : 0)
                .orElse(0);
    }
}
