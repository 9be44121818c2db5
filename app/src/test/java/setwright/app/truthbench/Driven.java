package setwright.app.truthbench;

import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.driver.StintPlan;
import setwright.core.simulation.driver.StintSimulator;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.Tank;
import setwright.core.simulation.vehicle.TyreCondition;

/**
 * A case as it was driven.
 *
 * @param last      the case, with the mood in which it could be driven
 * @param sheet     of the car with its fault
 * @param line      that stations belong to
 * @param recorded  with the fault
 * @param without   the same driver, without it; the same stint where there is none to compare
 * @param lost      how often the car was lost in other moods
 */
record Driven(BenchCase last, CarSheet sheet, ReferenceLine line, DrivenStint recorded, DrivenStint without, int lost) {
    private static final double LINE_STEP_M = 2.0;
    private static final int PRACTICE = 8;
    private static final int MOST_MOODS = 4;

    /** Nobody could keep this car on the road. */
    static final class Undriveable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Undriveable(String name) {
            super(name + ": lost in " + MOST_MOODS + " moods");
        }
    }

    /** Drives a case with its fault and, where there is something to compare, without. */
    static Driven of(BenchCase drawn) {
        return of(drawn, drawn.kind().ofTheCar() || drawn.kind() == Kind.TECHNIQUE);
    }

    /** Drives a case with its fault only. */
    static Driven recorded(BenchCase drawn) {
        return of(drawn, false);
    }

    private static Driven of(BenchCase drawn, boolean compares) {
        ReferenceLine line = drawn.circuit().line(LINE_STEP_M);
        CarModel balanced = balanced(drawn);
        BenchCase mood = drawn;
        for (int lost = 0; lost < MOST_MOODS; lost++) {
            CarSheet sheet = mood.car().sheet().with(mood.changes());
            DrivenStint recorded = drive(mood, line, mood.carIn(sheet), mood.style());
            if (recorded.lost().isEmpty()) {
                DrivenStint without = compares ? drive(mood, line, balanced, mood.cured()) : recorded;
                if (without.lost().isEmpty()) {
                    return new Driven(mood, sheet, line, recorded, without, lost);
                }
            }
            BenchCase before = mood;
            BenchCase other = lost % 2 == 1 ? before.milder().orElse(before) : before;
            mood = other.inAnotherMood(drawn.driverSeed() + lost + 1);
        }
        throw new Undriveable(drawn.name());
    }

    /**
     * Returns what the same driver drives on another day in the car without its fault; empty when he loses it.
     *
     * @param gripShare  how much more the tyres gripped then, or less
     */
    Optional<GoodDay> goodDay(double gripShare) {
        BenchCase good = last.inGoodOrder(gripShare);
        CarModel car = good.carIn(good.car().sheet());
        return Optional.of(new GoodDay(good, drive(good, line, car, good.style())))
                .filter(day -> day.driven().lost().isEmpty());
    }

    /** Returns the true car as it was recorded. */
    CarModel faulty() {
        return last.carIn(sheet);
    }

    /** Returns the true car without the fault. */
    CarModel balanced() {
        return balanced(last);
    }

    private static CarModel balanced(BenchCase drawn) {
        return new CarAssembler(drawn.car().sheet()).build(drawn.balanced());
    }

    /** Returns the true car as it was recorded, but for a change. */
    CarModel with(SetupChange change) {
        return last.carIn(sheet.with(List.of(change)));
    }

    /** Returns the stint that the same driver, in the same mood, drives in another car that he learns anew. */
    DrivenStint again(CarModel car) {
        return drive(last, line, car, last.style());
    }

    private static DrivenStint drive(BenchCase mood, ReferenceLine line, CarModel car, DriverStyle style) {
        return StintSimulator.drive(new StintPlan(
                line,
                Road.of(mood.circuit()),
                car,
                RunningGear.usual(),
                TyreCondition.usual(),
                new Tank(mood.car().sheet().fuelStartKg(), mood.fuelKgPerM()),
                style,
                mood.flying(),
                PRACTICE,
                mood.driverSeed()));
    }
}
