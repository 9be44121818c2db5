package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;

/** Laps of the right kind. A lap of the answer is the true one that it overlaps by more than half. */
final class LapRule implements Rule {
    @Override
    public List<Row> judge(StintRun run) {
        int right = 0;
        List<String> misses = new ArrayList<>();
        double from = 0.0;
        for (Truth.Lap real : run.truth().laps()) {
            double to = from + real.timeS();
            Optional<Lap> lap = at(run.stint(), from, to);
            if (lap.isPresent()
                    && TruthTerms.lapKinds(real.kind()).contains(lap.get().kind())) {
                right++;
            } else {
                misses.add(real.lap() + ": " + real.kind() + " as "
                        + lap.map(found -> found.kind().words()).orElse("no lap"));
            }
            from = to;
        }
        int laps = run.truth().laps().size();
        String truth = laps + " laps";
        String answer = run.stint()
                .map(stint -> stint.laps().size() + " laps, " + stint.goodLaps().size() + " judged")
                .orElse("none");
        if (!misses.isEmpty() && run.stint().isPresent()) {
            answer += "; " + String.join("; ", misses);
        }
        return List.of(Row.counted("laps", truth, answer, Measure.LAPS, new Count(right, laps)));
    }

    private static Optional<Lap> at(Optional<Stint> stint, double fromS, double toS) {
        return stint.flatMap(found -> found.laps().stream()
                .filter(lap -> {
                    double step = found.recording().stepS();
                    double shared = Math.min(lap.to() * step, toS) - Math.max(lap.from() * step, fromS);
                    return shared > 0.5 * (toS - fromS);
                })
                .findFirst());
    }
}
