package setwright.app.truthbench;

import java.util.List;
import java.util.Optional;
import setwright.app.world.RecordingWriter;
import setwright.app.world.WorldCar;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Parameter;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.core.simulation.truth.TrueTrigger;

/**
 * A case before it is driven.
 *
 * @param number      in its draw, from 0
 * @param kind        what is wrong
 * @param fault       in words; that of the driver for technique
 * @param trigger     of the fault's mechanism
 * @param car         sheet as its user has it, in the balanced setup
 * @param balanced    true values of the car without a fault
 * @param parameters  true values of the car as driven: others than balanced for a fault that no sheet shows
 * @param changes     that put the fault in; none without one of the setup
 * @param circuit     driven on
 * @param style       of the driver, fault included
 * @param cured       of the same driver without a fault of technique
 * @param flying      laps after the out lap
 * @param fuelKgPerM  burnt, kg/m
 * @param driverSeed  of his moods
 * @param logger      what is recorded
 * @param csv         how the file is written
 */
record BenchCase(
        int number,
        Kind kind,
        String fault,
        TrueTrigger trigger,
        WorldCar car,
        double[] balanced,
        double[] parameters,
        List<SetupChange> changes,
        CircuitPlan circuit,
        DriverStyle style,
        DriverStyle cured,
        int flying,
        double fuelKgPerM,
        long driverSeed,
        LoggerPlan logger,
        RecordingWriter.Form csv) {

    private static final double CAREFUL = 0.98;
    private static final long ANOTHER_DAY = 7_919L;

    /** Returns the true car in a setup. What is true of it is held in the balanced one: another setup gives other air, dampers and heights. */
    CarModel carIn(CarSheet setup) {
        return new CarAssembler(car.sheet()).build(setup, parameters);
    }

    /** Returns the same case with another mood of the driver, who leaves more margin after he lost the car. */
    BenchCase inAnotherMood(long otherSeed) {
        return with(
                changes,
                style.withEffort(CAREFUL * style.effort()),
                cured.withEffort(CAREFUL * cured.effort()),
                flying,
                otherSeed);
    }

    /** Tells whether a fault of technique is older than the baseline: that of every other case is. */
    boolean habitInBaseline() {
        return number % 2 == 1;
    }

    /**
     * Returns another day of the same driver with the same car in good order, recorded by the same logger.
     *
     * @param gripShare  how much more the tyres gripped then, and less in every other pair of cases
     */
    BenchCase inGoodOrder(double gripShare) {
        DriverStyle then = kind == Kind.TECHNIQUE && !habitInBaseline() ? cured : style;
        double[] thatDay = balanced.clone();
        thatDay[Parameter.GRIP.index()] += Math.log1p(number % 4 < 2 ? gripShare : -gripShare);
        return with(
                thatDay,
                List.of(),
                then,
                then,
                flying,
                driverSeed + ANOTHER_DAY,
                logger.withSeed(logger.seed() + ANOTHER_DAY));
    }

    /** Returns the same case with fewer laps. */
    BenchCase withLaps(int laps) {
        return with(changes, style, cured, laps, driverSeed);
    }

    /** Returns the same case with the last change taken back; empty when only one is left. */
    Optional<BenchCase> milder() {
        return changes.size() < 2
                ? Optional.empty()
                : Optional.of(with(changes.subList(0, changes.size() - 1), style, cured, flying, driverSeed));
    }

    private BenchCase with(
            List<SetupChange> otherChanges,
            DriverStyle otherStyle,
            DriverStyle otherCured,
            int otherFlying,
            long otherSeed) {
        return with(parameters, otherChanges, otherStyle, otherCured, otherFlying, otherSeed, logger);
    }

    private BenchCase with(
            double[] otherParameters,
            List<SetupChange> otherChanges,
            DriverStyle otherStyle,
            DriverStyle otherCured,
            int otherFlying,
            long otherSeed,
            LoggerPlan otherLogger) {
        return new BenchCase(
                number,
                kind,
                fault,
                trigger,
                car,
                balanced,
                otherParameters,
                otherChanges,
                circuit,
                otherStyle,
                otherCured,
                otherFlying,
                fuelKgPerM,
                otherSeed,
                otherLogger,
                csv);
    }

    String name() {
        return String.format(
                java.util.Locale.ROOT,
                "%03d %s, %s, %s, %.0f Hz %s",
                number,
                fault,
                car.name(),
                circuit.name(),
                logger.rateHz(),
                logger.channels().name().toLowerCase(java.util.Locale.ROOT));
    }
}
