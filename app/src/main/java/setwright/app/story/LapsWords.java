package setwright.app.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import setwright.app.evidence.Answer;
import setwright.app.units.Figures;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.SteeringScale;
import setwright.core.judgement.Repeatability;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Are these laps worth reading? */
public final class LapsWords {
    /** What the closing of the reference line is called among the calibrations. */
    private static final String LINE = "reference line";

    private LapsWords() {}

    static Story.Link tell(Answer answer, Figures figures) {
        Stint stint = answer.diagnosis().stint();
        List<Lap> good = stint.goodLaps();
        List<String> details = new ArrayList<>();
        for (Lap lap : stint.laps()) {
            if (!lap.good()) {
                details.add("Put aside: lap " + lap.number() + ", " + figures.shown(reason(lap)) + ".");
            }
        }
        Recording recording = stint.recording();
        List<Calibration> scales =
                recording.calibrations().stream().filter(LapsWords::isScale).toList();
        List<String> corrected = sizes(
                recording.calibrations().stream()
                        .filter(c -> !isScale(c) && !c.what().equals(LINE))
                        .toList(),
                c -> figures.signed(c.value(), 3));
        if (!corrected.isEmpty()) {
            details.add(Figures.sentence("Corrected from the data: " + Figures.words(corrected)));
        }
        if (!scales.isEmpty()) {
            details.add(Figures.sentence("Scales used: "
                    + Figures.words(sizes(scales, c -> figures.number(c.value(), 3)))));
        }
        recording.calibrations().stream()
                .filter(c -> c.what().equals(LINE))
                .forEach(c -> details.add(Figures.sentence(c.reason())));
        details.addAll(answer.remarks());
        missingPedals(recording).ifPresent(details::add);
        steering(answer, figures).ifPresent(details::add);
        int assumed = answer.car().assumed().size();
        if (assumed > 0) {
            details.add(
                    assumed == 1
                            ? Figures.sentence("Assumed of the car: "
                                    + answer.car().assumed().get(0))
                            : assumed + " values of the car were not given and are assumed.");
        }
        return new Story.Link(
                "Are these laps worth reading?",
                counted(stint.laps().size(), good.size())
                        + times(good, answer.diagnosis().repeatability(), figures),
                details);
    }

    private static Optional<String> steering(Answer answer, Figures figures) {
        SteeringScale steering = answer.diagnosis().trace().steering();
        if (steering.takenOut()) {
            return Optional.of("The steering ratio was not given: gentle corners say about "
                    + figures.number(answer.car().steeringRatio() * steering.factor(), 1)
                    + ", which is used.");
        }
        return steering.checks()
                ? Optional.empty()
                : Optional.of(
                        "These laps cannot check the steering ratio of the car sheet: too few gentle corners at different"
                                + " speeds. A wrong one would look like understeer or oversteer everywhere, so measure it once.");
    }

    private static boolean isScale(Calibration calibration) {
        return calibration.what().endsWith(" radius") || calibration.what().equals("brake scale");
    }

    /** A pedal that was not recorded is read off the longitudinal acceleration, which the listener must know. */
    private static Optional<String> missingPedals(Recording recording) {
        List<String> missing = new ArrayList<>();
        for (Quantity pedal : List.of(Quantity.BRAKE, Quantity.THROTTLE)) {
            if (!recording.has(pedal)) {
                missing.add(pedal.words());
            }
        }
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of("There is no usable recording of the " + String.join(" and the ", missing)
                        + ": what the feet do is guessed from how the car speeds up and slows down, so"
                        + " take the timing with care.");
    }

    /** What was taken, values of the same size and unit named once. */
    private static List<String> sizes(List<Calibration> calibrations, Function<Calibration, String> size) {
        Map<String, List<String>> bySize = new LinkedHashMap<>();
        for (Calibration calibration : calibrations) {
            bySize.computeIfAbsent(
                            size.apply(calibration) + Figures.KEPT_TOGETHER + calibration.unit(),
                            k -> new ArrayList<>())
                    .add(calibration.what());
        }
        List<String> texts = new ArrayList<>();
        bySize.forEach((value, names) -> texts.add(
                names.get(0) + (names.size() > 1 ? " (and " + (names.size() - 1) + " alike) " : " ") + value));
        return texts;
    }

    /** Returns the kind of a lap that was put aside, and the reason where it says more. */
    public static String reason(Lap lap) {
        String why = lap.why().strip();
        String bare = why.endsWith(".") ? why.substring(0, why.length() - 1) : why;
        return bare.isEmpty() || bare.equals(lap.kind().words())
                ? lap.kind().words()
                : lap.kind().words() + ": " + bare;
    }

    private static String counted(int all, int good) {
        return switch (good) {
            case 0 -> "None of the " + all + " laps can be read.";
            default -> good == all ? "All " + all + " laps can be read." : good + " of " + all + " laps can be read.";
        };
    }

    private static String times(List<Lap> good, Repeatability repeatability, Figures figures) {
        if (good.isEmpty()) {
            return "";
        }
        Lap best = good.stream().min(Comparator.comparingDouble(Lap::timeS)).orElseThrow();
        String scatter = good.size() < 2 || !Double.isFinite(repeatability.lapTimeScatterS())
                ? "."
                : "; they scatter by " + figures.seconds(repeatability.lapTimeScatterS(), 2) + ".";
        return " Best: lap " + best.number() + " in " + figures.lapTime(best.timeS()) + scatter;
    }
}
