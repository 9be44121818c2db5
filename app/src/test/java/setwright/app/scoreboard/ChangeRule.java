package setwright.app.scoreboard;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Signs of the predicted effects of changes of setup, where the true ones are clear of their noise. */
final class ChangeRule implements Rule {
    private static final int WORST = 3;

    @Override
    public List<Row> judge(StintRun run) {
        return judge(ChangeComparison.of(run));
    }

    static List<Row> judge(ChangeComparison changes) {
        if (!changes.predicted() || changes.lapTime().isEmpty()) {
            return List.of();
        }
        List<ChangeEffect> balance = ChangeComparison.clear(changes.balance());
        List<ChangeEffect> lapTime = ChangeComparison.clear(changes.lapTime());
        return List.of(
                row("balance after changes", changes.balance(), balance, Measure.CHANGED_BALANCE),
                claimed(balance, Measure.CHANGED_BALANCE_SURE),
                inside(changes.balance(), Measure.CHANGED_BALANCE_INSIDE),
                row("lap time after changes", changes.lapTime(), lapTime, Measure.CHANGED_TIME),
                claimed(lapTime, Measure.CHANGED_TIME_SURE),
                inside(changes.lapTime(), Measure.CHANGED_TIME_INSIDE),
                upAgainstDown(changes.lapTimeUpAgainstDown()),
                Row.shown(
                        "  rank correlation",
                        changes.spun() == 0 ? "" : changes.spun() + " changes with a spin left out",
                        "lap time " + Agreement.figure(changes.lapTimeRanks()) + ", balance "
                                + Agreement.figure(changes.meanRanks()) + " on average over the cells"));
    }

    private static Row upAgainstDown(Count count) {
        return Row.counted(
                "  item up against down",
                count.of() + " items clear of noise, the common run left out",
                count.hit() + " of the true sign",
                Measure.CHANGED_WAY,
                count);
    }

    private static Row row(String what, List<ChangeEffect> all, List<ChangeEffect> clear, Measure measure) {
        return Row.counted(
                what,
                clear.size() + " of " + all.size() + " effects clear of noise",
                worst(clear),
                measure,
                ChangeComparison.right(clear));
    }

    private static Row claimed(List<ChangeEffect> clear, Measure measure) {
        List<ChangeEffect> claimed =
                clear.stream().filter(ChangeEffect::claimed).toList();
        return Row.counted(
                "  sign claimed",
                claimed.size() + " of them",
                worst(claimed),
                measure,
                ChangeComparison.right(claimed));
    }

    private static Row inside(List<ChangeEffect> all, Measure measure) {
        List<ChangeEffect> answered =
                all.stream().filter(effect -> effect.answer().isPresent()).toList();
        long inside = answered.stream().filter(ChangeEffect::inside).count();
        return Row.counted(
                "  within the interval",
                "all " + answered.size() + " of them, their own noise allowed for",
                inside + " inside",
                measure,
                new Count((int) inside, answered.size()));
    }

    private static String worst(List<ChangeEffect> effects) {
        String worst = effects.stream()
                .filter(effect -> !effect.right())
                .sorted(Comparator.comparingDouble(ChangeEffect::weight).reversed())
                .limit(WORST)
                .map(effect -> String.format(
                        Locale.ROOT,
                        "%s %s %+.2f as %s",
                        ChangeTables.words(effect.change()),
                        effect.where(),
                        effect.truth(),
                        effect.answer()
                                .map(answer -> String.format(Locale.ROOT, "%+.2f", answer.central()))
                                .orElse("nothing")))
                .collect(Collectors.joining("; "));
        return worst.isEmpty() ? "every sign right" : "worst: " + worst;
    }
}
