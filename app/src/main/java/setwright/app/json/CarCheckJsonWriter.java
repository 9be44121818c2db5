package setwright.app.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import setwright.app.car.CarCheck;
import setwright.app.car.Given;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.CarSheet;
import setwright.core.car.figures.AxleFigures;
import setwright.core.car.figures.BrakeFigures;
import setwright.core.car.figures.CarFigures;
import setwright.core.car.figures.RollFigures;
import setwright.core.car.figures.SpeedFigures;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.car.sums.Gravity;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes what there is to say of a car sheet as JSON of version 1. Units stand in the field names. */
public final class CarCheckJsonWriter {
    private static final int VERSION = 1;
    private static final int DECIMALS = 4;
    private static final double RADPS_TO_RPM = 30.0 / Math.PI;
    private static final double MPS_TO_KMH = 3.6;

    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private CarCheckJsonWriter() {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(CarCheck check) {
        return MAPPER.writeValueAsString(of(check)) + "\n";
    }

    private static CarCheckJson of(CarCheck check) {
        CarSheet sheet = check.sheet();
        return new CarCheckJson(
                VERSION,
                car(sheet),
                Given.of(sheet).stream()
                        .map(given -> new CarCheckJson.Keyed(given.key(), known(given.value()), given.unit()))
                        .toList(),
                sheet.setup().stream()
                        .map(item -> new CarCheckJson.Item(
                                item.name(),
                                item.value(),
                                item.unit(),
                                item.min(),
                                item.max(),
                                item.step(),
                                axle(item.name()),
                                SetupCatalogue.find(item.name()).isPresent(),
                                actsOn(item.name())))
                        .toList(),
                sheet.labels().stream()
                        .map(label -> new CarCheckJson.Label(
                                label.name(),
                                label.value(),
                                label.choices(),
                                axle(label.name()),
                                SetupCatalogue.find(label.name()).isPresent(),
                                actsOn(label.name())))
                        .toList(),
                figures(check.figures()),
                check.remarks(Figures.forTerminal(UnitSystem.METRIC)),
                check.figures().untold(),
                sheet.assumed(),
                check.figures().assumed().stream()
                        .map(usual -> new CarCheckJson.Keyed(usual.key(), known(usual.value()), usual.unit()))
                        .toList());
    }

    private static String axle(String name) {
        return SetupCatalogue.find(name).map(kind -> kind.place().words()).orElse("none");
    }

    private static String actsOn(String name) {
        Optional<SetupItemKind> kind = SetupCatalogue.find(name);
        return kind.map(k -> k.family().actsOn()).orElse("Kept, not modelled.");
    }

    private static CarCheckJson.Car car(CarSheet sheet) {
        return new CarCheckJson.Car(
                sheet.description(),
                sheet.drivenAxle().name().toLowerCase(Locale.ROOT),
                sheet.downforce().name().toLowerCase(Locale.ROOT),
                known(sheet.massKg()),
                known(sheet.fuelStartKg()),
                known(sheet.frontWeightShare()),
                known(sheet.wheelbaseM()),
                known(sheet.trackFrontM()),
                known(sheet.trackRearM()),
                known(sheet.centreOfMassHeightM()),
                known(sheet.steeringRatio()),
                known(sheet.tyreRadiusM()),
                known(sheet.motionRatioFront()),
                known(sheet.motionRatioRear()));
    }

    private static CarCheckJson.Derived figures(CarFigures figures) {
        Optional<RollFigures> roll = figures.roll();
        BrakeFigures brakes = figures.brakes();
        List<SpeedFigures.Gear> gears = figures.speeds().gears();
        return new CarCheckJson.Derived(
                known(figures.massKg()),
                axle(figures.front(), roll.map(RollFigures::front), brakes.frontLoadN()),
                axle(figures.rear(), roll.map(RollFigures::rear), brakes.rearLoadN()),
                of(roll, r -> Math.toDegrees(r.gradientRad())),
                of(roll, RollFigures::stiffnessShare),
                of(roll, RollFigures::transferShare),
                times(figures.understeerGradient(), Math.toDegrees(Gravity.STANDARD_MPS2)),
                times(figures.rakeRad(), Math.toDegrees(1.0)),
                new CarCheckJson.Brakes(
                        known(brakes.transferN()),
                        known(brakes.idealShare()),
                        times(brakes.biasShare(), 1.0),
                        times(brakes.togetherG(), 1.0),
                        brakes.frontLocksFirst()
                                .map(front -> front ? "front" : "rear")
                                .orElse("unknown")),
                IntStream.range(0, gears.size())
                        .mapToObj(i -> new CarCheckJson.Gear(
                                i + 1,
                                gears.get(i).ratio(),
                                known(gears.get(i).atLimitMps() * MPS_TO_KMH),
                                times(gears.get(i).afterShiftRadPerS(), RADPS_TO_RPM)))
                        .toList(),
                times(figures.speeds().byLimiterMps(), MPS_TO_KMH),
                times(figures.speeds().byPowerMps(), MPS_TO_KMH));
    }

    private static CarCheckJson.Axle axle(
            AxleFigures axle, Optional<RollFigures.Transfer> transfer, double brakingLoadN) {
        Optional<AxleFigures.Ride> ride = axle.ride();
        Optional<AxleFigures.Damping> damping = ride.flatMap(AxleFigures.Ride::damping);
        Optional<AxleFigures.Roll> roll = axle.roll();
        return new CarCheckJson.Axle(
                known(axle.loadN()),
                known(axle.wheelLoadN()),
                known(axle.sprungMassKg()),
                of(ride, r -> r.wheelRateNPerM() / 1.0e3),
                of(ride, r -> r.rideRateNPerM() / 1.0e3),
                of(ride, AxleFigures.Ride::frequencyHz),
                of(damping, AxleFigures.Damping::bumpLow),
                of(damping, AxleFigures.Damping::bumpHigh),
                of(damping, AxleFigures.Damping::reboundLow),
                of(damping, AxleFigures.Damping::reboundHigh),
                of(roll, r -> Math.toRadians(r.springsNmPerRad())),
                of(roll, r -> Math.toRadians(r.barNmPerRad())),
                of(transfer, RollFigures.Transfer::totalN),
                of(transfer, RollFigures.Transfer::elasticN),
                of(transfer, RollFigures.Transfer::geometricN),
                of(transfer, RollFigures.Transfer::unsprungN),
                of(transfer, RollFigures.Transfer::liftG),
                known(brakingLoadN));
    }

    private static <T> OptionalDouble of(Optional<T> holder, ToDoubleFunction<T> value) {
        return holder.map(held -> known(value.applyAsDouble(held))).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? known(value.getAsDouble() * factor) : value;
    }

    private static OptionalDouble known(double value) {
        return Double.isFinite(value)
                ? OptionalDouble.of(BigDecimal.valueOf(value)
                        .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                        .doubleValue())
                : OptionalDouble.empty();
    }
}
