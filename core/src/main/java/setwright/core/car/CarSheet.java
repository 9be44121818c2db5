package setwright.core.car;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of a car, in SI units; what the user did not give is filled in by the reader and listed in {@code
 * assumed}.
 *
 * @param description           in the user's words
 * @param drivenAxle            which wheels the engine drives
 * @param massKg                with driver, without fuel, kg
 * @param fuelStartKg           fuel at the start of the stint, kg
 * @param frontWeightShare      static share of the weight on the front axle, 0..1
 * @param wheelbaseM            m
 * @param trackFrontM           m
 * @param trackRearM            m
 * @param centreOfMassHeightM   above the ground, m
 * @param steeringRatio         steering wheel angle over road wheel angle
 * @param tyreRadiusM           rolling radius, m
 * @param gearRatios            first gear first; empty when unknown
 * @param revLimitRadPerS       engine speed limit, rad/s, when known
 * @param brakePressureMaxPa    greatest brake pressure, Pa, when known
 * @param motionRatioFront      spring travel over wheel travel
 * @param motionRatioRear       spring travel over wheel travel
 * @param barFront              wheel rate of the front anti-roll bar, when known
 * @param barRear               wheel rate of the rear anti-roll bar, when known
 * @param downforce             how strong
 * @param detail                what only a well informed user knows
 * @param setup                 the adjustable items, in the order of the sheet
 * @param labels                the items that are words, such as tyre compounds, in the order of the sheet
 * @param assumed               one sentence for each value that was not given, beginning with its key
 */
public record CarSheet(
        String description,
        DrivenAxle drivenAxle,
        double massKg,
        double fuelStartKg,
        double frontWeightShare,
        double wheelbaseM,
        double trackFrontM,
        double trackRearM,
        double centreOfMassHeightM,
        double steeringRatio,
        double tyreRadiusM,
        List<Double> gearRatios,
        OptionalDouble revLimitRadPerS,
        OptionalDouble brakePressureMaxPa,
        double motionRatioFront,
        double motionRatioRear,
        Optional<BarRate> barFront,
        Optional<BarRate> barRear,
        Downforce downforce,
        CarDetail detail,
        List<SetupItem> setup,
        List<SetupLabel> labels,
        List<String> assumed) {

    /**
     * Wheel rate of an anti-roll bar as a function of its position.
     *
     * @param baseNPerM         at position 0, N/m at the wheel
     * @param perPositionNPerM  added per position, N/m at the wheel
     */
    public record BarRate(double baseNPerM, double perPositionNPerM) {}

    public CarSheet {
        gearRatios = List.copyOf(gearRatios);
        setup = List.copyOf(setup);
        labels = List.copyOf(labels);
        assumed = List.copyOf(assumed);
    }

    /** A sheet without details and labels. */
    public CarSheet(
            String description,
            DrivenAxle drivenAxle,
            double massKg,
            double fuelStartKg,
            double frontWeightShare,
            double wheelbaseM,
            double trackFrontM,
            double trackRearM,
            double centreOfMassHeightM,
            double steeringRatio,
            double tyreRadiusM,
            List<Double> gearRatios,
            OptionalDouble revLimitRadPerS,
            OptionalDouble brakePressureMaxPa,
            double motionRatioFront,
            double motionRatioRear,
            Optional<BarRate> barFront,
            Optional<BarRate> barRear,
            Downforce downforce,
            List<SetupItem> setup,
            List<String> assumed) {
        this(
                description,
                drivenAxle,
                massKg,
                fuelStartKg,
                frontWeightShare,
                wheelbaseM,
                trackFrontM,
                trackRearM,
                centreOfMassHeightM,
                steeringRatio,
                tyreRadiusM,
                gearRatios,
                revLimitRadPerS,
                brakePressureMaxPa,
                motionRatioFront,
                motionRatioRear,
                barFront,
                barRear,
                downforce,
                CarDetail.NONE,
                setup,
                List.of(),
                assumed);
    }

    /** Returns the distance from the centre of gravity to the front axle, m. */
    public double frontAxleToCentreM() {
        return wheelbaseM * (1.0 - frontWeightShare);
    }

    /** Returns the distance from the centre of gravity to the rear axle, m. */
    public double rearAxleToCentreM() {
        return wheelbaseM * frontWeightShare;
    }

    /** Tells whether the value under this key of the sheet was not given but assumed. */
    public boolean assumes(String key) {
        return assumed.stream().anyMatch(sentence -> sentence.startsWith(key + " "));
    }

    /** Returns this sheet with items at other values; changes of items that it does not have are left out. */
    public CarSheet with(List<SetupChange> changes) {
        List<SetupItem> changed = setup.stream()
                .map(item -> changes.stream()
                        .filter(change -> change.item().equals(item.name()))
                        .reduce((first, last) -> last)
                        .map(change -> new SetupItem(
                                item.name(), change.to(), item.unit(), item.min(), item.max(), item.step()))
                        .orElse(item))
                .toList();
        return new CarSheet(
                description,
                drivenAxle,
                massKg,
                fuelStartKg,
                frontWeightShare,
                wheelbaseM,
                trackFrontM,
                trackRearM,
                centreOfMassHeightM,
                steeringRatio,
                tyreRadiusM,
                gearRatios,
                revLimitRadPerS,
                brakePressureMaxPa,
                motionRatioFront,
                motionRatioRear,
                barFront,
                barRear,
                downforce,
                detail,
                changed,
                labels,
                assumed);
    }

    /** Returns the setup item of that name. */
    public Optional<SetupItem> item(String name) {
        return setup.stream().filter(item -> item.name().equals(name)).findFirst();
    }

    /** Returns the item of that name that is a word. */
    public Optional<SetupLabel> label(String name) {
        return labels.stream().filter(label -> label.name().equals(name)).findFirst();
    }
}
