package setwright.app.export;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import setwright.app.export.Material.Of;
import setwright.core.handling.CornerEvents;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Slide;

/** The evidence: one row per judged lap and corner. */
final class PassesTable implements Table<Of<CornerPass>> {
    @Override
    public String name() {
        return "passes";
    }

    @Override
    public String words() {
        return "One row per judged lap and corner: where the driver did what, and what came of it. Stations are along the"
                + " reference line and grow through a corner, also over the start line.";
    }

    @Override
    public Source source() {
        return Source.LAPS;
    }

    @Override
    public List<Column<Of<CornerPass>>> columns() {
        List<Column<Of<CornerPass>>> columns = new ArrayList<>(List.of(
                Material.stint(),
                Column.whole("lap", "number of the lap", row -> row.value().lap()),
                Column.whole(
                        "corner", "number of the corner", row -> row.value().corner()),
                Column.text(
                        "speed class",
                        "how fast the corner is: low, medium or high",
                        row -> row.value().speedClass().words()),
                pass("time", Measure.TIME, "from the corner's start to its end", CornerPass::timeS),
                pass("entry speed", Measure.SPEED, "at turn-in", CornerPass::entrySpeedMps),
                pass("lowest speed", Measure.SPEED, "lowest in the corner", CornerPass::lowestSpeedMps),
                pass("exit speed", Measure.SPEED, "at the end of the exit", CornerPass::exitSpeedMps),
                pass("turn-in time", Measure.TIME, "since the start of the recording", CornerPass::turnInTimeS),
                pass("brake at turn-in", Measure.NUMBER, "as a share of the peak here", CornerPass::brakeAtTurnIn)));
        columns.addAll(events());
        columns.addAll(habits());
        for (Slide.Axle axle : Slide.Axle.values()) {
            columns.add(Column.whole(
                    axle.words() + " slides",
                    "how often the " + axle.words() + " axle let go",
                    row -> slides(row, axle)));
        }
        for (HandsEvent.Kind kind : HandsEvent.Kind.values()) {
            columns.add(Column.whole(
                    "hands " + kind.words(),
                    "how often the wheel moved like that, whatever the axles did",
                    row -> gestures(row, kind)));
        }
        return columns;
    }

    private static List<Column<Of<CornerPass>>> events() {
        return List.of(
                event("brake on", "brake applied", CornerEvents::brakeOn),
                event("brake peak", "hardest braking", CornerEvents::brakePeak),
                event("turn-in", "steering leaves straight ahead", CornerEvents::turnIn),
                event("brake off", "brake released", CornerEvents::brakeOff),
                event("highest steer", "most lock", CornerEvents::highestSteer),
                event("lowest speed place", "slowest point", CornerEvents::lowestSpeed),
                event("throttle pick-up", "throttle applied after the slowest part", CornerEvents::throttlePickUp),
                event("full throttle", "throttle fully open", CornerEvents::fullThrottle),
                event("steer straight", "wheel straight again", CornerEvents::steerStraight));
    }

    private static List<Column<Of<CornerPass>>> habits() {
        return List.of(
                habit("greatest brake", Measure.NUMBER, "greatest brake of the pass, 0 to 1", Habits::brakePeak),
                habit("coasting", Measure.TIME, "with neither pedal between release and pick-up", Habits::coastS),
                habit("overlap", Measure.TIME, "with brake and throttle both pressed", Habits::overlapS),
                habit("limiter", Measure.TIME, "on the engine's limiter", Habits::limiterS),
                habit(
                        "brake held",
                        Measure.TIME,
                        "on the brake with the lateral acceleration near its most",
                        Habits::brakeHeldS),
                habit("brake again", Measure.NUMBER, "largest second squeeze after easing, 0 to 1", Habits::brakeAgain),
                habit(
                        "brake in bend",
                        Measure.NUMBER,
                        "braking where the lateral acceleration comes to four fifths of its most, as a share of the"
                                + " hardest",
                        Habits::brakeInBend),
                habit(
                        "lift after pick-up",
                        Measure.NUMBER,
                        "how far the throttle was closed again, 0 to 1",
                        Habits::liftAfter),
                habit(
                        "pick-up early",
                        Measure.TIME,
                        "from the pick-up until the path is tightest; negative: the path opened before",
                        Habits::pickUpEarlyS),
                habit("wheel reversals", Measure.RATE, "between turn-in and straight", Habits::reversalsPerS));
    }

    private static Column<Of<CornerPass>> pass(
            String name, Measure measure, String words, ToDoubleFunction<CornerPass> value) {
        return Column.number(name, measure, words, row -> value.applyAsDouble(row.value()));
    }

    private static Column<Of<CornerPass>> event(
            String name, String words, Function<CornerEvents, OptionalDouble> value) {
        return Column.number(
                name,
                Measure.DISTANCE,
                "station: " + words + "; empty when it did not happen",
                row -> value.apply(row.value().events()).orElse(Double.NaN));
    }

    private static Column<Of<CornerPass>> habit(
            String name, Measure measure, String words, ToDoubleFunction<Habits> value) {
        return Column.number(
                name, measure, words, row -> value.applyAsDouble(row.value().habits()));
    }

    private static long slides(Of<CornerPass> row, Slide.Axle axle) {
        return row.value().slides().stream()
                .filter(slide -> slide.axle() == axle)
                .count();
    }

    private static long gestures(Of<CornerPass> row, HandsEvent.Kind kind) {
        return row.value().hands().stream()
                .filter(event -> event.kind() == kind)
                .count();
    }

    @Override
    public Stream<Of<CornerPass>> rows(Material material) {
        return material.each(one -> one.answer().diagnosis().passes().stream());
    }
}
