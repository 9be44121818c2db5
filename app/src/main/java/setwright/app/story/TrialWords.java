package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.app.trial.TrialAnswer;
import setwright.app.units.Figures;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.Effect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;
import setwright.core.trial.Trial;
import setwright.core.trial.TrialEffect;
import setwright.core.trial.TrialTarget;

/** What came of a change, in sentences. */
public final class TrialWords {
    private final Trial trial;
    private final Figures figures;

    /** Makes sentences about a trial. */
    public TrialWords(Trial trial, Figures figures) {
        this.trial = trial;
        this.figures = figures;
    }

    /** Returns what to do, without a full stop. */
    public String headline() {
        return switch (trial.verdict()) {
            case KEEP -> "Keep the change";
            case UNDO -> "Undo the change";
            case NO_DIFFERENCE -> "No difference that matters: keep what is easier to drive or to set";
            case UNDECIDED -> "Undecided";
        };
    }

    /** Returns what was changed. */
    public static String change(TrialAnswer answer) {
        String changes = answer.changes().stream()
                .map(change -> change.item() + " " + change.from() + " to " + change.to()
                        + (change.unit().isEmpty() ? "" : Figures.KEPT_TOGETHER + change.unit()))
                .collect(Collectors.joining(", "));
        return changes
                + answer.together().map(why -> " (together: " + why + ")").orElse("") + ".";
    }

    /** Returns the runs in their order. */
    public String runs() {
        return trial.runs().stream()
                        .map(run -> run.name() + " (" + (run.changed() ? "with it, " : "without, ")
                                + run.laps().size() + " laps" + ")")
                        .collect(Collectors.joining(", "))
                + ".";
    }

    /** Returns what the change did to the lap. */
    public List<String> lap() {
        List<String> sentences = new ArrayList<>();
        sentences.add("Lap time " + seconds(trial.lapTimeS()) + "; " + figures.number(trial.lapTimeBound(), 2)
                + " s and more would matter.");
        trial.dayS()
                .ifPresent(day -> sentences.add(
                        "The day itself, from the first run to the last: " + seconds(day) + ", taken out."));
        if (Double.isFinite(trial.lapScatterS())) {
            sentences.add("Laps of one run scatter by " + figures.number(trial.lapScatterS(), 2)
                    + " s, runs with the same setup by about " + figures.number(trial.runScatterS(), 2) + " s.");
        }
        return sentences;
    }

    /** Returns what the first run's laps promised of the lap time; nothing where they could not. */
    public List<String> predicted(TrialAnswer answer) {
        return answer.predicted()
                .map(Prediction::lapTimeS)
                .map(time -> List.of("Predicted from the first run: " + figures.signed(time.central(), 2)
                        + Figures.KEPT_TOGETHER + "s (8 in 10: " + figures.signed(time.low(), 2) + " to "
                        + figures.signed(time.high(), 2) + ")."))
                .orElse(List.of());
    }

    /** Returns what was promised of the balance of a phase, deg; a dash where nothing was. */
    public String predicted(TrialAnswer answer, Pool pool) {
        return promised(answer, pool).map(effect -> degrees(effect.central())).orElse("-");
    }

    /** Returns the interval of that, deg. */
    public String predictedRange(TrialAnswer answer, Pool pool) {
        return promised(answer, pool)
                .map(effect -> degrees(effect.low()) + " to " + degrees(effect.high()))
                .orElse("");
    }

    private static Optional<Effect> promised(TrialAnswer answer, Pool pool) {
        return answer.predicted().flatMap(prediction -> prediction.balance(pool.phase(), pool.speedClass()));
    }

    /** Returns what it did to the balance that it was made for. */
    public List<String> target() {
        return trial.target()
                .map(target -> List.of(trial.targetRad()
                        .map(moved -> "Against " + place(target) + ": " + degrees(moved) + " the way that is wanted.")
                        .orElse("Against " + place(target) + ": not to be read in every run.")))
                .orElse(List.of());
    }

    /** Returns what would settle it, in one sentence; empty when it is settled. */
    public List<String> more() {
        return trial.more()
                .map(more -> {
                    if (more.lapsARun().isPresent()) {
                        return List.of(
                                "With " + more.lapsARun().getAsInt() + " laps in each of these runs it could be told.");
                    }
                    if (more.runsEach().isPresent()) {
                        return List.of(
                                "More laps in these runs would not do: the scatter from run to run is too large. With "
                                        + more.runsEach().getAsInt()
                                        + " runs of each setup, taking turns, it could be told.");
                    }
                    return List.of(
                            "Neither more laps nor ten runs of each setup would tell a difference as small as this.");
                })
                .orElse(List.of());
    }

    /** Returns the name of a part of the lap with its corners. */
    public static String sector(TrialAnswer answer, Trial.Sector sector) {
        List<Integer> corners = answer.sectorCorners(sector.number());
        return "sector " + sector.number()
                + switch (corners.size()) {
                    case 0 -> "";
                    case 1 -> ", corner " + corners.get(0);
                    default -> ", corners " + corners.get(0) + " to " + corners.get(corners.size() - 1);
                };
    }

    /** Returns whether an effect is more than chance, in words. */
    public static String chance(boolean clear) {
        return clear ? "clear" : "may be chance";
    }

    /** Returns the name of a phase in one class of corners. */
    public static String place(Pool pool) {
        return pool.phase().words()
                + pool.speedClass()
                        .map(SpeedClass::words)
                        .map(speed -> ", " + speed + " speed")
                        .orElse(", all corners");
    }

    private static String place(TrialTarget target) {
        return target.balance().words() + " " + target.phase().place() + " in "
                + target.speed().corners();
    }

    private String seconds(TrialEffect effect) {
        return range(effect, "s");
    }

    private String degrees(TrialEffect effect) {
        return range(effect.times(Math.toDegrees(1.0)), "deg");
    }

    /** Returns a change of balance in degrees, without its unit. */
    public String degrees(double rad) {
        return figures.signed(Math.toDegrees(rad), 2);
    }

    private String range(TrialEffect effect, String unit) {
        return Double.isFinite(effect.error())
                ? figures.signed(effect.value(), 2) + Figures.KEPT_TOGETHER + unit + " (95 in 100: "
                        + figures.signed(effect.low(), 2) + " to " + figures.signed(effect.high(), 2) + ")"
                : "not known";
    }
}
