package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import setwright.core.judgement.Verdict;

/** The driving gate, the verdict and the false alarms. */
final class VerdictRule implements Rule {
    @Override
    public List<Row> judge(StintRun run) {
        Truth truth = run.practice().truth();
        List<Row> rows = new ArrayList<>();
        rows.add(driving(run, truth));
        rows.add(verdict(run, truth));
        if (truth.label().kind().equals("none")) {
            int findings =
                    run.diagnosis().map(answer -> answer.findings().size()).orElse(0);
            rows.add(Row.counted(
                    "problems",
                    "none",
                    findings == 0 ? "none" : Integer.toString(findings),
                    Measure.FALSE_PROBLEMS,
                    Count.of(findings > 0)));
        }
        if (carIsRight(run, truth)) {
            boolean called = run.diagnosis().stream().anyMatch(answer -> answer.verdict() == Verdict.CHANGE_THE_CAR);
            rows.add(Row.counted(
                    "setup change",
                    "not called for",
                    called ? "called for" : "not called for",
                    Measure.FALSE_CHANGES,
                    Count.of(called)));
        }
        return rows;
    }

    private static Row driving(StintRun run, Truth truth) {
        boolean steady = truth.driver().consistentEnough();
        Optional<Boolean> answer =
                run.diagnosis().map(found -> found.repeatability().repeatable());
        return Row.counted(
                "driving",
                String.format(
                        Locale.ROOT,
                        "%s (%.2f %%)",
                        steady ? "repeatable" : "not repeatable",
                        truth.driver().lapTimeSdPct()),
                answer.map(repeatable -> repeatable ? "repeatable" : "not repeatable")
                        .orElse("none"),
                Measure.DRIVING,
                Count.of(answer.isPresent() && answer.get() == steady));
    }

    /** Stints of a back-to-back test are asked another question, and weak faults hardly show: neither is counted. */
    private static Row verdict(StintRun run, Truth truth) {
        Optional<Verdict> answer = run.diagnosis().map(found -> found.verdict());
        String words = answer.map(Verdict::words).orElse("none");
        Set<Verdict> right = TruthTerms.verdicts(truth.label().kind());
        if (right.isEmpty() || truth.label().weak()) {
            return Row.shown("verdict", truth.label().kind().replace('_', ' ') + ", not counted", words);
        }
        return Row.counted(
                "verdict",
                Words.choice(right.stream().map(Verdict::words).sorted().toList()),
                words,
                Measure.VERDICT,
                Count.of(answer.isPresent() && right.contains(answer.get())));
    }

    private static boolean carIsRight(StintRun run, Truth truth) {
        return truth.isBackToBack()
                ? truth.isBalanced(run.truth())
                : TruthTerms.carIsRight(truth.label().kind());
    }
}
