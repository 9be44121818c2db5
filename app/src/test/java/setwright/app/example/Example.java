package setwright.app.example;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import setwright.app.evidence.Answer;
import setwright.app.evidence.ChannelNote;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupItem;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.LapKind;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Grounds;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.judgement.Repeatability.Measure;
import setwright.core.judgement.SpeedDependence;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;
import setwright.core.judgement.Verdict;

/**
 * An invented answer: 13 corners, 14 laps of which 12 are judged, oversteer on entry of slow corners as the brake comes
 * off, corner 6 not repeatable.
 */
public final class Example {
    private static final long SEED = 20_260_321L;
    private static final int LAPS = 14;

    private Example() {}

    /** Returns the answer under ordinary names. */
    public static Answer answer() {
        return Once.ANSWER;
    }

    private static final class Once {
        static final Answer ANSWER = answer("stint.csv.gz", "Invented circuit", "rear-drive closed car");
    }

    /** Returns the answer with names of one's choice, to try what a page makes of them. */
    public static Answer answer(String recording, String circuitName, String car) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
        Circuit circuit = ExampleCircuit.build(circuitName);
        ExampleDriving driving = new ExampleDriving(circuit, LAPS, random);
        ExamplePasses maker = new ExamplePasses(driving, random);
        List<CornerPass> passes = new ArrayList<>();
        for (int lap = 0; lap < LAPS; lap++) {
            for (Corner corner : circuit.corners()) {
                passes.add(maker.pass(lap, corner));
            }
        }
        ExampleStint stint = new ExampleStint(driving, passes, random);
        for (int lap = 0; lap < LAPS; lap++) {
            switch (lap) {
                case 0 -> stint.drive(lap, LapKind.OUT, "out lap");
                case 9 -> stint.drive(lap, LapKind.MISTAKE, "1.4 s lost at 1210 m, where no other lap loses time");
                default -> stint.drive(lap, LapKind.GOOD, "");
            }
        }
        List<Integer> slow = circuit.corners().stream()
                .filter(corner -> maker.speedClass(corner) == SpeedClass.LOW)
                .map(Corner::number)
                .filter(number -> number != ExampleDriving.UNSTEADY_CORNER)
                .toList();
        Diagnosis diagnosis = new Diagnosis(
                stint.stint(recording),
                stint.trace(car(car)),
                passes.stream()
                        .filter(pass -> pass.lap() != 0 && pass.lap() != 9)
                        .toList(),
                repeatability(circuit),
                List.of(new DrivingFault(
                        "throttle picked up, then lifted", List.of(8), 0.42, 0.18, "share of full throttle")),
                List.of(entry(slow), exit()),
                Verdict.CHANGE_THE_CAR,
                "The driving repeats well enough to see 0.09 deg, and entry oversteer of 0.46 deg shows in "
                        + slow.size() + " slow corners and 83 % of the laps");
        int samples = diagnosis.stint().recording().sampleCount();
        return new Answer(diagnosis.with(ExampleAxles.axles(samples)), car(car), channels(), List.of());
    }

    /** Returns the answer with another verdict and no findings. */
    public static Answer without(Verdict verdict, String reason) {
        Answer answer = answer();
        Diagnosis d = answer.diagnosis();
        return new Answer(
                new Diagnosis(
                        d.stint(), d.trace(), d.passes(), d.repeatability(), List.of(), List.of(), verdict, reason),
                answer.car(),
                List.of(),
                List.of());
    }

    /** Returns the answer without findings, but with a rear that lets go on entry of corner 5 alone. */
    public static Answer seenInOneCorner() {
        Answer answer = without(Verdict.NOTHING_TO_CHANGE, "balanced");
        Diagnosis d = answer.diagnosis();
        Finding slow = entry(List.of(5));
        Finding seen = new Finding(
                slow.phase(),
                slow.speed(),
                slow.balance(),
                slow.trigger(),
                slow.triggers(),
                slow.cause(),
                slow.corners(),
                0.92,
                false,
                0.49,
                slow.sizeRad(),
                slow.sizeLowRad(),
                slow.sizeHighRad(),
                slow.price(),
                slow.why());
        Grounds none = Grounds.NONE;
        Grounds grounds = new Grounds(
                none.car(), none.standing(), none.levels(), none.level(), none.baseline(), none.time(), List.of(seen));
        Diagnosis one = new Diagnosis(
                d.stint(),
                d.trace(),
                d.passes(),
                d.repeatability(),
                d.faults(),
                d.findings(),
                d.verdict(),
                d.reason(),
                grounds,
                d.axles());
        return new Answer(one, answer.car(), answer.channels(), answer.remarks());
    }

    private static Repeatability repeatability(Circuit circuit) {
        List<AtCorner> corners = new ArrayList<>();
        for (Corner corner : circuit.corners()) {
            boolean steady = corner.number() != ExampleDriving.UNSTEADY_CORNER;
            Map<Measure, Double> scatter = new EnumMap<>(Measure.class);
            scatter.put(Measure.BRAKE_POINT, steady ? 1.4 + 0.1 * corner.number() : 9.1);
            scatter.put(Measure.TURN_IN, 1.1);
            scatter.put(Measure.BRAKE_OFF, 1.6);
            scatter.put(Measure.LOWEST_SPEED, 0.9);
            scatter.put(Measure.THROTTLE_PICK_UP, 2.3);
            scatter.put(Measure.LINE, 0.4);
            scatter.put(Measure.BRAKE_SHAPE, 3.1);
            scatter.put(Measure.THROTTLE_SHAPE, 4.0);
            if (corner.number() == 12) {
                scatter.remove(Measure.BRAKE_POINT);
                scatter.remove(Measure.BRAKE_OFF);
                scatter.remove(Measure.BRAKE_SHAPE);
            }
            corners.add(new AtCorner(
                    corner.number(),
                    steady,
                    steady && corner.number() != 12
                            ? Measure.THROTTLE_PICK_UP
                            : corner.number() == 12 ? Measure.LOWEST_SPEED : Measure.BRAKE_POINT,
                    scatter,
                    12,
                    Math.toRadians(steady ? 0.11 : 0.31),
                    steady ? 0.05 : 0.16,
                    steady ? "" : "its balance scatters so that no change below 0.31 deg shows"));
        }
        return new Repeatability(
                true,
                0.17,
                0.21,
                Math.toRadians(0.09),
                Math.toRadians(0.15),
                corners,
                "these 12 laps can show a balance change of 0.09 deg; one typical change does 0.15 deg");
    }

    private static Finding entry(List<Integer> corners) {
        return new Finding(
                Phase.ENTRY,
                SpeedRange.LOW,
                BalanceSign.OVERSTEER,
                Trigger.BRAKE_RELEASE,
                Map.of(
                        Trigger.BRAKE_RELEASE, 0.83,
                        Trigger.TURN_IN, 0.12,
                        Trigger.BRAKE_APPLICATION, 0.03,
                        Trigger.NONE, 0.02),
                Finding.Cause.CAR,
                corners,
                0.83,
                true,
                0.97,
                Math.toRadians(0.46),
                Math.toRadians(0.38),
                Math.toRadians(0.54),
                new Finding.Price(0.31, 0.12, 0.50),
                Optional.of(new SpeedDependence(1.2e-6, -0.9e-6, 3.3e-6, 0.35)),
                List.of(
                        "On entry of slow corners the rear slips 0.46 deg (0.38 to 0.54) more than this car does in steady cornering.",
                        "It is there in " + corners.size() + " corners and 83 % of the laps.",
                        "The wheel is moved against the corner in 61 of 72 of these passes.",
                        "It begins within 0.3 s of the brake coming off, in 83 % of the cases."));
    }

    private static Finding exit() {
        return new Finding(
                Phase.EXIT,
                SpeedRange.ALL,
                BalanceSign.UNDERSTEER,
                Trigger.THROTTLE_PICK_UP,
                Map.of(Trigger.THROTTLE_PICK_UP, 0.7, Trigger.NONE, 0.3),
                Finding.Cause.CAR,
                List.of(5, 9),
                0.58,
                false,
                0.81,
                Math.toRadians(0.27),
                Math.toRadians(0.15),
                Math.toRadians(0.39),
                new Finding.Price(0.08, -0.02, 0.18),
                List.of(
                        "On the exits of corners 5 and 9 the front slips 0.27 deg (0.15 to 0.39) more than it should."));
    }

    private static CarSheet car(String description) {
        return new CarSheet(
                description,
                DrivenAxle.REAR,
                1217.0,
                40.0,
                0.487,
                ExampleStint.WHEELBASE_M,
                1.606,
                1.584,
                0.45,
                14.1,
                0.34,
                List.of(2.7, 2.0, 1.6, 1.3, 1.1, 0.95),
                OptionalDouble.of(806.0),
                OptionalDouble.empty(),
                0.72,
                0.76,
                Optional.of(new CarSheet.BarRate(9000.0, 3600.0)),
                Optional.of(new CarSheet.BarRate(3500.0, 2300.0)),
                Downforce.MODERATE,
                List.of(
                        new SetupItem("front_bar", 5.0, "position", 1.0, 11.0, 1.0),
                        new SetupItem("rear_bar", 5.0, "position", 1.0, 5.0, 1.0),
                        new SetupItem("front_spring", 200.0, "N/mm", 120.0, 275.0, 5.0),
                        new SetupItem("front_camber", -3.4, "deg", -5.0, -1.0, 0.2),
                        new SetupItem("rear_tyre_pressure", 1.86, "bar", 1.6, 2.2, 0.02),
                        new SetupItem("rear_wing", 7.0, "step", 1.0, 14.0, 1.0)),
                List.of("centre of mass height 0.45 m, usual for a closed car"));
    }

    private static List<ChannelNote> channels() {
        return List.of(
                new ChannelNote("t_s", "time", "s", List.of("grows by 0.02 in each row")),
                new ChannelNote(
                        "v_kmh",
                        "speed",
                        "km/h",
                        List.of("unit in the header", "its change agrees with a_long: r = 0.96")),
                new ChannelNote(
                        "steer_deg",
                        "steering wheel angle",
                        "deg",
                        List.of("agrees with yaw rate over speed: r = 0.98")));
    }
}
