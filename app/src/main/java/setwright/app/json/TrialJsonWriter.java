package setwright.app.json;

import static setwright.app.json.Numbers.known;

import java.util.OptionalInt;
import setwright.app.story.Story;
import setwright.app.trial.TrialAnswer;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;
import setwright.core.trial.Trial;
import setwright.core.trial.TrialEffect;
import setwright.core.trial.TrialLap;
import setwright.core.trial.TrialRun;
import setwright.core.trial.TrialTarget;

/** Writes a trial as JSON of version 1. Units stand in the field names. */
public final class TrialJsonWriter {
    private static final int VERSION = 1;
    private static final String ALL = "all";
    private static final double DEGREES = Math.toDegrees(1.0);

    private TrialJsonWriter() {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(TrialAnswer answer) {
        Trial trial = answer.trial();
        return Numbers.text(new TrialJson(
                VERSION,
                trial.verdict().words(),
                trial.reason(),
                answer.changes().stream()
                        .map(change -> new TrialJson.Change(change.item(), change.from(), change.to(), change.unit()))
                        .toList(),
                answer.together(),
                trial.runs().stream().map(TrialJsonWriter::run).toList(),
                effect(trial.lapTimeS()),
                known(trial.lapTimeBound()),
                trial.target().map(target -> target(target, trial)),
                trial.dayS().map(TrialJsonWriter::effect),
                trial.besides().stream()
                        .map(found -> new TrialJson.SideEffect(
                                found.pool().phase().words(),
                                found.pool().speedClass().map(SpeedClass::words).orElse(ALL),
                                effect(found.balanceRad().times(DEGREES)),
                                found.clear()))
                        .toList(),
                trial.sectors().stream()
                        .map(found -> new TrialJson.SectorEffect(
                                found.number(),
                                answer.sectorCorners(found.number()),
                                effect(found.timeS()),
                                found.clear()))
                        .toList(),
                known(trial.lapScatterS()),
                known(trial.runScatterS()),
                trial.more().map(Trial.More::lapsARun).orElse(OptionalInt.empty()),
                trial.more().map(Trial.More::runsEach).orElse(OptionalInt.empty()),
                answer.predicted().map(TrialJsonWriter::predicted),
                trial.doubts(),
                answer.aside(),
                Story.CAUTION));
    }

    private static TrialJson.Predicted predicted(Prediction prediction) {
        Effect time = prediction.lapTimeS();
        return new TrialJson.Predicted(
                new TrialJson.Interval(known(time.central()), known(time.low()), known(time.high())),
                prediction.phases().stream()
                        .map(phase -> new TrialJson.PredictedBalance(
                                phase.phase().words(),
                                phase.speedClass().map(SpeedClass::words).orElse(ALL),
                                Numbers.degrees(phase.balance().central()),
                                Numbers.degrees(phase.balance().low()),
                                Numbers.degrees(phase.balance().high())))
                        .toList());
    }

    private static TrialJson.Run run(TrialRun run) {
        return new TrialJson.Run(
                run.name(),
                run.changed() ? "changed" : "before",
                run.laps().stream().map(TrialLap::number).toList(),
                run.laps().stream().map(lap -> known(lap.timeS())).toList());
    }

    private static TrialJson.Target target(TrialTarget target, Trial trial) {
        return new TrialJson.Target(
                target.phase().words(),
                target.speed().words(),
                target.balance().words(),
                target.corners(),
                trial.targetRad().map(moved -> effect(moved.times(DEGREES))));
    }

    private static TrialJson.Effect effect(TrialEffect effect) {
        return new TrialJson.Effect(
                known(effect.value()),
                known(effect.low()),
                known(effect.high()),
                known(effect.error()),
                known(effect.freedom()),
                known(effect.byChance()));
    }
}
