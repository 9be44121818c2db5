package setwright.app.story;

import static setwright.app.story.SensorWords.interval;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import setwright.app.story.SensorWords.Told;
import setwright.app.units.Figures;
import setwright.core.chassis.ChassisEvidence;
import setwright.core.chassis.DayTemperatures;
import setwright.core.chassis.LapInterval;
import setwright.core.chassis.SteeringTorque;
import setwright.core.chassis.Subject;
import setwright.core.chassis.Tread;
import setwright.core.chassis.TyrePressures;
import setwright.core.chassis.WarmUp;
import setwright.core.chassis.Wheel;

/** What tyres, steering torque and the day's temperatures tell, in sentences. */
final class TyreWords {
    private static final double ZERO_C_K = 273.15;
    private static final double BAR_PA = 1.0e5;
    /** Tyres of an axle are set within two hundredths of a bar of each other; twice that is worth a look (common practice). */
    private static final double SIDES_PA = 0.04e5;

    private TyreWords() {}

    static List<Told> told(ChassisEvidence evidence, Figures figures) {
        List<Told> told = new ArrayList<>();
        evidence.warmUp().ifPresent(found -> told.add(warmUp(found, figures)));
        evidence.tread().ifPresent(found -> told.add(tread(found, figures)));
        evidence.tyrePressures().ifPresent(found -> told.add(pressures(found, figures)));
        evidence.steeringTorque().ifPresent(found -> told.add(torque(found, figures)));
        evidence.day().ifPresent(found -> told.add(day(found, figures)));
        return told;
    }

    private static Told warmUp(WarmUp found, Figures figures) {
        String high = Double.isFinite(found.tauHighS()) ? figures.number(found.tauHighS(), 0) : "no end";
        return new Told(
                Subject.WARM_UP,
                Optional.empty(),
                List.of(
                        "The tyres come up to " + celsius(found.endK(), figures) + " with a time constant of "
                                + figures.seconds(found.tauS(), 0) + " (" + figures.number(found.tauLowS(), 0) + " to "
                                + high + ").",
                        found.lapsUntil() == 0
                                ? "They are steady within 2 K from the first lap on."
                                : "They are steady within 2 K from lap " + found.steadyLap() + " on, after "
                                        + found.lapsUntil() + (found.lapsUntil() == 1 ? " lap." : " laps.")),
                "");
    }

    private static Told tread(Tread found, Figures figures) {
        List<String> sentences = new ArrayList<>();
        List<String> out = new ArrayList<>();
        sentences.add("Inner / middle / outer, in degC: "
                + found.wheels().stream()
                        .map(wheel -> wheel.wheel().words() + " " + figures.number(wheel.innerK() - ZERO_C_K, 0) + " / "
                                + figures.number(wheel.middleK() - ZERO_C_K, 0) + " / "
                                + figures.number(wheel.outerK() - ZERO_C_K, 0))
                        .collect(Collectors.joining(", "))
                + "; means of " + Figures.laps(found.laps()) + ".");
        for (Tread.OfWheel wheel : found.wheels()) {
            says(wheel.camber()).ifPresent(says -> {
                out.add(wheel.wheel().words() + " tyre, " + says);
                sentences.add(Figures.capital(wheel.wheel().words()) + ", inner over outer: "
                        + interval(wheel.innerOver(), 1.0, 1, "K", figures) + ".");
            });
            says(wheel.pressure()).ifPresent(says -> {
                out.add(wheel.wheel().words() + " tyre, " + says);
                sentences.add(Figures.capital(wheel.wheel().words()) + ", middle over both edges: "
                        + interval(wheel.middleOver(), 1.0, 1, "K", figures) + ".");
            });
        }
        return new Told(
                Subject.TREAD,
                out.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", out)),
                sentences,
                "Common practice, no more: straights and toe heat the inner edge too, surface sensors read the last corner, and"
                        + " what the maker of the tyre allows comes first.");
    }

    private static Optional<String> says(Tread.Says says) {
        return switch (says) {
            case NOTHING -> Optional.empty();
            case PRESSURE_HIGH -> Optional.of("the middle is hottest: pressure on the high side");
            case PRESSURE_LOW -> Optional.of("the edges are hottest: pressure on the low side");
            case CAMBER_MUCH -> Optional.of("the inner edge is much hotter: much negative camber");
            case CAMBER_LITTLE -> Optional.of("the outer edge is hotter: little negative camber");
        };
    }

    private static Told pressures(TyrePressures found, Figures figures) {
        List<String> sentences = new ArrayList<>();
        List<Wheel> outside = new ArrayList<>();
        sentences.add("Warm, and at the start in brackets, in bar above the air: "
                + found.wheels().stream()
                        .map(wheel -> wheel.wheel().words() + " "
                                + bars(wheel.warmPa().mean(), figures) + " (" + bars(wheel.startPa(), figures) + ")")
                        .collect(Collectors.joining(", "))
                + "; by " + Figures.laps(found.laps()) + ".");
        for (TyrePressures.OfWheel wheel : found.wheels()) {
            if (wheel.drift().clear()) {
                sentences.add(Figures.capital(wheel.wheel().words()) + " still moves by "
                        + figures.signed(wheel.drift().slope() / BAR_PA, 3) + Figures.KEPT_TOGETHER + "bar a lap.");
            }
            wheel.sheet().filter(window -> wheel.outside()).ifPresent(window -> {
                outside.add(wheel.wheel());
                sentences.add(Figures.capital(wheel.wheel().words()) + " "
                        + interval(wheel.warmPa(), 1.0 / BAR_PA, 2, "bar", figures) + ", against "
                        + bars(window.minPa(), figures) + " to " + bars(window.maxPa(), figures) + " on the sheet.");
            });
        }
        sentences.add(
                found.wheels().stream().anyMatch(wheel -> wheel.sheet().isEmpty())
                        ? "The sheet does not give all pressures."
                        : outside.isEmpty()
                                ? "All lie within the sheet's range."
                                : "The others lie within the sheet's range.");
        List<String> out = new ArrayList<>();
        if (!outside.isEmpty()) {
            out.add("the warm pressure " + SensorWords.list(outside) + " lies outside the sheet's range");
        }
        side("front", found.frontLeftOver(), figures, sentences, out);
        side("rear", found.rearLeftOver(), figures, sentences, out);
        return new Told(
                Subject.TYRE_PRESSURE,
                out.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", out)),
                sentences,
                "Whether the sheet's value is set cold or warm it does not say; the maker's and the series' limits come first, and"
                        + " the start is cold only where the recording begins before the car has run.");
    }

    private static void side(
            String axle, LapInterval leftOver, Figures figures, List<String> sentences, List<String> out) {
        if (leftOver.above(SIDES_PA) || leftOver.below(-SIDES_PA)) {
            String higher = leftOver.mean() > 0.0 ? "left" : "right";
            out.add("the " + axle + " " + higher + " tyre has the higher pressure");
            sentences.add("At the " + axle + " the left has " + interval(leftOver, 1.0 / BAR_PA, 2, "bar", figures)
                    + " more than the right.");
        }
    }

    private static Told torque(SteeringTorque found, Figures figures) {
        return new Told(
                Subject.STEERING_TORQUE,
                Optional.empty(),
                List.of(
                        "Near the front axle's peak the wheel keeps "
                                + interval(found.kept(), 100.0, 0, "%", figures)
                                + " of the torque per force that it has at light use, by "
                                + found.laps().size()
                                + " laps.",
                        found.goesLight()
                                ? "It goes light: that corroborates that the front is at its peak where its slip says so."
                                : "It does not clearly go light: it does not corroborate that the front is at its peak."),
                "Corroborates only, decides nothing: power steering, caster and kerbs act on the same torque.");
    }

    private static Told day(DayTemperatures found, Figures figures) {
        List<String> parts = new ArrayList<>();
        fromTo("track", found.trackFromK(), found.trackToK(), figures).ifPresent(parts::add);
        fromTo("air", found.airFromK(), found.airToK(), figures).ifPresent(parts::add);
        return new Told(
                Subject.DAY,
                Optional.empty(),
                List.of(
                        Figures.sentence(String.join(", ", parts)),
                        "Within one stint they move with fuel and tyres, so that what each does to the lap time is not told"
                                + " apart."),
                "");
    }

    private static Optional<String> fromTo(String what, OptionalDouble from, OptionalDouble to, Figures figures) {
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        boolean same = Math.abs(from.getAsDouble() - to.getAsDouble()) < 0.5;
        return Optional.of(what + " "
                + (same
                        ? celsius(from.getAsDouble(), figures)
                        : figures.number(from.getAsDouble() - ZERO_C_K, 0) + " to "
                                + celsius(to.getAsDouble(), figures)));
    }

    private static String celsius(double kelvin, Figures figures) {
        return figures.number(kelvin - ZERO_C_K, 0) + Figures.KEPT_TOGETHER + "degC";
    }

    private static String bars(double pascal, Figures figures) {
        return figures.number(pascal / BAR_PA, 2);
    }
}
