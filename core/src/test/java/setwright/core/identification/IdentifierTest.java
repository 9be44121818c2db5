package setwright.core.identification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Moment;
import setwright.core.car.model.Parameter;
import setwright.core.replay.DrivenLap;
import setwright.core.replay.LapRun;

/** A car with known parameters drives invented laps; its balance angles are handed in as measured. */
final class IdentifierTest {
    private static final CarSheet SHEET = Sheets.plain(DrivenAxle.REAR, 1200, 0.48, 2.6, 14.0, 0.45);
    private static final double STEP = 0.04;
    private static final int CORNERS = 6;
    private static final double LEAST_LATERAL = 1.3;

    @Test
    void findsWhatTheTrueCarIs() {
        CarPrior prior = CarPrior.of(SHEET);
        double[] truth = prior.middle();
        truth[Parameter.GRIP_SPLIT.index()] = -0.05;
        truth[Parameter.PEAK_SLIP_SPLIT.index()] = 0.2;
        truth[Parameter.POWER.index()] = 0.15;

        CarBelief belief = Identifier.fit(evidence(truth, true), prior);

        for (Parameter parameter :
                List.of(Parameter.GRIP_SPLIT, Parameter.PEAK_SLIP_SPLIT, Parameter.POWER, Parameter.GRIP)) {
            double away = belief.middle(parameter) - truth[parameter.index()];
            assertThat(Math.abs(away)).as("%s", parameter).isLessThan(2.5 * belief.spread(parameter));
        }
        assertThat(belief.spread(Parameter.POWER)).isLessThan(0.3 * prior.spread(Parameter.POWER));
        assertThat(belief.spread(Parameter.PEAK_SLIP_SPLIT)).isLessThan(0.8 * prior.spread(Parameter.PEAK_SLIP_SPLIT));
        assertThat(belief.middle(Parameter.PEAK_SLIP_SPLIT)).isPositive();
    }

    @Test
    void fitsTheBalanceBetterThanTheSheetDid() {
        CarPrior prior = CarPrior.of(SHEET);
        double[] truth = prior.middle();
        truth[Parameter.GRIP_SPLIT.index()] = 0.06;
        truth[Parameter.PEAK_SLIP_SPLIT.index()] = -0.2;
        Evidence evidence = evidence(truth, true);

        CarBelief belief = Identifier.fit(evidence, prior);

        assertThat(misfit(evidence, belief.middle())).isLessThan(0.5 * misfit(evidence, prior.middle()));
    }

    @Test
    void smallerStepsLeadToTheSameCar() {
        CarPrior prior = CarPrior.of(SHEET);
        double[] truth = prior.middle();
        truth[Parameter.GRIP_SPLIT.index()] = -0.05;
        truth[Parameter.PEAK_SLIP_SPLIT.index()] = 0.2;
        Evidence evidence = evidence(truth, true);

        CarBelief usual = Identifier.fit(evidence, prior);
        CarBelief closer = Identifier.fit(evidence, prior, 1.0e-3);

        assertThat(Parameter.values())
                .allSatisfy(parameter -> assertThat(usual.middle(parameter))
                        .isCloseTo(closer.middle(parameter), within(0.2 * closer.spread(parameter))));
    }

    @Test
    void saysThatLapsWithoutStraightsDoNotTellThePower() {
        CarPrior prior = CarPrior.of(SHEET);
        CarBelief belief = Identifier.fit(evidence(prior.middle(), false), prior);
        List<FittedValue> values = FittedValues.of(SHEET, CarBelief.of(prior), belief, false);

        assertThat(value(values, "engine_power").told()).isFalse();
        assertThat(value(values, "engine_power").why()).contains("needs straights");
        assertThat(value(values, "grip").told()).isTrue();
        assertThat(values).allSatisfy(value -> {
            assertThat(value.low()).isLessThanOrEqualTo(value.value());
            assertThat(value.high()).isGreaterThanOrEqualTo(value.value());
        });
    }

    private static FittedValue value(List<FittedValue> values, String key) {
        return values.stream()
                .filter(value -> value.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static double misfit(Evidence evidence, double[] parameters) {
        double[][] pairs = evidence.balances(parameters);
        double sum = 0.0;
        for (int i = 0; i < pairs[0].length; i++) {
            sum += Math.abs(pairs[0][i] - pairs[1][i]);
        }
        return sum / pairs[0].length;
    }

    private static Evidence evidence(double[] truth, boolean straights) {
        CarModel car = new CarAssembler(SHEET).build(truth);
        List<DrivenLap> laps = new ArrayList<>();
        for (int number = 1; number <= 3; number++) {
            DrivenLap silent = lap(number, car, straights);
            LapRun run = LapRun.ofPhases(car, silent, LEAST_LATERAL);
            double[] balance = new double[silent.size()];
            for (int k = 0; k < balance.length; k++) {
                balance[k] = run.balance(k);
            }
            laps.add(new DrivenLap(
                    number, STEP, silent.moments(), silent.station(), silent.corner(), silent.phase(), balance));
        }
        return new Evidence(List.of(
                new StintEvidence(SHEET, laps, CORNERS, LEAST_LATERAL, new BrakeSplit(Double.NaN, Double.NaN))));
    }

    /** Corners of rising speed: two seconds each of entry, mid and exit, and a straight at full throttle. */
    private static DrivenLap lap(int number, CarModel car, boolean straights) {
        List<Moment> moments = new ArrayList<>();
        List<Integer> phase = new ArrayList<>();
        List<Integer> corner = new ArrayList<>();
        for (int c = 0; c < CORNERS; c++) {
            double speed = 20.0 + 4.0 * c;
            for (int p = 1; p <= 3; p++) {
                for (double t = 0.0; t < 2.0; t += STEP) {
                    double lateral = (p == 2 ? 12.0 : 10.0) - 1.5 * (c % 2);
                    double forward = p == 1 ? -4.0 : p == 2 ? 0.0 : 2.0;
                    double throttle = p == 3 ? 0.6 : 0.1;
                    double brake = p == 1 ? 0.4 : 0.0;
                    moments.add(new Moment(
                            speed,
                            forward,
                            lateral,
                            lateral / speed,
                            0.0,
                            2.6 * lateral / (speed * speed),
                            throttle,
                            brake));
                    phase.add(p);
                    corner.add(c);
                }
            }
            for (double v = speed; straights && v < speed + 25.0; v += 0.2) {
                moments.add(new Moment(v, StintEvidence.modelled(car, v), 0.0, 0.0, 0.0, 0.0, 1.0, 0.0));
                phase.add(-1);
                corner.add(c);
            }
        }
        double[] station = new double[moments.size()];
        for (int k = 1; k < station.length; k++) {
            station[k] = station[k - 1] + STEP * moments.get(k).speed();
        }
        return new DrivenLap(
                number,
                STEP,
                moments,
                station,
                corner.stream().mapToInt(Integer::intValue).toArray(),
                phase.stream().mapToInt(Integer::intValue).toArray(),
                new double[moments.size()]);
    }
}
