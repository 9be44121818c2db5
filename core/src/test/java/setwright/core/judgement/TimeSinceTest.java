package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.numerics.Robust;

final class TimeSinceTest {
    private static final double PUSHES = Math.toRadians(0.6);

    private static CarSheet with(double fuelKg) {
        CarSheet sheet = Drive.sheet();
        return new CarSheet(
                sheet.description(),
                sheet.drivenAxle(),
                sheet.massKg(),
                fuelKg,
                sheet.frontWeightShare(),
                sheet.wheelbaseM(),
                sheet.trackFrontM(),
                sheet.trackRearM(),
                sheet.centreOfMassHeightM(),
                sheet.steeringRatio(),
                sheet.tyreRadiusM(),
                sheet.gearRatios(),
                sheet.revLimitRadPerS(),
                sheet.brakePressureMaxPa(),
                sheet.motionRatioFront(),
                sheet.motionRatioRear(),
                sheet.barFront(),
                sheet.barRear(),
                sheet.downforce(),
                sheet.detail(),
                sheet.setup(),
                sheet.labels(),
                sheet.assumed());
    }

    private static TimeSince of(Drive drive, CarSheet now, Drive good, CarSheet then) {
        return TimeSince.of(drive.stint(), now, Baseline.of("day", good.stint(), then))
                .orElseThrow();
    }

    /** In laps that differ by so much, known to a tenth, on days that may make four tenths of it. */
    private static TimeSince since(double seconds) {
        return new TimeSince(new TimeSince.Difference(seconds, 0.1), Map.of(), 0.4, Optional.empty());
    }

    private static Finding finding(double sizeRad) {
        return Findings.mid(BalanceSign.UNDERSTEER, SpeedRange.ALL, sizeRad, new Finding.Price(0.1, -1.0, 3.0));
    }

    private static double medianS(Stint stint) {
        return Robust.median(stint.goodLaps().stream().mapToDouble(Lap::timeS).toArray());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void isWhatTheLapsTakeMore(long seed) {
        TimeSince since = of(new Drive(seed).top(46.0), Drive.sheet(), new Drive(seed + 50L), Drive.sheet());
        double lost = medianS(new Drive(seed).top(46.0).stint()) - medianS(new Drive(seed + 50L).stint());
        assertThat(since.whole().seconds()).isCloseTo(lost, within(1.0e-9)).isPositive();
        assertThat(since.lost()).isPresent();
        assertThat(since.sentence(finding(PUSHES)))
                .contains("s slower than in the baseline", "that is its price", "runs back to back tell it better");

        TimeSince back = of(new Drive(seed + 50L), Drive.sheet(), new Drive(seed).top(46.0), Drive.sheet());
        assertThat(back.whole().seconds()).isCloseTo(-lost, within(1.0e-9));
        assertThat(back.lost()).isEmpty();
        assertThat(back.price(PUSHES).isGain()).isTrue();
        assertThat(back.sentence(finding(PUSHES)))
                .contains("s quicker than in the baseline", "it costs nothing that shows");
    }

    /** Common practice: 0.03 s a kilogram on a lap of 90 s, for a car of about 750 kg; a point mass gives a quarter of it and more. */
    @Test
    void fuelOnBoardIsTakenOut() {
        TimeSince alike = of(new Drive(1), with(20.0), new Drive(2), with(20.0));
        TimeSince heavier = of(new Drive(1), with(50.0), new Drive(2), with(20.0));
        double usual = medianS(new Drive(2).stint());
        double practice = 0.03 * 30.0 * usual / 90.0 * 750.0 / (Drive.sheet().massKg() + 20.0);
        double taken = alike.whole().seconds() - heavier.whole().seconds();
        assertThat(taken).isBetween(0.25 * practice, practice);
        assertThat(heavier.whole().deviationS()).isGreaterThan(alike.whole().deviationS());
        // what is left open reaches to either
        double doubt = Math.sqrt(heavier.whole().deviationS() * heavier.whole().deviationS()
                - alike.whole().deviationS() * alike.whole().deviationS());
        assertThat(taken + 1.96 * doubt).isGreaterThan(practice);
        assertThat(taken - 1.96 * doubt).isLessThan(0.25 * practice);
    }

    @Test
    void tooFewLapsTellNothing() {
        Baseline good = Baseline.of("day", new Drive(2).stint(), Drive.sheet());
        assertThat(TimeSince.of(new Drive(1).laps(2).stint(), Drive.sheet(), good))
                .isEmpty();
    }

    /** What the reckoned price holds in seconds of an interval, the laps tell to tenths. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void isThePriceOfWhatCameSince(long seed) {
        Stint slower = new Drive(seed).pushes(PUSHES, corner -> true).top(47.0).stint();
        Stint good = new Drive(seed + 50L).top(48.0).stint();
        Diagnosis diagnosis =
                Diagnostician.diagnose(slower, Drive.sheet(), Optional.of(Baseline.of("day", good, Drive.sheet())));
        Finding first = diagnosis.findings().get(0);
        double lost = medianS(slower) - medianS(good);
        assertThat(first.price().seconds()).isCloseTo(lost, within(1.0e-9));
        assertThat(first.price().low()).isLessThan(lost);
        assertThat(first.price().high()).isGreaterThan(lost);
        Finding.Price reckoned = Diagnostician.diagnose(slower, Drive.sheet())
                .grounds()
                .level()
                .orElseThrow()
                .price();
        assertThat(first.price().high() - first.price().low()).isLessThan(0.5 * (reckoned.high() - reckoned.low()));
        assertThat(first.why()).anyMatch(why -> why.contains("that is its price"));
    }

    @Test
    void aQuickerLapIsSaidToBeQuicker() {
        Drive quicker = new Drive(11).pushes(PUSHES, corner -> true).top(48.0);
        Drive good = new Drive(61).top(46.0);
        Diagnosis diagnosis = Diagnostician.diagnose(
                quicker.stint(), Drive.sheet(), Optional.of(Baseline.of("day", good.stint(), Drive.sheet())));
        assertThat(diagnosis.reason()).contains("quicker than in the baseline all the same (");
    }

    /** A problem that is worth no change is not charged with all that the laps lose. */
    @Test
    void aSmallProblemIsChargedInProportion() {
        TimeSince since = since(1.0);
        for (double share : List.of(0.0, 0.25, 1.0)) {
            Finding.Price price = since.price(share * Yardstick.LEAST_RAD);
            assertThat(price.seconds()).isCloseTo(share, within(1.0e-12));
            assertThat(price.high() - price.low())
                    .isCloseTo(share * 2.0 * 1.645 * Math.sqrt(0.1 * 0.1 + 0.4 * 0.4), within(1.0e-12));
        }
        assertThat(since.price(2.0 * Yardstick.LEAST_RAD)).isEqualTo(since.price(Yardstick.LEAST_RAD));
        assertThat(since.sentence(finding(0.25 * Yardstick.LEAST_RAD))).contains("25 % of that is its price");
        TimeSince quicker = since(-1.0);
        assertThat(quicker.price(0.25 * Yardstick.LEAST_RAD).seconds())
                .as("a gain is not the problem's")
                .isEqualTo(-1.0);
    }

    @Test
    void onlyWhatCameSinceAllRoundTheLapIsPricedByIt() {
        TimeSince since = since(1.0);
        Finding car = finding(PUSHES);
        assertThat(since.prices(since.priced(car, FeetSince.NONE))).isTrue();
        Finding habit = car.ofTheDriver("a habit of both days");
        assertThat(since.priced(habit, FeetSince.NONE)).isEqualTo(habit);
        assertThat(since.prices(habit)).isFalse();
    }

    @Test
    void theFuelIsSaidToBeAllowedFor() {
        TimeSince heavier = of(new Drive(1), with(50.0), new Drive(2), with(20.0));
        assertThat(heavier.sentence(finding(PUSHES)))
                .contains("(30 kg more fuel allowed for)", "such as tyres or weather");
        TimeSince unknown = since(1.0);
        assertThat(unknown.sentence(finding(PUSHES)))
                .contains("such as tyres, fuel or weather")
                .doesNotContain("allowed for");
    }

    @Test
    void theCornersThatLoseAreNamedTheMostFirst() {
        TimeSince since = new TimeSince(
                new TimeSince.Difference(0.5, 0.1),
                Map.of(
                        1, new TimeSince.Difference(0.11, 0.02),
                        2, new TimeSince.Difference(0.30, 0.02),
                        3, new TimeSince.Difference(-0.15, 0.02),
                        4, new TimeSince.Difference(0.03, 0.02)),
                0.0,
                Optional.empty());
        assertThat(since.where())
                .contains(
                        "By corner, with the straight after it: 0.30 s lost in corner 2, 0.15 s gained in corner 3, 0.11 s lost in corner 1.");
        assertThat(since(0.5).where()).isEmpty();
    }

    /** Slower straights lose time behind every corner. */
    @Test
    void whatIsLostAllRoundIsLostBehindEveryCorner() {
        TimeSince since = of(new Drive(1).top(46.0), Drive.sheet(), new Drive(51), Drive.sheet());
        assertThat(since.corners()).hasSize(Drive.CORNERS);
        double sum = since.corners().values().stream()
                .mapToDouble(TimeSince.Difference::seconds)
                .sum();
        assertThat(sum)
                .isCloseTo(since.whole().seconds(), within(0.2 * since.whole().seconds()));
        assertThat(since.corners().values())
                .allSatisfy(corner -> assertThat(corner.seconds()).isPositive());
    }
}
