package setwright.app.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.app.evidence.BalanceTable;
import setwright.app.evidence.BalanceTable.Cell;
import setwright.app.evidence.BalanceTable.Row;
import setwright.app.evidence.Spread;
import setwright.app.units.Figures;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;

/** Where does the car not follow the driver? */
final class BalanceWords {
    /** As many places as a listener keeps in mind. */
    private static final int MOST_PLACES = 3;

    private BalanceWords() {}

    /** Corners of one speed class in one phase, taken together. */
    private record Place(Phase phase, SpeedClass speedClass, Spread excess, List<Integer> corners) {}

    static Story.Link tell(Diagnosis diagnosis, BalanceTable table, Figures figures) {
        Optional<Finding> top = diagnosis.findings().stream().findFirst();
        List<Place> places = places(table).stream()
                .filter(place -> Math.abs(place.excess().median()) >= table.yardstickRad())
                .filter(place -> top.isEmpty() || !same(place, top.get()))
                .sorted(Comparator.comparingDouble(
                                (Place place) -> Math.abs(place.excess().median()))
                        .reversed())
                .limit(MOST_PLACES)
                .toList();
        List<String> details = new ArrayList<>();
        top.filter(finding -> isMomentary(finding, table))
                .ifPresent(
                        finding -> details.add("That is its size while the axle slides; over the whole phase, which the"
                                + " table shows, the balance is milder or even the other way."));
        places.forEach(place -> details.add(sentence(place, figures)));
        diagnosis.inOneCorner().forEach(seen -> details.add(seen(seen, figures)));
        details.add("Sizes are angles: how much more the front tyres slip than the rear ones, compared with "
                + table.against()
                + ". One typical setup change moves it by about "
                + figures.degreesSize(table.yardstickRad()) + ".");
        if (!places.isEmpty() && table.baseline().isEmpty()) {
            details.add(
                    "What all corners share may be the tyres or the steering rather than a fault; what differs between"
                            + " corners and phases tells more.");
        }
        String answer = table.rows().isEmpty()
                ? "No corner could be judged."
                : top.map(finding -> sentence(finding, figures))
                        .orElse(
                                places.isEmpty()
                                        ? "No imbalance stands out beyond doubt."
                                        : "No fault stands out beyond doubt; this is where the car differs most from "
                                                + table.baseline()
                                                        .map(name -> "what it was in the baseline.")
                                                        .orElse("a balanced one."));
        return new Story.Link("Where does the car not follow the driver?", answer, details);
    }

    private static boolean same(Place place, Finding finding) {
        boolean push = finding.balance() == BalanceSign.UNDERSTEER;
        return place.phase() == finding.phase()
                && push == place.excess().median() > 0.0
                && finding.corners().containsAll(place.corners());
    }

    /** Tells whether the medians of the table lie below the finding's interval, so that the two seem to disagree. */
    private static boolean isMomentary(Finding finding, BalanceTable table) {
        double sign = finding.balance().direction();
        double[] there = table.rows().stream()
                .filter(row -> finding.corners().contains(row.corner().number()))
                .mapToDouble(row -> sign * excess(row, finding.phase()))
                .filter(Double::isFinite)
                .toArray();
        return there.length > 0 && Spread.of(there).median() < finding.sizeLowRad();
    }

    private static String sentence(Finding finding, Figures figures) {
        String axle = finding.balance() == BalanceSign.OVERSTEER ? "rear" : "front";
        return Figures.sentence(when(finding.phase()) + (finding.phase() == Phase.BRAKING ? " for " : " of ")
                + Figures.corners(finding.corners()) + " the " + axle + " gives up first: "
                + finding.balance().words() + " of " + figures.degreesSize(finding.sizeRad()) + " ("
                + figures.number(Math.toDegrees(finding.sizeLowRad()), 2) + " to "
                + figures.number(Math.toDegrees(finding.sizeHighRad()), 2) + ")");
    }

    private static String seen(Finding slide, Figures figures) {
        return Figures.sentence(
                        "In " + Figures.corners(slide.corners()) + " alone the rear lets go " + when(slide.phase())
                                + " on " + figures.percent(slide.lapShare()) + " of the laps, by "
                                + figures.degreesSize(slide.sizeRad()))
                + " A car in good order does that in one corner or another, so that it says nothing of this one; a"
                + " baseline would.";
    }

    private static List<Place> places(BalanceTable table) {
        List<Place> places = new ArrayList<>();
        for (SpeedClass speedClass : SpeedClass.values()) {
            Map<Phase, List<Row>> rows = new EnumMap<>(Phase.class);
            for (Row row : table.rows()) {
                if (row.speedClass() == speedClass && row.repeatable()) {
                    row.cells().values().stream()
                            .filter(Cell::evident)
                            .forEach(cell -> rows.computeIfAbsent(cell.phase(), p -> new ArrayList<>())
                                    .add(row));
                }
            }
            rows.forEach((phase, found) -> places.addAll(split(phase, speedClass, found)));
        }
        return places;
    }

    /** Corners that push and corners that slide are told apart, or they would hide each other. */
    private static List<Place> split(Phase phase, SpeedClass speedClass, List<Row> rows) {
        List<Place> places = new ArrayList<>();
        for (double sign : new double[] {1.0, -1.0}) {
            List<Row> alike =
                    rows.stream().filter(row -> sign * excess(row, phase) > 0.0).toList();
            if (!alike.isEmpty()) {
                places.add(new Place(
                        phase,
                        speedClass,
                        Spread.of(alike.stream()
                                .mapToDouble(row -> excess(row, phase))
                                .toArray()),
                        alike.stream().map(row -> row.corner().number()).toList()));
            }
        }
        return places;
    }

    private static double excess(Row row, Phase phase) {
        return row.cell(phase).map(cell -> cell.excess().median()).orElse(Double.NaN);
    }

    private static String sentence(Place place, Figures figures) {
        boolean rear = place.excess().median() < 0.0;
        return Figures.sentence(when(place.phase()) + (place.phase() == Phase.BRAKING ? " for " : " of ")
                + place.speedClass().words() + "-speed "
                + (place.corners().size() == 1 ? "corner " : "corners ") + Figures.list(place.corners()) + " the "
                + (rear ? "car leans to oversteer: " : "car leans to understeer: ")
                + figures.degrees(place.excess().median()));
    }

    static String when(Phase phase) {
        return switch (phase) {
            case BRAKING -> "under braking";
            case ENTRY -> "on entry";
            case MID -> "in the middle";
            case EXIT -> "on exit";
        };
    }
}
