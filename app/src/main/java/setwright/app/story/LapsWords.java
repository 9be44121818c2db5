package setwright.app.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.app.evidence.Answer;
import setwright.app.units.Figures;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.judgement.Repeatability;
import setwright.core.recording.Calibration;

/** Are these laps worth reading? */
public final class LapsWords {
    private LapsWords() {}

    static Story.Link tell(Answer answer, Figures figures) {
        Stint stint = answer.diagnosis().stint();
        List<Lap> good = stint.goodLaps();
        List<String> details = new ArrayList<>();
        for (Lap lap : stint.laps()) {
            if (!lap.good()) {
                details.add("Put aside: lap " + lap.number() + ", " + reason(lap) + ".");
            }
        }
        List<String> corrected = corrections(stint.recording().calibrations(), figures);
        if (!corrected.isEmpty()) {
            details.add(Figures.sentence("Corrected from the data: " + Figures.words(corrected)));
        }
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

    /** What was corrected, corrections of the same size and unit named once. */
    private static List<String> corrections(List<Calibration> calibrations, Figures figures) {
        Map<String, List<String>> bySize = new LinkedHashMap<>();
        for (Calibration calibration : calibrations) {
            bySize.computeIfAbsent(
                            figures.signed(calibration.value(), 3) + Figures.KEPT_TOGETHER + calibration.unit(),
                            k -> new ArrayList<>())
                    .add(calibration.what());
        }
        List<String> texts = new ArrayList<>();
        bySize.forEach((size, names) ->
                texts.add(names.get(0) + (names.size() > 1 ? " (and " + (names.size() - 1) + " alike) " : " ") + size));
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
