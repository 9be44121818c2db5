package setwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Fuel, tyres, track and cold first laps in invented trials without any effect of the change. */
class SurroundingsTest {
    private static final double LAP_S = 90.0;
    private static final double MASS_KG = 750.0;
    private static final double SCATTER_S = 0.15;
    private static final double RUNS_S = 0.06;
    private static final int TRIALS = 400;
    private static final int LAPS = 7;

    /** What a run has besides its setup, and what that does to its laps. */
    private record Around(
            RunConditions conditions,
            boolean fuelRecorded,
            double startKg,
            double runS,
            double perAgeS,
            double perKgS) {
        Around(RunConditions conditions, boolean fuelRecorded, double startKg, double runS, double perAgeS) {
            this(conditions, fuelRecorded, startKg, runS, perAgeS, 0.0);
        }
    }

    private static RunConditions fuel(double kg) {
        return new RunConditions(OptionalDouble.of(kg), OptionalInt.empty(), OptionalDouble.empty());
    }

    private static RunConditions track(double celsius) {
        return new RunConditions(OptionalDouble.empty(), OptionalInt.empty(), OptionalDouble.of(celsius));
    }

    private static TrialRun run(int number, boolean changed, Around around, Random chance) {
        double base = LAP_S + RUNS_S * chance.nextGaussian() + around.runS();
        List<TrialLap> laps = new ArrayList<>();
        for (int lap = 1; lap <= LAPS; lap++) {
            double aged = around.perAgeS() * (around.conditions().tyreAgeLaps().orElse(0) + lap);
            laps.add(new TrialLap(
                    lap,
                    base + aged + around.perKgS() * (around.startKg() - 2.0 * lap) + SCATTER_S * chance.nextGaussian(),
                    List.of(),
                    around.fuelRecorded() ? OptionalDouble.of(around.startKg() - 2.0 * lap) : OptionalDouble.empty(),
                    Map.of(),
                    OptionalDouble.empty()));
        }
        return new TrialRun("run " + number, changed, around.conditions(), MASS_KG, laps);
    }

    private static double perKg(Random chance) {
        return (0.16 + 0.08 * chance.nextGaussian()) * LAP_S / MASS_KG;
    }

    private static Trial trial(String order, List<Around> arounds, Random chance) {
        List<TrialRun> runs = new ArrayList<>();
        for (int r = 0; r < order.length(); r++) {
            runs.add(run(r + 1, order.charAt(r) == 'B', arounds.get(r), chance));
        }
        return TrialJudge.judge(runs, Optional.empty(), Looks.once());
    }

    private static long decided(java.util.function.Function<Random, Trial> trials) {
        Random chance = new Random(11);
        long decided = 0;
        for (int i = 0; i < TRIALS; i++) {
            TrialVerdict verdict = trials.apply(chance).verdict();
            decided += verdict == TrialVerdict.KEEP || verdict == TrialVerdict.UNDO ? 1 : 0;
        }
        return decided;
    }

    /** A lighter car is not a better one: what fuel costs is drawn from what is known of it. */
    @Test
    void lessFuelIsNotTakenForTheChange() {
        assertThat(decided(chance -> {
                    double perKg = perKg(chance);
                    return trial(
                            "AB",
                            List.of(
                                    new Around(fuel(60.0), false, 60.0, 60.0 * perKg, 0.0),
                                    new Around(fuel(20.0), false, 20.0, 20.0 * perKg, 0.0)),
                            chance);
                }))
                .isLessThanOrEqualTo(TRIALS / 20);
        assertThat(decided(chance -> {
                    double perKg = perKg(chance);
                    return trial(
                            "AB",
                            List.of(
                                    new Around(RunConditions.unknown(), false, 60.0, 60.0 * perKg, 0.0),
                                    new Around(RunConditions.unknown(), false, 20.0, 20.0 * perKg, 0.0)),
                            chance);
                }))
                .as("what nobody tells cannot be taken out")
                .isGreaterThan(TRIALS / 2);
    }

    /** Common practice: 0.03 s for a kilogram on a lap of 90 s; a point-mass lap says 0.005 to 0.012. Both lie within two deviations. */
    @Test
    void whatFuelCostsHoldsBothThatAreKnown() {
        TrialRun full = run(1, false, new Around(fuel(50.0), false, 50.0, 0.0, 0.0), new Random(1));
        TrialRun empty = run(2, true, new Around(fuel(0.0), false, 0.0, 0.0, 0.0), new Random(1));
        FuelEffect effect = FuelEffect.of(List.of(full, empty), LAP_S);
        TrialLap lap = full.laps().get(0);
        double perKg = (lap.timeS() - effect.timeS(full, lap)) / 25.0;
        double doubt = (effect.timeS(full, lap) - effect.dearerS(full, lap)) / 25.0;
        assertThat(perKg - 2.0 * doubt).isLessThan(0.005);
        assertThat(perKg + 1.5 * doubt).isGreaterThan(0.03);
    }

    @Test
    void theTracksTemperatureIsTakenOutWhereThereAreRunsEnough() {
        double[] celsius = {24, 31, 27, 22, 33, 29, 25};
        List<Around> arounds = new ArrayList<>();
        for (double one : celsius) {
            arounds.add(new Around(track(one), false, 0.0, 0.08 * one, 0.0));
        }
        assertThat(decided(chance -> trial("ABABABA", arounds, chance))).isLessThanOrEqualTo(TRIALS / 20);
        Trial told = trial("ABABABA", arounds, new Random(2));
        assertThat(told.doubts()).anyMatch(doubt -> doubt.contains("it moved by 11 K"));
        Trial few = trial("ABA", arounds.subList(0, 3), new Random(2));
        assertThat(few.doubts()).anyMatch(doubt -> doubt.contains("moved by 7 K") && doubt.contains("cannot be told"));
        assertThat(told.lapTimeS().value()).isCloseTo(0.0, within(0.2));
    }

    @Test
    void oldTyresAreNotTakenForTheChangeWhereFuelWasRecorded() {
        RunConditions fresh = new RunConditions(OptionalDouble.empty(), OptionalInt.of(0), OptionalDouble.empty());
        RunConditions worn = new RunConditions(OptionalDouble.empty(), OptionalInt.of(10), OptionalDouble.empty());
        List<Around> arounds = List.of(
                new Around(fresh, true, 40.0, 0.0, 0.06),
                new Around(worn, true, 40.0, 0.0, 0.06),
                new Around(fresh, true, 40.0, 0.0, 0.06));
        assertThat(decided(chance -> {
                    double perKg = perKg(chance);
                    return trial(
                            "ABA",
                            arounds.stream()
                                    .map(around -> new Around(around.conditions(), true, 40.0, 0.0, 0.06, perKg))
                                    .toList(),
                            chance);
                }))
                .isLessThanOrEqualTo(TRIALS / 20);
        List<Around> untold = arounds.stream()
                .map(around -> new Around(around.conditions(), false, 40.0, 0.0, 0.06))
                .toList();
        assertThat(trial("ABA", untold, new Random(4)).doubts())
                .anyMatch(doubt -> doubt.contains("differ in age by up to 10 laps") && doubt.contains("not taken out"));
    }

    @Test
    void slowFirstLapsAreLeftOutOfEveryRunAlike() {
        Random chance = new Random(6);
        List<TrialRun> runs = new ArrayList<>();
        for (int r = 0; r < 3; r++) {
            TrialRun run = run(r, r == 1, new Around(RunConditions.unknown(), false, 0.0, 0.0, 0.0), chance);
            List<TrialLap> laps = new ArrayList<>(run.laps());
            laps.set(0, new TrialLap(1, LAP_S + 2.0, Map.of(), OptionalDouble.empty()));
            runs.add(new TrialRun(run.name(), run.changed(), laps));
        }
        Trial trial = TrialJudge.judge(runs, Optional.empty(), Looks.once());
        assertThat(trial.runs()).allSatisfy(run -> assertThat(run.laps()).hasSize(LAPS - 1));
        assertThat(trial.doubts()).anyMatch(doubt -> doubt.startsWith("The first lap of every run was slow"));
        assertThat(trial.lapScatterS()).isLessThan(0.3);
    }
}
