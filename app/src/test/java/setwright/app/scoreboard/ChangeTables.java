package setwright.app.scoreboard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import setwright.core.replay.Effect;

/** Predicted beside true effects of changes of setup, as tables. */
final class ChangeTables {
    private static final int WORST = 25;

    private ChangeTables() {}

    /** Every change of one stint: true, predicted, probability of the sign in per cent. */
    static Table full(ChangeComparison changes) {
        List<String> headers = new ArrayList<>(List.of("change", "lap time, s"));
        ChangeCell.ALL.forEach(cell -> headers.add(cell.words()));
        Map<String, Map<String, ChangeEffect>> balance = new LinkedHashMap<>();
        changes.balance()
                .forEach(effect -> balance.computeIfAbsent(words(effect.change()), key -> new LinkedHashMap<>())
                        .put(effect.where(), effect));
        List<List<String>> rows = new ArrayList<>();
        for (ChangeEffect lapTime : changes.lapTime()) {
            List<String> row = new ArrayList<>(List.of(words(lapTime.change()), cell(lapTime, changes.predicted())));
            Map<String, ChangeEffect> cells = balance.getOrDefault(words(lapTime.change()), Map.of());
            for (ChangeCell cell : ChangeCell.ALL) {
                row.add(cells.containsKey(cell.words()) ? cell(cells.get(cell.words()), changes.predicted()) : "");
            }
            rows.add(row);
        }
        return new Table(headers, rows);
    }

    /** {@code *} stands for a true effect that is clear of its noise, {@code X} for one that got the wrong sign or none. */
    private static String cell(ChangeEffect effect, boolean predicted) {
        String truth = String.format(Locale.ROOT, "%+.3f%s", effect.truth(), effect.clear() ? "*" : " ");
        return truth
                + effect.answer().map(ChangeTables::answer).orElse("")
                + (predicted && effect.clear() && !effect.right() ? " X" : "");
    }

    private static String answer(Effect effect) {
        return String.format(
                Locale.ROOT, " %+.3f (%.0f)", effect.central(), Math.floor(100.0 * effect.probabilityOfSign()));
    }

    /** Rank correlations by stint, and the sign of each item's lap time with the run that all are compared with left out. */
    static Table ranks(List<ChangeComparison> stints) {
        List<String> headers = new ArrayList<>(List.of("rank correlation", "lap time", "up against down", "balance"));
        ChangeCell.ALL.forEach(cell -> headers.add(cell.words()));
        List<List<String>> rows = new ArrayList<>();
        for (ChangeComparison stint : stints) {
            List<String> row = new ArrayList<>(List.of(
                    stint.name(),
                    Agreement.figure(stint.lapTimeRanks()),
                    words(stint.lapTimeUpAgainstDown()),
                    Agreement.figure(stint.meanRanks())));
            ChangeCell.ALL.forEach(cell -> row.add(Agreement.figure(stint.ranks(cell))));
            rows.add(row);
        }
        List<String> mean = new ArrayList<>(List.of(
                "mean",
                mean(stints, ChangeComparison::lapTimeRanks),
                words(stints.stream()
                        .map(ChangeComparison::lapTimeUpAgainstDown)
                        .reduce(new Count(0, 0), Count::plus)),
                mean(stints, ChangeComparison::meanRanks)));
        ChangeCell.ALL.forEach(cell -> mean.add(mean(stints, stint -> stint.ranks(cell))));
        rows.add(mean);
        return new Table(headers, rows);
    }

    private static String mean(List<ChangeComparison> stints, Function<ChangeComparison, Double> figure) {
        return Agreement.figure(stints.stream()
                .mapToDouble(figure::apply)
                .filter(Double::isFinite)
                .average()
                .orElse(Double.NaN));
    }

    /** Signs right among the clear effects, by item of the sheet and by cell. */
    static Table signs(List<ChangeComparison> stints) {
        List<List<String>> rows = new ArrayList<>();
        rows(rows, stints, effect -> effect.change().item());
        rows(rows, stints, ChangeEffect::where);
        return new Table(List.of("sign right", "balance", "sign claimed", "lap time", "sign claimed"), rows);
    }

    private static void rows(
            List<List<String>> rows, List<ChangeComparison> stints, Function<ChangeEffect, String> key) {
        stints.stream()
                .flatMap(stint -> stint.allClear().stream())
                .map(key)
                .distinct()
                .sorted()
                .forEach(name -> {
                    List<ChangeEffect> balance = with(stints, ChangeComparison::balance, key, name);
                    List<ChangeEffect> lapTime = with(stints, ChangeComparison::lapTime, key, name);
                    rows.add(List.of(
                            name, share(balance), share(claimed(balance)), share(lapTime), share(claimed(lapTime))));
                });
    }

    private static List<ChangeEffect> with(
            List<ChangeComparison> stints,
            Function<ChangeComparison, List<ChangeEffect>> side,
            Function<ChangeEffect, String> key,
            String name) {
        return stints.stream()
                .flatMap(stint -> ChangeComparison.clear(side.apply(stint)).stream())
                .filter(effect -> key.apply(effect).equals(name))
                .toList();
    }

    private static List<ChangeEffect> claimed(List<ChangeEffect> effects) {
        return effects.stream().filter(ChangeEffect::claimed).toList();
    }

    private static String share(List<ChangeEffect> effects) {
        return words(ChangeComparison.right(effects));
    }

    private static String words(Count count) {
        return count.of() == 0 ? "-" : count.hit() + "/" + count.of();
    }

    /** How often a sign is right by the probability that was given for it: the two should agree. */
    static Table calibration(List<ChangeComparison> stints) {
        List<List<String>> rows = new ArrayList<>();
        double[] edges = {0.5, 0.6, 0.7, 0.8, 0.9, 0.99, 1.0 + 1e-9};
        for (int i = 0; i + 1 < edges.length; i++) {
            double from = edges[i];
            double to = edges[i + 1];
            rows.add(List.of(
                    String.format(Locale.ROOT, "%.0f to %.0f %%", 100.0 * from, 100.0 * Math.min(to, 1.0)),
                    share(between(stints, ChangeComparison::balance, from, to)),
                    share(between(stints, ChangeComparison::lapTime, from, to))));
        }
        return new Table(List.of("probability given", "balance", "lap time"), rows);
    }

    private static List<ChangeEffect> between(
            List<ChangeComparison> stints,
            Function<ChangeComparison, List<ChangeEffect>> side,
            double from,
            double to) {
        return stints.stream()
                .flatMap(stint -> ChangeComparison.clear(side.apply(stint)).stream())
                .filter(effect -> effect.answer()
                        .map(Effect::probabilityOfSign)
                        .filter(sure -> sure >= from && sure < to)
                        .isPresent())
                .toList();
    }

    /** The clear effects that got the wrong sign, the worst first. */
    static Table worst(List<ChangeComparison> stints) {
        record Wrong(String name, ChangeEffect effect) {}

        return new Table(
                List.of("case", "change", "where", "truth", "noise", "answer", "sign sure"),
                stints.stream()
                        .flatMap(stint -> stint.allClear().stream()
                                .filter(effect -> !effect.right())
                                .map(effect -> new Wrong(stint.name(), effect)))
                        .sorted(Comparator.comparingDouble(
                                        (Wrong wrong) -> wrong.effect().weight())
                                .reversed())
                        .limit(WORST)
                        .map(wrong -> List.of(
                                wrong.name(),
                                words(wrong.effect().change()),
                                wrong.effect().where(),
                                String.format(
                                        Locale.ROOT, "%+.3f", wrong.effect().truth()),
                                String.format(
                                        Locale.ROOT, "%.3f", wrong.effect().clearAbove()),
                                wrong.effect()
                                        .answer()
                                        .map(answer -> String.format(Locale.ROOT, "%+.3f", answer.central()))
                                        .orElse("none"),
                                wrong.effect()
                                        .answer()
                                        .map(answer -> String.format(Locale.ROOT, "%.2f", answer.probabilityOfSign()))
                                        .orElse("-")))
                        .toList());
    }

    /** Returns {@code front_bar 4 to 1}. */
    static String words(Truth.Change change) {
        return change.item() + " " + plain(change.from()) + " to " + plain(change.to());
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
