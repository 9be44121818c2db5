package setwright.app.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import setwright.app.car.Given;
import setwright.app.units.UnitSystem;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.SetupLabel;
import setwright.core.car.figures.Assumption;
import setwright.core.car.figures.AxleFigures;
import setwright.core.car.figures.CarFigures;
import setwright.core.car.figures.RollFigures;
import setwright.core.car.figures.SpeedFigures;
import setwright.core.car.setup.SetupCatalogue;

/** The tables of a checked car sheet. */
final class CarTables {
    private static final double RADPS_TO_RPM = 30.0 / Math.PI;
    private static final double PER_M_TO_PER_MM = 1.0e-3;

    private CarTables() {}

    static TextTable car(CarSheet sheet) {
        return table(
                List.of("the car", ">is", "unit", "source"),
                Arrays.stream(CarRow.values())
                        .map(row -> List.of(
                                row.words, row.value(sheet), row.unit, sheet.assumes(row.key()) ? "assumed" : "sheet"))
                        .toList());
    }

    /** Tells whether the table of the car shows this key of the sheet. */
    static boolean isShown(String key) {
        return Arrays.stream(CarRow.values()).anyMatch(row -> row.key().equals(key));
    }

    /** A row of the car's table, named after its key on the sheet. */
    private enum CarRow {
        DRIVEN_AXLE("driven axle", ""),
        MASS_WITH_DRIVER_KG("mass with driver", "kg"),
        FUEL_START_KG("fuel at the start", "kg"),
        FRONT_WEIGHT_SHARE("weight on the front axle", "%"),
        WHEELBASE_M("wheelbase", "m"),
        TRACK_FRONT_M("track, front", "m"),
        TRACK_REAR_M("track, rear", "m"),
        CENTRE_OF_MASS_HEIGHT_M("centre of mass height", "m"),
        STEERING_RATIO("steering ratio", ""),
        TYRE_RADIUS_M("tyre radius", "m"),
        MOTION_RATIO_FRONT("motion ratio, front", ""),
        MOTION_RATIO_REAR("motion ratio, rear", ""),
        DOWNFORCE("downforce", "");

        private final String words;
        private final String unit;

        CarRow(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        private String key() {
            return lower(this);
        }

        private String value(CarSheet sheet) {
            return switch (this) {
                case DRIVEN_AXLE -> lower(sheet.drivenAxle());
                case MASS_WITH_DRIVER_KG -> fixed(sheet.massKg(), 0);
                case FUEL_START_KG -> fixed(sheet.fuelStartKg(), 1);
                case FRONT_WEIGHT_SHARE -> fixed(100.0 * sheet.frontWeightShare(), 1);
                case WHEELBASE_M -> fixed(sheet.wheelbaseM(), 3);
                case TRACK_FRONT_M -> fixed(sheet.trackFrontM(), 3);
                case TRACK_REAR_M -> fixed(sheet.trackRearM(), 3);
                case CENTRE_OF_MASS_HEIGHT_M -> fixed(sheet.centreOfMassHeightM(), 3);
                case STEERING_RATIO -> fixed(sheet.steeringRatio(), 2);
                case TYRE_RADIUS_M -> fixed(sheet.tyreRadiusM(), 3);
                case MOTION_RATIO_FRONT -> fixed(sheet.motionRatioFront(), 3);
                case MOTION_RATIO_REAR -> fixed(sheet.motionRatioRear(), 3);
                case DOWNFORCE -> lower(sheet.downforce());
            };
        }
    }

    static TextTable setup(CarSheet sheet) {
        List<List<String>> rows = new ArrayList<>();
        for (SetupItem item : sheet.setup()) {
            rows.add(List.of(
                    item.name(),
                    plain(item.value()),
                    item.unit(),
                    plain(item.min()),
                    plain(item.max()),
                    plain(item.step()),
                    axle(item.name())));
        }
        for (SetupLabel label : sheet.labels()) {
            String choices = label.choices().isEmpty() ? "" : "of " + String.join(", ", label.choices());
            rows.add(List.of(label.name(), label.value(), choices, "", "", "", axle(label.name())));
        }
        return table(List.of("setup item", ">now", "unit", ">from", ">to", ">step", "axle"), rows);
    }

    private static String axle(String name) {
        return SetupCatalogue.find(name).map(kind -> kind.place().words()).orElse("not modelled");
    }

    static TextTable axles(CarFigures figures) {
        Axles rows = new Axles(figures);
        rows.add("axle load", "N", 0, axle -> OptionalDouble.of(axle.loadN()));
        rows.add("load of one wheel", "N", 0, axle -> OptionalDouble.of(axle.wheelLoadN()));
        rows.add("spring at the wheel", "N/mm", 1, ride(ride -> ride.wheelRateNPerM() * PER_M_TO_PER_MM));
        rows.add("spring and tyre in series", "N/mm", 1, ride(ride -> ride.rideRateNPerM() * PER_M_TO_PER_MM));
        rows.add("ride frequency, tyre included", "Hz", 2, AxleFigures::frequencyHz);
        rows.add("damping ratio, slow bump", "", 2, damping(AxleFigures.Damping::bumpLow));
        rows.add("damping ratio, fast bump", "", 2, damping(AxleFigures.Damping::bumpHigh));
        rows.add("damping ratio, slow rebound", "", 2, damping(AxleFigures.Damping::reboundLow));
        rows.add("damping ratio, fast rebound", "", 2, damping(AxleFigures.Damping::reboundHigh));
        rows.add("roll stiffness, springs", "Nm/deg", 0, roll(AxleFigures.Roll::springsNmPerRad));
        rows.add("roll stiffness, bar", "Nm/deg", 0, roll(AxleFigures.Roll::barNmPerRad));
        figures.roll().ifPresent(roll -> {
            RollFigures.Transfer front = roll.front();
            RollFigures.Transfer rear = roll.rear();
            rows.add(
                    "share of springs and bars",
                    "%",
                    1,
                    share(roll.stiffnessShare()),
                    share(1.0 - roll.stiffnessShare()));
            rows.add("lateral load transfer at 1 g", "N", 0, front.totalN(), rear.totalN());
            rows.add("  share of it", "%", 1, share(roll.transferShare()), share(1.0 - roll.transferShare()));
            rows.add("  by roll stiffness", "N", 0, front.elasticN(), rear.elasticN());
            rows.add("  by roll centre height", "N", 0, front.geometricN(), rear.geometricN());
            rows.add("  by unsprung mass", "N", 0, front.unsprungN(), rear.unsprungN());
            rows.add("inner wheel lifts at", "g", 2, front.liftG(), rear.liftG());
        });
        rows.add(
                "axle load braking at 1 g",
                "N",
                0,
                figures.brakes().frontLoadN(),
                figures.brakes().rearLoadN());
        return table(List.of("at rest and at 1 g", ">front", ">rear", "unit"), rows.rows);
    }

    private static double share(double share) {
        return 100.0 * share;
    }

    /** Rows with a value for each axle; a row that neither axle has is left out. */
    private static final class Axles {
        private final CarFigures figures;
        private final List<List<String>> rows = new ArrayList<>();

        private Axles(CarFigures figures) {
            this.figures = figures;
        }

        private void add(String words, String unit, int decimals, Function<AxleFigures, OptionalDouble> value) {
            OptionalDouble front = value.apply(figures.front());
            OptionalDouble rear = value.apply(figures.rear());
            if (front.isPresent() || rear.isPresent()) {
                rows.add(List.of(words, known(front, decimals), known(rear, decimals), unit));
            }
        }

        private void add(String words, String unit, int decimals, double front, double rear) {
            rows.add(List.of(words, fixed(front, decimals), fixed(rear, decimals), unit));
        }
    }

    private static Function<AxleFigures, OptionalDouble> ride(ToDoubleFunction<AxleFigures.Ride> value) {
        return axle -> axle.ride().stream().mapToDouble(value).findFirst();
    }

    private static Function<AxleFigures, OptionalDouble> damping(ToDoubleFunction<AxleFigures.Damping> value) {
        return axle -> axle.ride().flatMap(AxleFigures.Ride::damping).stream()
                .mapToDouble(value)
                .findFirst();
    }

    private static Function<AxleFigures, OptionalDouble> roll(ToDoubleFunction<AxleFigures.Roll> value) {
        return axle -> axle.roll().stream()
                .mapToDouble(roll -> Math.toRadians(value.applyAsDouble(roll)))
                .findFirst();
    }

    static TextTable gears(List<SpeedFigures.Gear> gears, UnitSystem units) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < gears.size(); i++) {
            SpeedFigures.Gear gear = gears.get(i);
            OptionalDouble after = gear.afterShiftRadPerS();
            rows.add(List.of(
                    String.valueOf(i + 1),
                    plain(gear.ratio()),
                    fixed(units.speed(gear.atLimitMps()), 0),
                    after.isPresent() ? fixed(after.getAsDouble() * RADPS_TO_RPM, 0) : ""));
        }
        return table(List.of(">gear", ">ratio", ">limiter at, " + units.speedUnit(), ">after changing up, rpm"), rows);
    }

    static TextTable given(List<Given> given) {
        return table(
                List.of("also given", ">value", "unit"),
                given.stream()
                        .map(g -> List.of(g.key(), rounded(g.value()), g.unit()))
                        .toList());
    }

    static TextTable usual(List<Assumption> assumed) {
        return table(
                List.of("key", ">value", "unit"),
                assumed.stream()
                        .map(a -> List.of(a.key(), plain(a.value()), a.unit()))
                        .toList());
    }

    /** A heading that begins with {@code >} stands flush right. */
    private static TextTable table(List<String> headings, List<List<String>> rows) {
        return new TextTable(
                headings.stream()
                        .map(h -> new TextTable.Column(h.replaceFirst("^>", ""), h.startsWith(">"), 1))
                        .toList(),
                rows.stream()
                        .map(row -> row.stream().map(TextTable.Cell::of).toList())
                        .toList());
    }

    private static String known(OptionalDouble value, int decimals) {
        return value.isPresent() ? fixed(value.getAsDouble(), decimals) : "";
    }

    static String fixed(double value, int decimals) {
        return Double.isInfinite(value) ? "never" : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** Undoes what conversion to SI and back leaves in the last digits. */
    private static String rounded(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(8))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
