package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import setwright.app.scoreboard.Count;
import setwright.app.scoreboard.Table;
import setwright.core.judgement.Yardstick;
import setwright.core.replay.Effect;

/** Outcomes as tables. */
final class BenchTables {
    private static final List<BenchMeasure> BY_FAULT = List.of(
            BenchMeasure.TOP_PROBLEM,
            BenchMeasure.BALANCE,
            BenchMeasure.PHASE,
            BenchMeasure.SPEED,
            BenchMeasure.TRIGGER,
            BenchMeasure.VERDICT,
            BenchMeasure.GATE,
            BenchMeasure.PRICE);

    private static final List<BenchMeasure> BY_STRENGTH = List.of(
            BenchMeasure.TOP_PROBLEM,
            BenchMeasure.KNOWABLE,
            BenchMeasure.MEASURABLE,
            BenchMeasure.BALANCE,
            BenchMeasure.PHASE,
            BenchMeasure.SPEED,
            BenchMeasure.TRIGGER,
            BenchMeasure.VERDICT);

    /** Upper ends of the ranges, in typical setup changes. */
    private static final double[] STRENGTHS = {0.5, 0.75, 1.0, Double.POSITIVE_INFINITY};

    private BenchTables() {}

    static Table totals(List<Outcome> outcomes) {
        List<List<String>> rows = new ArrayList<>();
        for (BenchMeasure measure : BenchMeasure.values()) {
            Count count = measure.over(outcomes);
            rows.add(List.of(
                    measure.words(),
                    count.toString(),
                    percent(count),
                    count.of() == 0 ? "-" : Interval.of(count).toString(),
                    measure.many() ? "more" : "fewer"));
        }
        return new Table(List.of("total", "count", "%", "95 % interval", "better"), rows);
    }

    /** One row for each kind and each fault. */
    static Table byFault(List<Outcome> outcomes) {
        List<List<String>> rows = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            List<Outcome> ofKind = outcomes.stream()
                    .filter(outcome -> outcome.benchCase().kind() == kind)
                    .toList();
            if (!ofKind.isEmpty()) {
                rows.add(row("all " + kind.words(), ofKind));
            }
        }
        grouped(outcomes, outcome -> outcome.benchCase().fault())
                .forEach((fault, cases) -> rows.add(row(fault, cases)));
        return new Table(headers("fault"), rows);
    }

    /** One row for each value of something, such as the car. */
    static Table by(String what, List<Outcome> outcomes, Function<Outcome, String> key) {
        List<List<String>> rows = new ArrayList<>();
        grouped(outcomes, key).forEach((value, cases) -> rows.add(row(value, cases)));
        return new Table(headers(what), rows);
    }

    /** One row for each range of how much the balance truly differs, in parts of a typical setup change. */
    static Table byStrength(List<Outcome> outcomes) {
        List<List<String>> rows = new ArrayList<>();
        double from = 0.0;
        for (double part : STRENGTHS) {
            double low = from;
            double high = part * Yardstick.BALANCE_RAD;
            List<Outcome> here = outcomes.stream()
                    .filter(outcome -> outcome.wanted()
                            .filter(problem -> problem.strengthRad() >= low && problem.strengthRad() < high)
                            .isPresent())
                    .toList();
            if (!here.isEmpty()) {
                rows.add(strengthRow(low, high, here));
            }
            from = high;
        }
        List<String> headers = new ArrayList<>(List.of("strength deg", "cases"));
        BY_STRENGTH.forEach(measure -> headers.add(measure.words()));
        return new Table(headers, rows);
    }

    private static List<String> strengthRow(double low, double high, List<Outcome> here) {
        List<String> row = new ArrayList<>();
        row.add(
                Double.isInfinite(high)
                        ? String.format(Locale.ROOT, "%.2f and more", Math.toDegrees(low))
                        : String.format(Locale.ROOT, "%.2f to %.2f", Math.toDegrees(low), Math.toDegrees(high)));
        row.add(Integer.toString(here.size()));
        BY_STRENGTH.forEach(measure -> row.add(slashed(measure.over(here))));
        return row;
    }

    private static String slashed(Count count) {
        return count.of() == 0 ? "-" : count.hit() + "/" + count.of();
    }

    private static List<String> headers(String what) {
        List<String> headers = new ArrayList<>(List.of(what, "cases", "weak", "strength deg", "price s"));
        BY_FAULT.forEach(measure -> headers.add(measure.words().replace("its ", "")));
        return headers;
    }

    private static List<String> row(String name, List<Outcome> cases) {
        List<String> row = new ArrayList<>(List.of(name, Integer.toString(cases.size())));
        row.add(Long.toString(cases.stream()
                .filter(outcome ->
                        outcome.problem().filter(found -> found.weak()).isPresent())
                .count()));
        row.add(median(cases.stream()
                .flatMap(outcome -> outcome.problem().stream())
                .map(problem -> Math.toDegrees(problem.strengthRad()))
                .toList()));
        row.add(median(cases.stream()
                .flatMap(outcome -> outcome.price().stream())
                .map(price -> price.seconds())
                .toList()));
        BY_FAULT.forEach(measure -> row.add(slashed(measure.over(cases))));
        return row;
    }

    /** How often each kind of miss happened among the problems that had to be named. */
    static Table misses(List<Outcome> outcomes) {
        Map<String, List<Outcome>> kinds = grouped(
                outcomes.stream()
                        .filter(outcome -> outcome.wanted().isPresent() && !outcome.problemRight())
                        .toList(),
                Outcome::miss);
        return new Table(
                List.of("miss", "cases", "numbers"),
                kinds.entrySet().stream()
                        .sorted(Comparator.comparingInt(
                                entry -> -entry.getValue().size()))
                        .map(entry -> List.of(
                                entry.getKey(),
                                Integer.toString(entry.getValue().size()),
                                numbers(entry.getValue())))
                        .toList());
    }

    /** True against answered word, for the problems that had to be named. */
    static Table confusion(
            String what, List<Outcome> outcomes, Function<Outcome, String> truth, Function<Outcome, String> answer) {
        List<Outcome> wanted = outcomes.stream()
                .filter(outcome -> outcome.wanted().isPresent())
                .toList();
        List<String> answers = wanted.stream().map(answer).distinct().sorted().toList();
        List<String> headers = new ArrayList<>(List.of(what + ": truth"));
        answers.forEach(word -> headers.add("as " + word));
        List<List<String>> rows = new ArrayList<>();
        grouped(wanted, truth).forEach((word, cases) -> {
            List<String> row = new ArrayList<>(List.of(word));
            for (String column : answers) {
                row.add(Long.toString(cases.stream()
                        .filter(outcome -> answer.apply(outcome).equals(column))
                        .count()));
            }
            rows.add(row);
        });
        return new Table(headers, rows);
    }

    /** Stages that failed, with what was said. */
    static Table failures(List<Outcome> outcomes) {
        Map<String, List<Outcome>> stages = grouped(
                outcomes.stream()
                        .filter(outcome -> !outcome.failure().isEmpty()
                                || !outcome.misread().isEmpty())
                        .toList(),
                outcome -> outcome.failure().isEmpty() ? String.join("; ", outcome.misread()) : outcome.failure());
        return new Table(
                List.of("failure", "cases", "numbers"),
                stages.entrySet().stream()
                        .map(entry -> List.of(
                                entry.getKey().replace('\n', ' '),
                                Integer.toString(entry.getValue().size()),
                                numbers(entry.getValue())))
                        .toList());
    }

    /** One row per case. */
    static Table cases(List<Outcome> outcomes) {
        return new Table(
                List.of(
                        "case",
                        "lost",
                        "scatter %",
                        "truth",
                        "price s",
                        "trigger",
                        "seen",
                        "answer",
                        "price s",
                        "verdict",
                        "right",
                        "alike",
                        "change",
                        "limit s",
                        "driven s",
                        "balance deg"),
                outcomes.stream().map(BenchTables::caseRow).toList());
    }

    private static List<String> caseRow(Outcome outcome) {
        String right = outcome.wanted().isPresent() ? outcome.problemRight() ? "yes" : "NO" : "-";
        return List.of(
                outcome.benchCase().name(),
                Integer.toString(outcome.lost()),
                String.format(Locale.ROOT, "%.2f", 100.0 * outcome.driving().deviationShare()),
                outcome.truthWords(),
                outcome.price()
                        .map(price -> String.format(Locale.ROOT, "%+.2f", price.seconds()))
                        .orElse("-"),
                outcome.benchCase().trigger().word(),
                (outcome.triggerSeen() ? "yes " : "no ") + outcome.witnesses(),
                outcome.answerWords(),
                outcome.top()
                        .map(finding -> String.format(
                                Locale.ROOT,
                                "%.2f (%.2f to %.2f)",
                                finding.price().seconds(),
                                finding.price().low(),
                                finding.price().high()))
                        .orElse("-"),
                outcome.verdict().map(verdict -> verdict.words()).orElse("none"),
                right,
                outcome.wantedAlike()
                        .map(problem -> (outcome.alikeRight() ? "yes " : "NO ") + Outcome.words(problem))
                        .orElse("-"),
                outcome.proposed().map(ProposedChange::words).orElse("-"),
                outcome.proposed()
                        .map(change -> besides(change.limitS(), 0.0, change.predictedS()))
                        .orElse("-"),
                outcome.proposed()
                        .map(change -> besides(
                                change.drivenS().seconds(), change.drivenS().errorS(), change.predictedS()))
                        .orElse("-"),
                outcome.proposed()
                        .map(change -> besides(
                                Math.toDegrees(change.balanceRad().orElse(Double.NaN)),
                                Math.toDegrees(change.errorRad()),
                                change.predicted().times(Math.toDegrees(1.0))))
                        .orElse("-"));
    }

    private static String besides(double truth, double error, Effect predicted) {
        return String.format(
                Locale.ROOT,
                "%+.2f +-%.2f as %+.2f (%+.2f to %+.2f)",
                truth,
                error,
                predicted.central(),
                predicted.low(),
                predicted.high());
    }

    private static Map<String, List<Outcome>> grouped(List<Outcome> outcomes, Function<Outcome, String> key) {
        return outcomes.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
    }

    private static String numbers(List<Outcome> outcomes) {
        return outcomes.stream()
                .map(outcome -> Integer.toString(outcome.benchCase().number()))
                .collect(Collectors.joining(" "));
    }

    private static String median(List<Double> values) {
        return values.isEmpty()
                ? "-"
                : String.format(
                        Locale.ROOT,
                        "%.2f",
                        setwright.core.numerics.Robust.quantile(
                                values.stream().mapToDouble(Double::doubleValue).toArray(), 0.5));
    }

    private static String percent(Count count) {
        return count.of() == 0 ? "-" : String.format(Locale.ROOT, "%.0f", 100.0 * count.share());
    }
}
