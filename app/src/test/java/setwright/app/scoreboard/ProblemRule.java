package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;

/** The first finding against the labelled problem. */
final class ProblemRule implements Rule {
    @Override
    public List<Row> judge(StintRun run) {
        Truth.Label label = run.practice().truth().label();
        Optional<Finding> top = run.top();
        List<Row> rows = new ArrayList<>();
        if (label.hasProblem() && !run.practice().truth().isBackToBack()) {
            rows.addAll(compared(run, label, top));
        } else {
            rows.add(Row.shown(
                    "top problem",
                    label.weak() ? label.fault() + " (weak), not counted" : "none",
                    top.map(ProblemRule::words).orElse("none")));
        }
        top.ifPresent(finding -> rows.add(sureness(run, finding)));
        return rows;
    }

    private static List<Row> compared(StintRun run, Truth.Label label, Optional<Finding> top) {
        boolean balance =
                top.filter(f -> f.balance().words().equals(label.sign())).isPresent();
        boolean phase = top.filter(f -> label.acceptPhases().contains(f.phase().words()))
                .isPresent();
        boolean speed = top.filter(
                        f -> label.acceptSpeedClasses().contains(f.speed().words()))
                .isPresent();
        List<Row> rows = new ArrayList<>();
        rows.add(Row.counted(
                "top problem",
                String.format(Locale.ROOT, "%s (%.2f deg)", label.fault(), label.measuredStrengthDeg()),
                top.map(ProblemRule::words).orElse("none"),
                Measure.TOP_PROBLEM,
                Count.of(balance && phase && speed)));
        rows.add(Row.counted(
                "  balance",
                label.sign(),
                top.map(f -> f.balance().words()).orElse("none"),
                Measure.BALANCE,
                Count.of(balance)));
        rows.add(Row.counted(
                "  phase",
                Words.choice(label.acceptPhases()),
                top.map(f -> f.phase().words()).orElse("none"),
                Measure.PHASE,
                Count.of(phase)));
        rows.add(Row.counted(
                "  speed class",
                Words.choice(label.acceptSpeedClasses()),
                top.map(f -> f.speed().words()).orElse("none"),
                Measure.SPEED,
                Count.of(speed)));
        rows.add(trigger(run, label, top));
        rows.addAll(corners(run, label, top));
        return rows;
    }

    private static Row trigger(StintRun run, Truth.Label label, Optional<Finding> top) {
        String truth = label.trigger().replace('_', ' ');
        String answer = top.map(finding -> String.format(
                        Locale.ROOT,
                        "%s (%.2f)",
                        finding.trigger().words(),
                        finding.triggers().getOrDefault(finding.trigger(), Double.NaN)))
                .orElse("none");
        Optional<Predicate<Finding>> right = TruthTerms.trigger(
                label.trigger(), run.diagnosis().map(Diagnosis::passes).orElse(List.of()));
        if (right.isEmpty()) {
            return Row.shown("  trigger", truth + ", not counted", answer);
        }
        return Row.counted(
                "  trigger",
                truth,
                answer,
                Measure.TRIGGER,
                Count.of(top.filter(right.get()).isPresent()));
    }

    private static List<Row> corners(StintRun run, Truth.Label label, Optional<Finding> top) {
        List<Integer> named = top.map(Finding::corners).orElse(List.of());
        CornerMatch match = run.cornerMatch();
        Set<Integer> hit = new TreeSet<>(match.realNumbers(named));
        hit.retainAll(label.affectedCorners());
        long right = named.stream()
                .filter(number -> match.real(number)
                        .filter(real -> label.affectedCorners().contains(real.corner()))
                        .isPresent())
                .count();
        return List.of(
                Row.counted(
                        "  affected corners",
                        Words.numbers(label.affectedCorners()),
                        Words.numbers(named),
                        Measure.CORNERS_NAMED,
                        new Count(hit.size(), label.affectedCorners().size())),
                Row.counted(
                        "  named rightly",
                        "all of them",
                        Words.numbers(match.realNumbers(named)) + " in the truth's numbers",
                        Measure.CORNERS_RIGHT,
                        new Count((int) right, named.size())));
    }

    private static Row sureness(StintRun run, Finding finding) {
        Truth truth = run.practice().truth();
        String lost = truth.balancedCarLapTimeS() > 0.0
                ? String.format(
                        Locale.ROOT, "%+.2f s against the balanced car", truth.lapTimeS() - truth.balancedCarLapTimeS())
                : "";
        return Row.shown(
                "  probability, price",
                lost,
                String.format(
                        Locale.ROOT,
                        "%.2f, %.2f s (%.2f to %.2f)",
                        finding.probability(),
                        finding.price().seconds(),
                        finding.price().low(),
                        finding.price().high()));
    }

    private static String words(Finding finding) {
        return finding.balance().words() + " " + finding.phase().words() + ", "
                + finding.speed().words()
                + (finding.lapWide() ? "" : ", one corner")
                + String.format(Locale.ROOT, " (%.2f deg)", Math.toDegrees(finding.sizeRad()));
    }
}
