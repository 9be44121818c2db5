package setwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;

class TrialJudgeTest {
    private static final double LAP_S = 90.0;
    private static final int TRIALS = 1000;
    private static final TrialTarget TARGET =
            new TrialTarget(Phase.MID, SpeedRange.ALL, BalanceSign.UNDERSTEER, List.of(1, 2));

    /** Invented trials: what is true of them, and laps as they might come. */
    private record Plan(String order, int laps, double lapS, double lapDeg, double runS, double runDeg, double dayS) {
        Trial drive(double changeS, double changeDeg, Random chance) {
            List<TrialRun> runs = new ArrayList<>();
            for (int r = 0; r < order.length(); r++) {
                boolean changed = order.charAt(r) == 'B';
                double day = order.length() == 1 ? 0.0 : dayS * r / (order.length() - 1.0);
                double base = LAP_S + runS * chance.nextGaussian() + day + (changed ? changeS : 0.0);
                double balance = runDeg * chance.nextGaussian() + (changed ? changeDeg : 0.0);
                List<TrialLap> made = new ArrayList<>();
                for (int lap = 0; lap < laps; lap++) {
                    made.add(new TrialLap(
                            lap + 2,
                            base - 0.03 * lap + lapS * chance.nextGaussian(),
                            Map.of(),
                            OptionalDouble.of(Math.toRadians(balance + lapDeg * chance.nextGaussian()))));
                }
                runs.add(new TrialRun("run " + (r + 1), changed, made));
            }
            return TrialJudge.judge(runs, Optional.of(TARGET), Looks.once());
        }

        Map<TrialVerdict, Integer> verdicts(double changeS, double changeDeg, int trials) {
            Random chance = new Random(5);
            Map<TrialVerdict, Integer> counts = new EnumMap<>(TrialVerdict.class);
            for (TrialVerdict verdict : TrialVerdict.values()) {
                counts.put(verdict, 0);
            }
            for (int i = 0; i < trials; i++) {
                counts.merge(drive(changeS, changeDeg, chance).verdict(), 1, Integer::sum);
            }
            return counts;
        }
    }

    /** Scatter between runs as large as what is known of it, half of it, and half as much again. */
    private static final List<Plan> PLANS = List.of(
            new Plan("AB", 7, 0.3, 0.15, 0.09, 0.056, 0.0),
            new Plan("ABA", 6, 0.3, 0.15, 0.09, 0.056, 0.4),
            new Plan("ABA", 6, 0.15, 0.1, 0.045, 0.03, -0.6),
            new Plan("ABABA", 5, 0.3, 0.15, 0.135, 0.08, 0.8));

    @Test
    void withoutAnyEffectAtMostOneTrialInTwentyIsKeptOrUndone() {
        for (Plan plan : PLANS) {
            Map<TrialVerdict, Integer> counts = plan.verdicts(0.0, 0.0, TRIALS);
            assertThat(counts.get(TrialVerdict.KEEP) + counts.get(TrialVerdict.UNDO))
                    .as(plan.toString())
                    .isLessThanOrEqualTo(TRIALS / 20);
        }
    }

    @Test
    void aClearChangeIsKeptOrUndoneAndHardlyEverTheWrongWay() {
        int trials = 200;
        for (Plan plan : PLANS) {
            Map<TrialVerdict, Integer> good = plan.verdicts(-0.9, -0.5, trials);
            assertThat(good.get(TrialVerdict.KEEP)).as(plan.toString()).isGreaterThan(6 * trials / 10);
            assertThat(good.get(TrialVerdict.UNDO)).as(plan.toString()).isZero();
            Map<TrialVerdict, Integer> bad = plan.verdicts(0.9, 0.5, trials);
            assertThat(bad.get(TrialVerdict.UNDO)).as(plan.toString()).isGreaterThan(6 * trials / 10);
            assertThat(bad.get(TrialVerdict.KEEP)).as(plan.toString()).isZero();
        }
    }

    @Test
    void aDifferenceThatDoesNotMatterIsSaidOnlyWhereItIsSeenToBeSmall() {
        Plan quiet = new Plan("ABABABABA", 12, 0.05, 0.05, 0.01, 0.01, 0.1);
        assertThat(quiet.drive(0.0, 0.0, new Random(3)).verdict()).isEqualTo(TrialVerdict.NO_DIFFERENCE);
        Plan loud = new Plan("AB", 4, 0.5, 0.3, 0.09, 0.056, 0.0);
        Trial open = loud.drive(0.0, 0.0, new Random(3));
        assertThat(open.verdict()).isEqualTo(TrialVerdict.UNDECIDED);
        assertThat(open.more()).isPresent();
        assertThat(open.doubts()).anyMatch(doubt -> doubt.contains("Drive the first setup once more"));
    }

    /** Three runs of like length: the change is the middle one less the mean of the others (references on A/B/A plans: common practice). */
    @Test
    void theDayIsTakenOutWhereTheFirstSetupComesBack() {
        Plan plan = new Plan("ABA", 6, 1e-3, 1e-3, 1e-6, 1e-6, 0.6);
        Trial trial = plan.drive(-0.2, -0.1, new Random(1));
        assertThat(trial.lapTimeS().value()).isCloseTo(-0.2, within(0.01));
        assertThat(trial.dayS().orElseThrow().value()).isCloseTo(0.6, within(0.01));
        assertThat(trial.targetRad().orElseThrow().value())
                .as("less understeer is what is wanted")
                .isCloseTo(Math.toRadians(0.1), within(Math.toRadians(0.01)));
    }

    @Test
    void twoLapsARunAreTheLeast() {
        List<TrialRun> runs = List.of(
                new TrialRun("one", false, List.of(new TrialLap(2, LAP_S, Map.of(), OptionalDouble.empty()))),
                new TrialRun("two", true, List.of(new TrialLap(2, LAP_S, Map.of(), OptionalDouble.empty()))));
        Trial trial = TrialJudge.judge(runs, Optional.empty(), Looks.once());
        assertThat(trial.verdict()).isEqualTo(TrialVerdict.UNDECIDED);
        assertThat(trial.more().orElseThrow().lapsARun()).hasValue(6);
        assertThatThrownBy(() -> TrialJudge.judge(runs.subList(0, 1), Optional.empty(), Looks.once()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** O'Brien and Fleming's pattern: two looks of equal share, 0.0054 and then the rest (Lan and DeMets, 1983, table 1: 0.0056, value from memory). */
    @Test
    void looksShareTheErrorAndTheFirstOnesGetLittle() {
        assertThat(Looks.once().level()).isCloseTo(0.05, within(1e-12));
        assertThat(Looks.of(1, 2).level()).isCloseTo(0.0056, within(0.0001));
        double sum = 0.0;
        for (int look = 1; look <= 5; look++) {
            sum += Looks.of(look, 5).level();
        }
        assertThat(sum).isCloseTo(0.05, within(1e-9));
        assertThat(new Looks(1.0, 1.0).level()).as("spent").isZero();
        assertThat(new Looks(0.5, 1.0).level() + new Looks(0.0, 0.5).level()).isCloseTo(0.05, within(1e-12));
        assertThatThrownBy(() -> Looks.of(3, 2)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void lookingAfterEveryRunKeepsTheError() {
        Random chance = new Random(9);
        int wrong = 0;
        for (int i = 0; i < TRIALS; i++) {
            boolean acted = false;
            List<TrialRun> runs = new ArrayList<>();
            for (int look = 1; look <= 3; look++) {
                for (String setup : List.of("A", "B")) {
                    Plan one = new Plan(setup, 5, 0.3, 0.15, 0.09, 0.056, 0.0);
                    runs.addAll(oneRun(one, setup.equals("B"), chance));
                }
                TrialVerdict verdict = TrialJudge.judge(runs, Optional.of(TARGET), Looks.of(look, 3))
                        .verdict();
                acted |= verdict == TrialVerdict.KEEP || verdict == TrialVerdict.UNDO;
            }
            wrong += acted ? 1 : 0;
        }
        assertThat(wrong).isLessThanOrEqualTo(TRIALS / 20);
    }

    private static List<TrialRun> oneRun(Plan plan, boolean changed, Random chance) {
        double base = LAP_S + plan.runS() * chance.nextGaussian();
        double balance = plan.runDeg() * chance.nextGaussian();
        List<TrialLap> laps = new ArrayList<>();
        for (int lap = 0; lap < plan.laps(); lap++) {
            laps.add(new TrialLap(
                    lap + 2,
                    base + plan.lapS() * chance.nextGaussian(),
                    Map.of(),
                    OptionalDouble.of(Math.toRadians(balance + plan.lapDeg() * chance.nextGaussian()))));
        }
        return List.of(new TrialRun("run", changed, laps));
    }
}
