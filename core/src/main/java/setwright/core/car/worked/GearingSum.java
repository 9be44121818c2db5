package setwright.core.car.worked;

import java.util.List;
import java.util.Optional;
import setwright.core.car.sums.Gearing;

/**
 * Gears against the rev limit.
 *
 * @param limit       engine speed limit, {@code n_max}
 * @param tyreRadius  {@code r}, m
 * @param finalDrive  {@code i_f}
 * @param gears       ratios {@code i_1}, {@code i_2} ..., first gear first, at least one
 * @param speed       to show the engine speed at, {@code v}
 * @param limitAt     speed at which the last gear is to reach the limit, {@code v_lim}
 */
public record GearingSum(
        Input limit,
        Input tyreRadius,
        Input finalDrive,
        List<Input> gears,
        Optional<Input> speed,
        Optional<Input> limitAt) {
    public GearingSum {
        gears = List.copyOf(gears);
    }

    /** Works it out. */
    public Calculation calculation() {
        Calculation.Steps steps = Calculation.named("gearing", "Gears against the rev limit")
                .from(limit, tyreRadius, finalDrive)
                .from(gears)
                .from(speed)
                .from(limitAt);
        Gearing gearing = new Gearing(finalDrive.si(), tyreRadius.si());
        for (int gear = 1; gear <= gears.size(); gear++) {
            steps.result(
                    "v_" + gear,
                    "gear " + gear + ", speed at the limit",
                    gearing.speedMps(limit.si(), ratio(gear)),
                    Unit.KMH,
                    "{n_max} * pi / 30 * {r} / ({i_" + gear + "} * {i_f}) * 3.6");
        }
        for (int gear = 2; gear <= gears.size(); gear++) {
            steps.result(
                    "n_" + gear,
                    "gear " + (gear - 1) + " to " + gear + " at the limit, engine drops to",
                    Gearing.afterShiftRadPerS(limit.si(), ratio(gear - 1), ratio(gear)),
                    Unit.RPM,
                    "{n_max} * {i_" + gear + "} / {i_" + (gear - 1) + "}");
        }
        speed.ifPresent(v -> atSpeed(steps, gearing, v));
        limitAt.ifPresent(v -> steps.result(
                "i_new",
                "final drive for the limit in gear " + gears.size() + " at " + SumWords.plain(v),
                Gearing.finalDriveFor(limit.si(), v.si(), ratio(gears.size()), tyreRadius.si()),
                Unit.RATIO,
                "{n_max} * pi / 30 * {r} / ({i_" + gears.size() + "} * {v_lim} / 3.6)"));
        return steps.note(
                        "The tyre is taken to roll without slip; a driven tyre slips a few per cent, and grows at speed.")
                .source("rolling without slip, v = omega r / (i_gear i_f)");
    }

    private void atSpeed(Calculation.Steps steps, Gearing gearing, Input v) {
        for (int gear = 1; gear <= gears.size(); gear++) {
            Result engine = steps.result(
                    "m_" + gear,
                    "gear " + gear + ", engine speed at " + SumWords.plain(v),
                    gearing.engineRadPerS(v.si(), ratio(gear)),
                    Unit.RPM,
                    "{v} / 3.6 * {i_" + gear + "} * {i_f} / {r} * 30 / pi");
            if (engine.value() > limit.value()) {
                steps.finding("Gear " + gear + " is over the rev limit at " + SumWords.plain(v) + ".");
            }
        }
    }

    private double ratio(int gear) {
        return gears.get(gear - 1).si();
    }
}
