package setwright.app.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import setwright.app.units.Figures;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.SetupItem;
import setwright.core.car.figures.AxleFigures;
import setwright.core.car.figures.BrakeFigures;
import setwright.core.car.figures.CarFigures;
import setwright.core.car.figures.RideFrequencies;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;

/** What is possible but unusual, or leaves no room: worth a second look before anything is built on it. */
final class Remarks {
    private static final double FASTEST_LIMITER_MPS = 110.0;
    private static final double SLOWEST_LIMITER_MPS = 25.0;
    private static final double END_OF_RANGE = 1.0e-6;

    private final CarSheet sheet;
    private final CarFigures figures;
    private final Figures shown;
    private final List<String> remarks = new ArrayList<>();

    private Remarks(CarSheet sheet, CarFigures figures, Figures shown) {
        this.sheet = sheet;
        this.figures = figures;
        this.shown = shown;
    }

    static List<String> of(CarSheet sheet, CarFigures figures, Figures shown) {
        Remarks remarks = new Remarks(sheet, figures, shown);
        remarks.frequency("front", figures.front());
        remarks.frequency("rear", figures.rear());
        remarks.brakes();
        remarks.gearing();
        remarks.wings();
        remarks.rake();
        sheet.setup().forEach(remarks::room);
        return remarks.remarks;
    }

    private void frequency(String end, AxleFigures axle) {
        OptionalDouble frequency = axle.frequencyHz();
        if (frequency.isPresent()
                && !(frequency.getAsDouble() >= RideFrequencies.LOWEST_HZ
                        && frequency.getAsDouble() <= RideFrequencies.highestHz(sheet.downforce()))) {
            say(
                    "A %s ride frequency of %.1f Hz is unusual for this kind of car (%.0f to %.0f Hz): check %s_spring, its"
                            + " unit and motion_ratio_%s.",
                    end,
                    frequency.getAsDouble(),
                    RideFrequencies.LOWEST_HZ,
                    RideFrequencies.highestHz(sheet.downforce()),
                    end,
                    end);
        }
    }

    private void brakes() {
        BrakeFigures brakes = figures.brakes();
        if (brakes.frontLocksFirst().isPresent() && !brakes.frontLocksFirst().orElseThrow()) {
            say(
                    "With %.1f %% of the braking at the front the rear axle locks first at 1 g, before engine braking is"
                            + " counted; equal locking needs %.1f %%.",
                    100.0 * brakes.biasShare().orElseThrow(), 100.0 * brakes.idealShare());
        }
    }

    private void gearing() {
        OptionalDouble limiter = figures.speeds().byLimiterMps();
        if (limiter.isPresent()
                && !(limiter.getAsDouble() >= SLOWEST_LIMITER_MPS && limiter.getAsDouble() <= FASTEST_LIMITER_MPS)) {
            say(
                    "The limiter in the last gear at %s is unusual: check gear_ratios, final_drive, rev_limit_rpm and"
                            + " tyre_radius_m.",
                    speed(limiter.getAsDouble()));
        }
        OptionalDouble power = figures.speeds().byPowerMps();
        if (limiter.isPresent() && power.isPresent() && limiter.getAsDouble() < power.getAsDouble()) {
            say(
                    "The limiter ends the last gear at %s; the power would reach %s.",
                    speed(limiter.getAsDouble()), speed(power.getAsDouble()));
        }
    }

    private void wings() {
        boolean hasWing = sheet.setup().stream()
                .anyMatch(item -> SetupCatalogue.find(item.name())
                        .map(kind -> kind.family() == SetupFamily.WING)
                        .orElse(false));
        if (hasWing && sheet.downforce() == Downforce.NONE) {
            say("The setup has a wing, but downforce is none: say moderate or strong if the wing works.");
        }
    }

    private void rake() {
        if (figures.rakeRad().orElse(0.0) < 0.0) {
            say("The floor rises toward the front: check front_ride_height and rear_ride_height.");
        }
    }

    private void room(SetupItem item) {
        double close = END_OF_RANGE * Math.max(1.0, Math.abs(item.value()));
        if (item.min() == item.max()) {
            return;
        }
        if (item.value() - item.min() < close) {
            say("%s stands at the low end of its range and can only go up.", item.name());
        } else if (item.max() - item.value() < close) {
            say("%s stands at the high end of its range and can only go down.", item.name());
        }
    }

    private String speed(double mps) {
        return shown.speed(mps).replace(Figures.KEPT_TOGETHER, ' ');
    }

    private void say(String format, Object... values) {
        remarks.add(String.format(Locale.ROOT, format, values));
    }
}
