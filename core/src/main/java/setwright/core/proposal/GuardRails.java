package setwright.core.proposal;

import java.util.ArrayList;
import java.util.List;
import setwright.core.advice.Advice;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.body.Axle;
import setwright.core.car.figures.BrakeFigures;
import setwright.core.car.figures.CarFigures;
import setwright.core.car.figures.RideFrequencies;
import setwright.core.car.figures.UndersteerModel;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.setup.SetupPlace;
import setwright.core.car.sums.Gravity;
import setwright.core.proposal.Refusal.Figure;
import setwright.core.proposal.Refusal.Kind;

/*
 * Design note. A rail stops a change that leaves a band, or goes further out of it; a car that is outside already may come back. All bands
 * are common practice, taken wide: they are to stop what nobody would bolt on, not to tune the car.
 */

/** Says which changes are not to be made, whatever they promise. */
final class GuardRails {
    /** Slow damping over critical: below it the body goes on bouncing, above it the wheel no longer follows the road. */
    private static final double LEAST_DAMPING = 0.2;

    private static final double MOST_DAMPING = 1.5;
    /** Fuel and ballast move these figures by less than is shown of them: that is no step further out. */
    private static final double SHOWN = 0.005;
    /** A stop that is met by less than this is met with any setup over a kerb. */
    private static final double CONTACT_M = 0.001;
    /** Downforce is mostly assumed, and with it how far the springs are pressed together: to about a third. */
    private static final double DOWNFORCE_DOUBT = 0.3;

    private final CarSheet sheet;
    private final CarModel present;
    private final double fastestMps;
    private final MeasuredEnds measured;

    /**
     * Makes them.
     *
     * @param sheet       of the car as driven
     * @param present     the same car
     * @param fastestMps  highest speed of the laps, m/s
     * @param measured    what else the laps showed
     */
    GuardRails(CarSheet sheet, CarModel present, double fastestMps, List<Advice> measured) {
        this.sheet = sheet;
        this.present = present;
        this.fastestMps = fastestMps;
        this.measured = new MeasuredEnds(measured);
    }

    /** Returns why a change is not to be made to the car; empty when nothing stands in its way. */
    List<Refusal> against(CarSheet changed, CarModel model) {
        List<Refusal> reasons = new ArrayList<>(measured.against(sheet, changed));
        for (SetupPlace place : List.of(SetupPlace.FRONT, SetupPlace.REAR)) {
            frequency(place, model, reasons);
            damping(place, model, reasons);
        }
        brakes(changed, reasons);
        contact(changed, model, reasons);
        return reasons;
    }

    private void frequency(SetupPlace place, CarModel model, List<Refusal> reasons) {
        double was = hertz(present, place);
        double is = hertz(model, place);
        if (furtherOut(was, is, RideFrequencies.LOWEST_HZ, RideFrequencies.highestHz(sheet.downforce()))) {
            double most = RideFrequencies.highestHz(sheet.downforce());
            reasons.add(Refusal.of(
                    Kind.RIDE_FREQUENCY,
                    Refusal.text(
                            "the %s ride frequency would be %.2f Hz (now %.2f), outside the %.0f to %.0f Hz of such a car",
                            place.words(), is, was, RideFrequencies.LOWEST_HZ, most),
                    new Figure("ride_frequency_hz", is),
                    new Figure("ride_frequency_now_hz", was),
                    new Figure("ride_frequency_least_hz", RideFrequencies.LOWEST_HZ),
                    new Figure("ride_frequency_most_hz", most)));
        }
    }

    /** Also of a change that leaves the dampers alone: what is critical follows spring and mass. */
    private void damping(SetupPlace place, CarModel model, List<Refusal> reasons) {
        double was = critical(present, place);
        double is = critical(model, place);
        double[] before = {
            axle(present, place).damper().bumpSlow() / was,
            axle(present, place).damper().reboundSlow() / was
        };
        double[] after = {
            axle(model, place).damper().bumpSlow() / is,
            axle(model, place).damper().reboundSlow() / is
        };
        for (int i = 0; i < 2; i++) {
            if (furtherOut(before[i], after[i], LEAST_DAMPING, MOST_DAMPING)) {
                reasons.add(Refusal.of(
                        Kind.DAMPING,
                        Refusal.text(
                                "the %s damping in %s would be %.2f of critical (now %.2f), outside %.1f to %.1f",
                                place.words(),
                                i == 0 ? "bump" : "rebound",
                                after[i],
                                before[i],
                                LEAST_DAMPING,
                                MOST_DAMPING),
                        new Figure("damping_ratio", after[i]),
                        new Figure("damping_ratio_now", before[i]),
                        new Figure("damping_ratio_least", LEAST_DAMPING),
                        new Figure("damping_ratio_most", MOST_DAMPING)));
            }
        }
    }

    private void brakes(CarSheet changed, List<Refusal> reasons) {
        BrakeFigures before = CarFigures.of(sheet, UndersteerModel.NONE).brakes();
        BrakeFigures after = CarFigures.of(changed, UndersteerModel.NONE).brakes();
        if (before.biasShare().isEmpty() || after.biasShare().isEmpty()) {
            return;
        }
        double was = before.biasShare().getAsDouble();
        double is = after.biasShare().getAsDouble();
        if (is < was && is < after.idealShare()) {
            reasons.add(Refusal.of(
                    Kind.BRAKE_BALANCE,
                    Refusal.text(
                            "with %.1f %% of the braking at the front the rear axle would lock before the front at 1 g (%.1f %% is"
                                    + " where both lock together)",
                            100.0 * is, 100.0 * after.idealShare()),
                    new Figure("brake_front_share", is),
                    new Figure("brake_front_share_even", after.idealShare())));
        }
    }

    /** On the bump stops, or on the ground, at the highest speed of the laps. */
    private void contact(CarSheet changed, CarModel model, List<Refusal> reasons) {
        if (sheet.downforce() == Downforce.NONE) {
            return;
        }
        for (SetupPlace place : List.of(SetupPlace.FRONT, SetupPlace.REAR)) {
            double was = compression(present, place);
            double is = compression(model, place);
            double overWas = was - axle(present, place).bumpStopGapM();
            double overIs = is - axle(model, place).bumpStopGapM();
            if (overIs > CONTACT_M + DOWNFORCE_DOUBT * is && overIs > overWas + CONTACT_M) {
                reasons.add(Refusal.of(
                        Kind.BUMP_STOPS,
                        Refusal.text(
                                "at %.0f km/h the %s would be %.0f mm into its bump stops (now %s)",
                                3.6 * fastestMps, place.words(), 1000.0 * overIs, depth(overWas, "clear of them")),
                        new Figure("speed_kmh", 3.6 * fastestMps),
                        new Figure("into_stops_mm", 1000.0 * overIs),
                        new Figure("into_stops_now_mm", 1000.0 * overWas)));
            }
            double clear = clearance(changed, place) - is;
            double clearWas = clearance(sheet, place) - was;
            if (clear < -DOWNFORCE_DOUBT * is && clear < clearWas - CONTACT_M) {
                reasons.add(Refusal.of(
                        Kind.GROUND,
                        Refusal.text(
                                "at %.0f km/h the %s would touch the ground: its springs give way by %.0f mm more than its height"
                                        + " (now %s)",
                                3.6 * fastestMps, place.words(), -1000.0 * clear, depth(-clearWas, "clear of it")),
                        new Figure("speed_kmh", 3.6 * fastestMps),
                        new Figure("clearance_mm", 1000.0 * clear),
                        new Figure("clearance_now_mm", 1000.0 * clearWas)));
            }
        }
    }

    /** How far the springs of an axle are pressed together at speed, m; NaN when there is no such state. */
    private double compression(CarModel model, SetupPlace place) {
        double along = place == SetupPlace.FRONT
                ? -model.body().toFrontM()
                : model.body().toRearM();
        return new Equilibrium(model)
                .at(fastestMps, 0.0, 0.0)
                .map(state -> -(state.heaveM() + along * state.pitchRad()))
                .orElse(Double.NaN);
    }

    private static double clearance(CarSheet of, SetupPlace place) {
        return SetupCatalogue.valueSi(of, SetupCatalogue.of(SetupFamily.RIDE_HEIGHT, place))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double hertz(CarModel model, SetupPlace place) {
        return Math.sqrt(axle(model, place).rideRate() / sprung(model, place)) / (2.0 * Math.PI);
    }

    private static double critical(CarModel model, SetupPlace place) {
        return 2.0 * Math.sqrt(axle(model, place).rideRate() * sprung(model, place));
    }

    /** Sprung mass on one wheel, kg. */
    private static double sprung(CarModel model, SetupPlace place) {
        double load = place == SetupPlace.FRONT
                ? model.body().staticFrontN()
                : model.body().staticRearN();
        return load / Gravity.STANDARD_MPS2 - 0.5 * axle(model, place).unsprungMassKg();
    }

    private static Axle axle(CarModel model, SetupPlace place) {
        return place == SetupPlace.FRONT ? model.body().front() : model.body().rear();
    }

    private static boolean furtherOut(double was, double is, double least, double most) {
        return (is < least && was - is > SHOWN) || (is > most && is - was > SHOWN);
    }

    private static String depth(double metres, String none) {
        return metres > 0.0 ? Refusal.text("%.0f mm", 1000.0 * metres) : none;
    }
}
