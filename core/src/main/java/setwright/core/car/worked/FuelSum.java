package setwright.core.car.worked;

import java.util.Optional;
import setwright.core.car.sums.FuelStint;

/**
 * Fuel for a stint.
 *
 * @param perLap   {@code u}
 * @param reserve  left at the end, {@code R}
 * @param density  {@code rho}
 * @param laps     {@code n}; or
 * @param time     of the stint, {@code T}, with
 * @param lapTime  {@code t}
 * @param inTank   at the start, {@code F_0}, when the laps it allows are asked for
 */
public record FuelSum(
        Input perLap,
        Input reserve,
        Input density,
        Optional<Input> laps,
        Optional<Input> time,
        Optional<Input> lapTime,
        Optional<Input> inTank) {

    /**
     * Works it out.
     *
     * @throws ImpossibleSum when nothing is asked for
     */
    public Calculation calculation() {
        boolean timed = time.isPresent() && lapTime.isPresent();
        if (laps.isEmpty() && !timed && inTank.isEmpty()) {
            throw new ImpossibleSum("laps, a time with a lap time, or the fuel in the tank is needed");
        }
        Calculation.Steps steps = Calculation.named("fuel", "Fuel for a stint")
                .from(perLap, reserve, density)
                .from(laps)
                .from(time)
                .from(lapTime)
                .from(inTank);
        // Litres throughout: a litre over a litre is a count, whichever the unit.
        FuelStint fuel = new FuelStint(perLap.si(), reserve.si());
        if (laps.isPresent()) {
            start(steps, fuel, laps.get().si());
        } else if (timed) {
            int lapsInTime = FuelStint.lapsIn(
                    time.orElseThrow().si(), lapTime.orElseThrow().si());
            steps.result("n", "laps, the last one begun in time", lapsInTime, Unit.COUNT, "ceil(60 * {T} / {t})");
            start(steps, fuel, lapsInTime);
        }
        inTank.ifPresent(tank -> steps.result(
                "n_0",
                "whole laps on " + SumWords.plain(tank),
                fuel.lapsFrom(tank.si()),
                Unit.COUNT,
                "floor(({F_0} - {R}) / {u})"));
        return steps.note(
                        "Every lap counts: add those to the grid, behind a safety car and back to the pits to the laps.")
                .source("use per lap times laps and a reserve (common practice)");
    }

    private void start(Calculation.Steps steps, FuelStint fuel, double count) {
        double start = fuel.startFor(count);
        steps.result("F", "fuel at the start", start, Unit.LITRE, "{n} * {u} + {R}");
        steps.result("m", "its mass", start * density.si(), Unit.MASS, "{F} * {rho}");
    }
}
