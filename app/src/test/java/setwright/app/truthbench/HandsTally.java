package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.app.scoreboard.Count;
import setwright.app.scoreboard.Table;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandsEvent.Kind;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.slip.HandsReading;

/** Gestures that were found against those that were made, by kind, by truth, and with or without an axle near its peak. */
record HandsTally(Map<Row, HandsScore> scores) {
    /** No truth tells sawing from the activity of a busy driver. */
    static final List<Kind> KINDS = List.of(Kind.HOLD, Kind.CORRECTION, Kind.WIND_ON);

    static final HandsTally NONE = new HandsTally(Map.of());

    /**
     * What is counted together.
     *
     * @param axle  whether only gestures count that answer an axle near its peak, as far as it was found
     */
    record Row(Kind kind, HandsTruth truth, boolean axle) {}

    HandsTally {
        scores = Map.copyOf(scores);
    }

    /**
     * Holds what was found in the good laps of a stint against what was made in them.
     *
     * @param wheelbaseM  of the car
     */
    static HandsTally of(DrivenStint driven, Stint stint, List<HandsReading> found, double wheelbaseM) {
        Map<Row, HandsScore> scores = new LinkedHashMap<>();
        for (HandsTruth truth : HandsTruth.values()) {
            List<TrueGesture> made = truth.of(driven, wheelbaseM).stream()
                    .filter(gesture -> inGoodLap(gesture, stint))
                    .toList();
            for (Kind kind : KINDS) {
                for (boolean axle : new boolean[] {false, true}) {
                    scores.put(new Row(kind, truth, axle), score(truth, of(kind, made), of(kind, axle, found)));
                }
            }
        }
        return new HandsTally(scores);
    }

    HandsTally plus(HandsTally other) {
        Map<Row, HandsScore> sum = new LinkedHashMap<>(scores);
        other.scores.forEach((row, score) -> sum.merge(row, score, HandsScore::plus));
        return new HandsTally(sum);
    }

    HandsScore score(Kind kind, HandsTruth truth, boolean axle) {
        return scores.getOrDefault(new Row(kind, truth, axle), HandsScore.NONE);
    }

    Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (HandsTruth truth : HandsTruth.values()) {
            for (Kind kind : KINDS) {
                for (boolean axle : new boolean[] {false, true}) {
                    HandsScore score = score(kind, truth, axle);
                    rows.add(List.of(
                            truth.words(),
                            kind.words(),
                            axle ? "with axle evidence" : "all",
                            Integer.toString(score.real()),
                            Integer.toString(score.found()),
                            share(score.precision()),
                            share(score.recall())));
                }
            }
        }
        return new Table(List.of("truth", "gesture", "counted", "true", "found", "precision", "recall"), rows);
    }

    private static String share(Count count) {
        return count.of() == 0
                ? "-"
                : String.format(java.util.Locale.ROOT, "%.2f %s", count.share(), Interval.of(count));
    }

    private static HandsScore score(HandsTruth truth, List<TrueGesture> made, List<HandsReading> found) {
        int caught = (int) made.stream()
                .filter(real -> found.stream().anyMatch(reading -> meets(truth, real, reading)))
                .count();
        int right = (int) found.stream()
                .filter(reading -> made.stream().anyMatch(real -> meets(truth, real, reading)))
                .count();
        return new HandsScore(made.size(), caught, found.size(), right);
    }

    private static boolean meets(HandsTruth truth, TrueGesture real, HandsReading reading) {
        double from = reading.event().timeS();
        return truth.meets(real, from, from + reading.event().durationS());
    }

    private static List<TrueGesture> of(Kind kind, List<TrueGesture> made) {
        return made.stream().filter(gesture -> gesture.kind() == kind).toList();
    }

    private static List<HandsReading> of(Kind kind, boolean axle, List<HandsReading> found) {
        return found.stream()
                .filter(reading -> reading.event().kind() == kind)
                .filter(reading -> !axle || reading.cause().isAxle())
                .toList();
    }

    private static boolean inGoodLap(TrueGesture gesture, Stint stint) {
        double step = stint.recording().stepS();
        for (Lap lap : stint.goodLaps()) {
            if (gesture.fromS() >= lap.from() * step && gesture.fromS() < lap.to() * step) {
                return true;
            }
        }
        return false;
    }
}
