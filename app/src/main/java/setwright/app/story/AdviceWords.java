package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.app.units.Figures;
import setwright.core.advice.Advice;
import setwright.core.advice.AdviceReview;
import setwright.core.advice.AdviceReview.Silent;
import setwright.core.advice.BrakeAdvice;
import setwright.core.advice.DriftAdvice;
import setwright.core.advice.GearingAdvice;
import setwright.core.advice.TemperatureAdvice;
import setwright.core.advice.TravelAdvice;
import setwright.core.car.setup.ItemRange;

/** Advice from evidence other than balance, in sentences. */
public final class AdviceWords {
    private AdviceWords() {}

    /** Returns all that a review advises, with evidence and cautions, topic by topic. */
    public static List<String> given(AdviceReview review, Figures figures) {
        return review.advice().stream()
                .map(advice -> Figures.capital(advice.topic().words()) + ": " + what(advice, figures) + " "
                        + String.join(" ", evidence(advice, figures)) + " " + String.join(" ", cautions(advice)))
                .toList();
    }

    static Story.Link tell(AdviceReview review, Figures figures) {
        List<String> details = new ArrayList<>(given(review, figures));
        silent(review.silent(), true, "Looked at, and nothing shows: ").ifPresent(details::add);
        silent(review.silent(), false, "Not recorded: ").ifPresent(details::add);
        String answer = review.advice().isEmpty()
                ? "Nothing else asks for a change."
                : Figures.capital(Figures.words(review.advice().stream()
                                .map(advice -> advice.topic().words())
                                .distinct()
                                .toList()))
                        + (review.advice().stream()
                                                .map(Advice::topic)
                                                .distinct()
                                                .count()
                                        == 1
                                ? " does."
                                : " do.");
        return new Story.Link("Does anything besides the balance ask for attention?", answer, details);
    }

    private static java.util.Optional<String> silent(List<Silent> silent, boolean recorded, String before) {
        List<String> topics = silent.stream()
                .filter(found -> found.recorded() == recorded)
                .map(found -> found.topic().words() + " (" + found.why() + ")")
                .toList();
        return topics.isEmpty()
                ? java.util.Optional.empty()
                : java.util.Optional.of(before + String.join("; ", topics) + ".");
    }

    /** Returns what to do, in one sentence. */
    public static String what(Advice advice, Figures figures) {
        String move = advice.move()
                .map(turn -> "turn " + turn.item() + " " + ItemRange.plain(turn.from()) + " to "
                        + ItemRange.plain(turn.to()))
                .orElse("");
        if (advice instanceof GearingAdvice gearing) {
            return gearing(gearing, move, figures);
        } else if (advice instanceof BrakeAdvice brake) {
            String way = brake.front() ? "rearward" : "forward";
            return Figures.sentence("the " + axle(brake.front()) + " locks first: brake balance one step " + way
                    + (move.isEmpty() ? ", where the car allows it" : ", " + move));
        } else if (advice instanceof TravelAdvice travel) {
            String end = switch (travel.end()) {
                case GROUND -> "touches the ground";
                case BUMP_STOP -> "runs on its bump stops";
                case UNKNOWN_STOP -> "runs against a stop";
            };
            return Figures.sentence("the " + axle(travel.front()) + " " + end + ": raise it there"
                    + (move.isEmpty() ? "" : ", " + move) + ", or stiffen that axle");
        } else if (advice instanceof TemperatureAdvice temperature) {
            return temperature(temperature, figures);
        } else if (advice instanceof DriftAdvice drift) {
            return drift(drift, figures);
        }
        throw new IllegalArgumentException("no words for " + advice.topic());
    }

    private static String gearing(GearingAdvice gearing, String move, Figures figures) {
        String to = gearing.newLimitMps().isPresent()
                ? ": the limiter then comes at "
                        + figures.speed(gearing.newLimitMps().getAsDouble()) + ", not at "
                        + figures.speed(gearing.limitMps())
                : "; the final drive has no step left that way";
        return gearing.onLimiter()
                ? "The engine is on its limiter in top gear before the brakes" + (move.isEmpty() ? "" : ": " + move)
                        + to + "."
                : "In top gear the engine never comes beyond " + figures.percent(gearing.highestShare())
                        + " of its limit: the gearing is long" + (move.isEmpty() ? "" : "; " + move) + to + ".";
    }

    private static String temperature(TemperatureAdvice temperature, Figures figures) {
        return "The "
                + hotter(temperature.frontOverRear(), "front axle runs", "rear axle runs", "axles run alike", figures)
                + ", the "
                + hotter(temperature.leftOverRight(), "left side", "right side", "sides alike", figures) + ".";
    }

    /** A difference that would be written as nothing is none. */
    private static String hotter(double byK, String first, String second, String alike, Figures figures) {
        return Math.abs(byK) < 0.5
                ? alike
                : (byK > 0.0 ? first : second) + " " + kelvin(Math.abs(byK), figures) + " hotter than the other";
    }

    private static String drift(DriftAdvice drift, Figures figures) {
        List<String> parts = new ArrayList<>();
        if (drift.balanceMoves()) {
            double sign = Math.signum(drift.balance().slope());
            double least = sign > 0.0 ? drift.balance().low() : drift.balance().high();
            double most = sign > 0.0 ? drift.balance().high() : drift.balance().low();
            parts.add("The balance moves by "
                    + figures.degreesSize(drift.span() * drift.balance().slope()) + " ("
                    + figures.number(Math.toDegrees(Math.abs(drift.span() * least)), 2) + " to "
                    + figures.number(Math.toDegrees(Math.abs(drift.span() * most)), 2) + ") over the stint towards "
                    + (sign > 0.0 ? "understeer" : "oversteer") + ": tyres or fuel, not setup.");
        }
        if (drift.timeMoves()) {
            parts.add("The laps get " + (drift.time().slope() > 0.0 ? "slower" : "quicker") + " by "
                    + figures.seconds(Math.abs(drift.time().slope()), 2) + " a lap ("
                    + figures.number(drift.time().low(), 2) + " to "
                    + figures.number(drift.time().high(), 2) + ")"
                    + (Double.isFinite(drift.fuelKg()) ? ", burnt fuel allowed for." : "; fuel was not recorded."));
        }
        return String.join(" ", parts);
    }

    /** Returns what it rests on, one sentence each. */
    public static List<String> evidence(Advice advice, Figures figures) {
        List<String> evidence = new ArrayList<>();
        if (advice instanceof GearingAdvice gearing) {
            gearing.places()
                    .forEach(place -> evidence.add("Before corner " + place.corner() + " for "
                            + figures.seconds(place.seconds(), 1) + ", from " + figures.distance(place.stationM())
                            + " on, in " + place.laps() + " laps."));
        } else if (advice instanceof BrakeAdvice brake) {
            evidence.add(brake.locks() + " locks of the " + axle(brake.front()) + " and " + brake.others() + " of the "
                    + axle(!brake.front()) + " in " + Figures.laps(brake.laps()) + ", up to "
                    + figures.seconds(brake.seconds(), 2) + " long"
                    + (brake.corners().isEmpty() ? "." : ", at " + Figures.corners(brake.corners()) + "."));
        } else if (advice instanceof TravelAdvice travel) {
            evidence.add("It compresses by up to " + millimetres(travel.mostM(), figures) + "; the end is at "
                    + millimetres(travel.roomM(), figures) + ", and it is there for "
                    + figures.seconds(travel.secondsLap(), 2) + " a lap"
                    + (travel.corners().isEmpty() ? "." : ", also in " + Figures.corners(travel.corners()) + "."));
        } else if (advice instanceof TemperatureAdvice temperature) {
            evidence.add(String.format(
                    Locale.ROOT,
                    "Front %.0f and %.0f, rear %.0f and %.0f degC (left and right), the later half of the laps.",
                    temperature.frontLeftK() - 273.15,
                    temperature.frontRightK() - 273.15,
                    temperature.rearLeftK() - 273.15,
                    temperature.rearRightK() - 273.15));
            if (temperature.drift().clear()) {
                evidence.add("On average they change by "
                        + figures.number(temperature.drift().slope(), 1) + " K a lap ("
                        + figures.number(temperature.drift().low(), 1) + " to "
                        + figures.number(temperature.drift().high(), 1) + ").");
            }
        } else if (advice instanceof DriftAdvice drift) {
            evidence.add("By " + drift.laps().size() + " laps; rank correlation of balance and lap "
                    + figures.number(drift.balanceTau(), 2) + ".");
        }
        return evidence;
    }

    /** Returns what to mind. */
    public static List<String> cautions(Advice advice) {
        return switch (advice.topic()) {
            case GEARING ->
                List.of("Mind the shifts in the slow corners, and whether the rules leave the final drive free.");
            case BRAKE_BALANCE ->
                List.of(
                        "One step, checked in a straight line at low speed by a qualified person: too far to the rear spins the"
                                + " car, and locks may come from the foot.");
            case RIDE_HEIGHT ->
                List.of(
                        "Taken from wheel travel and the sheet's heights: measure on the car before turning; rules set least"
                                + " heights.");
            case TYRE_TEMPERATURE ->
                List.of(
                        "One temperature a tyre says nothing of camber, and the good window is what the maker of the tyre says.");
            case DRIFT -> List.of("Do not set the car up against it: compare first laps with first laps.");
        };
    }

    private static String axle(boolean front) {
        return front ? "front" : "rear";
    }

    private static String kelvin(double value, Figures figures) {
        return figures.number(value, 0) + Figures.KEPT_TOGETHER + "K";
    }

    private static String millimetres(double metres, Figures figures) {
        return figures.number(1000.0 * metres, 1) + Figures.KEPT_TOGETHER + "mm";
    }
}
