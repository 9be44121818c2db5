package setwright.core.car.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.sums.Gearing;
import setwright.core.car.sums.TopSpeed;

/**
 * Speeds that gears and engine allow.
 *
 * @param gears      first gear first; empty when gears, final drive or the engine's speed limit are not known
 * @param byPowerMps speed at which the air and the tyres take all the power, m/s, when the power is known
 */
public record SpeedFigures(List<Gear> gears, OptionalDouble byPowerMps) {
    /** Rolling resistance over load of racing tyres on asphalt; common practice 0.01 to 0.02. */
    static final double ROLLING_RESISTANCE = 0.015;

    /**
     * One gear.
     *
     * @param ratio            engine side over wheel side, without the final drive
     * @param atLimitMps       road speed at the engine's speed limit, m/s
     * @param afterShiftRadPerS engine speed after changing up at the limit, rad/s; empty for the last gear
     */
    public record Gear(double ratio, double atLimitMps, OptionalDouble afterShiftRadPerS) {}

    public SpeedFigures {
        gears = List.copyOf(gears);
    }

    /** Returns the speed at the limiter in the last gear, m/s, when known. */
    public OptionalDouble byLimiterMps() {
        return gears.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(gears.get(gears.size() - 1).atLimitMps());
    }

    static SpeedFigures of(CarSheet sheet, CarDetail detail, double massKg) {
        return new SpeedFigures(gears(sheet), byPower(detail, massKg));
    }

    private static List<Gear> gears(CarSheet sheet) {
        OptionalDouble finalDrive = SetupCatalogue.valueSi(sheet, SetupCatalogue.of(SetupFamily.FINAL_DRIVE));
        List<Double> ratios = sheet.gearRatios();
        List<Gear> gears = new ArrayList<>();
        if (finalDrive.isEmpty() || sheet.revLimitRadPerS().isEmpty()) {
            return gears;
        }
        double limit = sheet.revLimitRadPerS().getAsDouble();
        Gearing gearing = new Gearing(finalDrive.getAsDouble(), sheet.tyreRadiusM());
        for (int i = 0; i < ratios.size(); i++) {
            gears.add(new Gear(
                    ratios.get(i),
                    gearing.speedMps(limit, ratios.get(i)),
                    i + 1 < ratios.size()
                            ? OptionalDouble.of(Gearing.afterShiftRadPerS(limit, ratios.get(i), ratios.get(i + 1)))
                            : OptionalDouble.empty()));
        }
        return gears;
    }

    private static OptionalDouble byPower(CarDetail detail, double massKg) {
        OptionalDouble power = UsualDetail.power(detail.engine());
        if (power.isEmpty()) {
            return power;
        }
        TopSpeed resistance = new TopSpeed(
                detail.air().densityKgPerM3().orElseThrow(),
                detail.air().dragAreaM2().orElseThrow(),
                ROLLING_RESISTANCE,
                massKg);
        return OptionalDouble.of(resistance.speedMps(
                power.getAsDouble() * detail.engine().efficiency().orElseThrow()));
    }
}
