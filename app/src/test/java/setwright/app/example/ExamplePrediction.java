package setwright.app.example;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import setwright.app.evidence.Answer;
import setwright.app.evidence.BalanceTable;
import setwright.app.predict.ChangeWords;
import setwright.app.predict.PredictionAnswer;
import setwright.core.car.SetupChange;
import setwright.core.circuit.Corner;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.recording.Channel;
import setwright.core.replay.CornerEffect;
import setwright.core.replay.Effect;
import setwright.core.replay.LapEffect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/**
 * Invented predictions for the invented answer. A front bar one position softer moves mid and exit toward oversteer, most in slow
 * corners; on entry its sign is not sure; in fast corners it costs a little time that slow ones more than bring back.
 */
public final class ExamplePrediction {
    private static final double STEP_M = 4.0;

    private ExamplePrediction() {}

    /** Returns what was asked for: {@code front_bar=4}. */
    public static PredictionAnswer one() {
        return one(Example.answer());
    }

    /** Returns the same for another answer. */
    public static PredictionAnswer one(Answer answer) {
        return new PredictionAnswer(
                answer, true, List.of(prediction(answer, List.of(new SetupChange("front_bar", 5.0, 4.0)), 1.0)));
    }

    /** Returns two items turned together. */
    public static PredictionAnswer two() {
        Answer answer = Example.answer();
        return new PredictionAnswer(
                answer,
                true,
                List.of(prediction(
                        answer,
                        List.of(new SetupChange("front_bar", 5.0, 4.0), new SetupChange("front_spring", 200.0, 195.0)),
                        1.4)));
    }

    /** Returns every item turned by one step each way. */
    public static PredictionAnswer all() {
        Answer answer = Example.answer();
        return new PredictionAnswer(answer, false, predictions(answer, new ChangeWords(answer.car()).oneStepEach()));
    }

    /** Returns a prediction for each candidate, the first the strongest, every second one the other way. */
    public static List<Prediction> predictions(Answer answer, List<List<SetupChange>> candidates) {
        return IntStream.range(0, candidates.size())
                .mapToObj(i -> prediction(answer, candidates.get(i), (i % 2 == 0 ? -1.0 : 1.0) / (1.0 + i)))
                .toList();
    }

    private static Prediction prediction(Answer answer, List<SetupChange> changes, double strength) {
        BalanceTable table = BalanceTable.of(answer.diagnosis());
        List<CornerEffect> corners = new ArrayList<>();
        double lap = 0.0;
        for (BalanceTable.Row row : table.rows()) {
            Map<Phase, Effect> balance = new EnumMap<>(Phase.class);
            row.cells().keySet().forEach(phase -> balance.put(phase, moved(phase, row.speedClass(), strength)));
            double time = strength * (row.speedClass() == SpeedClass.HIGH ? 0.012 : -0.011);
            lap += time;
            corners.add(new CornerEffect(
                    row.corner().number(), row.speedClass(), balance, around(time, 0.6 * Math.abs(time))));
        }
        List<PhaseEffect> phases = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            phases.add(new PhaseEffect(phase, Optional.empty(), moved(phase, SpeedClass.MEDIUM, strength)));
            shares.add(Math.abs(size(phase)) / 0.24);
            for (SpeedClass speed : SpeedClass.values()) {
                boolean there = table.rows().stream()
                        .anyMatch(
                                row -> row.speedClass() == speed && row.cells().containsKey(phase));
                if (there) {
                    phases.add(new PhaseEffect(phase, Optional.of(speed), moved(phase, speed, strength)));
                    shares.add(Math.abs(size(phase)) / 0.24);
                }
            }
        }
        return new Prediction(
                changes,
                corners,
                phases,
                around(lap, 0.6 * Math.abs(lap)),
                shares,
                lap(answer, strength, lap),
                List.of(
                        "the front axle carries 3 % less of the roll stiffness, so that its outer wheel loses 38 N in mid corner"),
                List.of("centre of mass height is assumed"));
    }

    private static Effect moved(Phase phase, SpeedClass speed, double strength) {
        double most = speed == SpeedClass.LOW ? 1.3 : speed == SpeedClass.MEDIUM ? 1.0 : 0.5;
        double rad = Math.toRadians(size(phase)) * most * strength;
        return around(rad, phase == Phase.ENTRY ? 2.0 * Math.abs(rad) : 0.5 * Math.abs(rad));
    }

    private static double size(Phase phase) {
        return switch (phase) {
            case BRAKING -> -0.004;
            case ENTRY -> 0.03;
            case MID -> -0.12;
            case EXIT -> -0.09;
        };
    }

    private static Effect around(double central, double half) {
        boolean sure = half < Math.abs(central);
        double sign = sure ? 0.97 : 0.74;
        return new Effect(central, central - half, central + half, central > 0.0 ? sign : 1.0 - sign);
    }

    private static LapEffect lap(Answer answer, double strength, double lapTimeS) {
        double length = answer.diagnosis().stint().circuit().line().lengthM();
        int count = (int) (length / STEP_M);
        double[][] channels = new double[6][count];
        List<Corner> corners = answer.diagnosis().stint().circuit().corners();
        for (int i = 0; i < count; i++) {
            double s = i * STEP_M;
            channels[0][i] = s;
            channels[5][i] = 55.0;
            for (int c = 1; c < 4; c++) {
                channels[c][i] = Double.NaN;
            }
            for (Corner corner : corners) {
                if (s >= corner.startM() && s <= corner.endM()) {
                    double near = Math.exp(-Math.pow((s - corner.apexM()) / 45.0, 2.0));
                    double entry = s < corner.turnInM() ? 0.3 : -1.0;
                    double rad = Math.toRadians(0.14) * strength * near * entry;
                    channels[1][i] = rad;
                    channels[2][i] = rad - Math.toRadians(0.02) - 0.4 * Math.abs(rad);
                    channels[3][i] = rad + Math.toRadians(0.02) + 0.4 * Math.abs(rad);
                    channels[5][i] = 55.0 - 33.0 * near;
                }
            }
            channels[4][i] = lapTimeS * i / (count - 1.0) + 0.006 * Math.sin(s / 180.0) * (1.0 - i / (count - 1.0));
        }
        return new LapEffect(
                Channel.of(channels[0]),
                Channel.of(channels[1]),
                Channel.of(channels[2]),
                Channel.of(channels[3]),
                Channel.of(channels[4]),
                Channel.of(channels[5]));
    }
}
