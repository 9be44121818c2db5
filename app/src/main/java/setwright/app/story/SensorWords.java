package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.units.Figures;
import setwright.core.chassis.BrakePressures;
import setwright.core.chassis.ChassisEvidence;
import setwright.core.chassis.DamperMotion;
import setwright.core.chassis.LapInterval;
import setwright.core.chassis.RideHeights;
import setwright.core.chassis.Subject;
import setwright.core.chassis.Wheel;

/** What dampers, ride heights and brakes tell, in sentences; tyres and steering are {@link TyreWords}'. */
public final class SensorWords {
    /** The least even ones. */
    private static final int CORNERS_SHOWN = 3;

    private SensorWords() {}

    /**
     * What one kind of sensor tells.
     *
     * @param subject    what was looked at
     * @param standsOut  what asks for attention, in a few words; empty where nothing does
     * @param sentences  with figures and laps
     * @param caution    what to mind; empty where nothing hangs on it
     */
    public record Told(Subject subject, Optional<String> standsOut, List<String> sentences, String caution) {
        public Told {
            sentences = List.copyOf(sentences);
        }
    }

    /** Returns what was found, subject by subject. */
    public static List<Told> told(ChassisEvidence evidence, Figures figures) {
        List<Told> told = new ArrayList<>();
        evidence.dampers().ifPresent(found -> told.add(dampers(found, figures)));
        evidence.rideHeights().ifPresent(found -> told.add(heights(found, figures)));
        evidence.brakePressures().ifPresent(found -> told.add(brakes(found, figures)));
        told.addAll(TyreWords.told(evidence, figures));
        return told;
    }

    static Story.Link tell(ChassisEvidence evidence, Figures figures) {
        List<Told> told = told(evidence, figures);
        List<String> details = new ArrayList<>();
        for (Told one : told) {
            details.add(Figures.capital(one.subject().words()) + ": " + String.join(" ", one.sentences())
                    + (one.caution().isEmpty() ? "" : " " + one.caution()));
        }
        missing(evidence, true, "Not to be read from what was recorded: ").ifPresent(details::add);
        missing(evidence, false, "Not recorded: ").ifPresent(details::add);
        return new Story.Link("What do the other sensors tell?", answer(told), details);
    }

    private static String answer(List<Told> told) {
        if (told.isEmpty()) {
            return "None of them could be read; nothing depends on them.";
        }
        List<String> out =
                told.stream().flatMap(one -> one.standsOut().stream()).toList();
        return out.isEmpty()
                ? Figures.capital(Figures.words(
                                told.stream().map(one -> one.subject().words()).toList()))
                        + " were looked at: nothing stands out."
                : Figures.sentence(String.join("; ", out));
    }

    private static Optional<String> missing(ChassisEvidence evidence, boolean recorded, String before) {
        List<String> subjects = evidence.missing().stream()
                .filter(missing -> missing.recorded() == recorded)
                .map(missing -> missing.subject().words() + " (" + missing.why() + ")")
                .toList();
        return subjects.isEmpty() ? Optional.empty() : Optional.of(before + String.join("; ", subjects) + ".");
    }

    private static Told dampers(DamperMotion found, Figures figures) {
        List<String> sentences = new ArrayList<>();
        List<String> fast = new ArrayList<>();
        List<String> rms = new ArrayList<>();
        List<String> uneven = new ArrayList<>();
        for (DamperMotion.OfWheel wheel : found.wheels()) {
            double high = wheel.highBump().mean() + wheel.highRebound().mean();
            fast.add(wheel.wheel().words() + " " + figures.percent(high));
            rms.add(figures.number(1000.0 * wheel.rmsMps().mean(), 0));
            if (!wheel.symmetric()) {
                LapInterval lean = wheel.lean();
                boolean slow = lean.above(0.0) || lean.below(0.0);
                LapInterval shown = slow ? lean : wheel.highLean();
                uneven.add(wheel.wheel().words() + " is longer in " + (slow ? "" : "fast ")
                        + (shown.mean() > 0.0 ? "bump than in rebound" : "rebound than in bump") + " by "
                        + interval(size(shown), 100.0, 1, "% of the time", figures));
            }
        }
        DamperMotion.OfWheel first = found.wheels().get(0);
        DamperMotion.OfWheel last = found.wheels().get(found.wheels().size() - 1);
        String knees = first.kneeMps() == last.kneeMps()
                ? speed(first.kneeMps(), figures)
                : speed(first.kneeMps(), figures) + " in front and " + speed(last.kneeMps(), figures) + " behind";
        sentences.add("Share of the time beyond " + knees
                + (first.kneeOfSheet() ? "" : " (usual, the sheet gives no knee)") + ": " + String.join(", ", fast)
                + "; root mean square " + Figures.words(rms) + Figures.KEPT_TOGETHER + "mm/s, by "
                + found.laps().size() + " laps.");
        sentences.add(
                uneven.isEmpty()
                        ? "Bump and rebound are alike at all wheels, as far as the laps tell."
                        : Figures.sentence(String.join("; ", uneven) + ": faster the other way"));
        for (DamperMotion.Contrast contrast : found.contrasts()) {
            LapInterval difference = contrast.rmsMps();
            if (difference.above(0.0) || difference.below(0.0)) {
                sentences.add("Root mean square, " + contrast.what() + ": "
                        + interval(difference, 1000.0, 1, "mm/s", figures) + ".");
            }
        }
        if (!found.wheelHop()) {
            sentences.add("At " + figures.number(found.rateHz(), 0)
                    + " samples a second the hop of the wheels is not seen: the fast end is cut off, and only the body's motion"
                    + " counts.");
        }
        return new Told(
                Subject.DAMPERS,
                Optional.empty(),
                sentences,
                "Speeds at the damper, from travel times the sheet's motion ratio.");
    }

    private static String speed(double mps, Figures figures) {
        return figures.number(1000.0 * mps, 0) + Figures.KEPT_TOGETHER + "mm/s";
    }

    private static Told heights(RideHeights found, Figures figures) {
        List<String> sentences = new ArrayList<>();
        RideHeights.Point slow = found.points().get(0);
        RideHeights.Point quick = found.points().get(found.points().size() - 1);
        sentences.add("At " + figures.speed(slow.speedMps()) + " front " + millimetres(slow.frontM(), figures)
                + " and rear " + millimetres(slow.rearM(), figures) + ", at " + figures.speed(quick.speedMps())
                + " front " + millimetres(quick.frontM(), figures) + " and rear "
                + millimetres(quick.rearM(), figures)
                + (found.fromTravel() ? ", from the sheet's heights and the suspension travel." : ", as measured."));
        if (found.frontFallM().laps() > 1) {
            boolean clear = found.rakeGainM().above(0.0) || found.rakeGainM().below(0.0);
            sentences.add("Over v\u00b2, in quiet driving, " + figures.speed(50.0) + " brings the front down by "
                    + interval(found.frontFallM(), 1000.0, 1, "mm", figures) + " and the rear by "
                    + interval(found.rearFallM(), 1000.0, 1, "mm", figures) + ": the rake "
                    + (clear
                            ? (found.rakeGainM().mean() > 0.0 ? "grows" : "shrinks") + " by "
                                    + figures.number(
                                            1000.0 * Math.abs(found.rakeGainM().mean()), 1)
                                    + Figures.KEPT_TOGETHER + "mm."
                            : "stays as it is, as far as the laps tell."));
        } else {
            sentences.add("Quiet driving at too few speeds to tell what the air does to them.");
        }
        sentences.add("Least height of a lap: front " + millimetres(found.frontLeastM(), figures) + ", rear "
                + millimetres(found.rearLeastM(), figures) + ".");
        List<String> down = new ArrayList<>();
        if (found.frontLeastM().below(0.0)) {
            down.add("the front");
        }
        if (found.rearLeastM().below(0.0)) {
            down.add("the rear");
        }
        return new Told(
                Subject.RIDE_HEIGHT,
                down.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Figures.words(down) + " comes down to the road by these heights"),
                sentences,
                "Rules set least heights: measure on the car.");
    }

    private static String millimetres(LapInterval metres, Figures figures) {
        return figures.number(1000.0 * metres.mean(), 1) + Figures.KEPT_TOGETHER + "mm";
    }

    private static Told brakes(BrakePressures found, Figures figures) {
        List<String> sentences = new ArrayList<>();
        sentences.add("The front has " + interval(found.share(), 100.0, 1, "%", figures) + " of the pressure, by "
                + found.laps().size() + " laps.");
        LapInterval growth = found.growth();
        if (growth.laps() > 1) {
            sentences.add(
                    growth.above(0.0) || growth.below(0.0)
                            ? "From light to hard braking its share " + (growth.mean() > 0.0 ? "grows" : "falls")
                                    + " by " + interval(size(growth), 100.0, 1, "points", figures) + "."
                            : "It is the same in light and hard braking, as far as the laps tell.");
        }
        Optional<String> standsOut = Optional.empty();
        if (found.force().isPresent()) {
            BrakePressures.Force force = found.force().get();
            sentences.add("By the sheet's torques that is " + interval(force.share(), 100.0, 1, "%", figures)
                    + " of the brake force; the sheet's bias is " + figures.number(100.0 * force.sheet(), 1)
                    + Figures.KEPT_TOGETHER + "%"
                    + (force.contradicts() ? ", which they contradict." : ", which agrees."));
            standsOut = force.contradicts()
                    ? Optional.of("the brake pressures contradict the sheet's bias")
                    : Optional.empty();
        } else {
            sentences.add("What each circuit makes of its pressure is not on the sheet, so that the bias cannot be held"
                    + " against it.");
        }
        releases(found, figures).ifPresent(sentences::add);
        return new Told(
                Subject.BRAKE_PRESSURE, standsOut, sentences, "Have brakes set and checked by a qualified person.");
    }

    private static Optional<String> releases(BrakePressures found, Figures figures) {
        if (found.releases().isEmpty()) {
            return Optional.empty();
        }
        List<String> corners = found.releases().stream()
                .sorted((a, b) -> Double.compare(b.scatter(), a.scatter()))
                .limit(CORNERS_SHOWN)
                .map(release -> "corner " + release.corner() + ": "
                        + interval(release.perTenth(), 100.0, 0, "%", figures) + ", scattering by "
                        + figures.number(100.0 * release.scatter(), 1) + " over "
                        + release.laps().size() + " laps")
                .toList();
        return Optional.of("Let go after turn-in, each tenth of a second, of the pressure at turn-in: "
                + String.join("; ", corners)
                + (found.releases().size() > CORNERS_SHOWN ? " (the least even ones)." : "."));
    }

    private static LapInterval size(LapInterval interval) {
        return interval.mean() >= 0.0
                ? interval
                : new LapInterval(-interval.mean(), -interval.high(), -interval.low(), interval.laps());
    }

    /** Writes a mean with its interval; without an interval, with one lap, the mean alone. */
    static String interval(LapInterval interval, double factor, int decimals, String unit, Figures figures) {
        String mean = figures.number(factor * interval.mean(), decimals) + Figures.KEPT_TOGETHER + unit;
        return interval.laps() < 2
                ? mean
                : mean + " (" + figures.number(factor * interval.low(), decimals) + " to "
                        + figures.number(factor * interval.high(), decimals) + ")";
    }

    static String list(List<Wheel> wheels) {
        return Figures.words(wheels.stream().map(Wheel::words).toList());
    }
}
