package setwright.app.json;

import static setwright.app.json.Numbers.degrees;
import static setwright.app.json.Numbers.digits;
import static setwright.app.json.Numbers.known;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.core.baseline.Baseline;
import setwright.core.explanation.Alternative;
import setwright.core.explanation.Reason;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Grounds;
import setwright.core.replay.Pool;
import setwright.core.standing.ItemStanding;
import setwright.core.standing.SetupStanding;

/** Writes why. */
final class ExplanationJsonWriter {
    private static final List<Phase> PHASES = List.of(Phase.ENTRY, Phase.MID, Phase.EXIT);

    private ExplanationJsonWriter() {}

    static List<ExplanationJson.Reason> reasons(List<Reason> reasons) {
        return reasons.stream()
                .map(reason -> new ExplanationJson.Reason(
                        reason.kind().words(),
                        reason.sentence(),
                        reason.figures().stream()
                                .map(figure -> new ExplanationJson.Figure(
                                        figure.name(),
                                        known(figure.value()),
                                        known(figure.low()),
                                        known(figure.high()),
                                        figure.unit()))
                                .toList(),
                        reason.laps(),
                        reason.corners(),
                        reason.proof().map(proof -> new ExplanationJson.Proof(proof.lap(), proof.corner()))))
                .toList();
    }

    static List<ExplanationJson.Alternative> alternatives(List<Alternative> alternatives) {
        return alternatives.stream()
                .map(other -> new ExplanationJson.Alternative(
                        other.what(),
                        other.probability().isPresent()
                                ? known(other.probability().getAsDouble())
                                : OptionalDouble.empty(),
                        other.why()))
                .toList();
    }

    /** Items out of the ordinary with what they do in a finding's place, the one that does most first. */
    static List<ExplanationJson.Item> items(SetupStanding standing, Finding finding) {
        Pool pool = finding.pool();
        return standing.unusual(pool).stream()
                .map(found -> new ExplanationJson.Item(
                        found.item().name(),
                        digits(found.item().value()),
                        found.item().unit(),
                        digits(found.item().min()),
                        digits(found.item().max()),
                        digits(found.usual()),
                        known(found.item().place()),
                        known(found.unusual()),
                        degrees(found.balanceRad(pool))))
                .toList();
    }

    static ExplanationJson.Setup setup(Grounds grounds) {
        SetupStanding standing = grounds.standing();
        return new ExplanationJson.Setup(
                !standing.isUnknown(),
                switch (standing.yard()) {
                    case NONE, SCATTERED -> "nothing";
                    case RANGES -> "ranges";
                    case BASELINE -> "baseline";
                },
                grounds.baseline().map(Baseline::name),
                standing.changed().stream()
                        .map(change -> new TrialJson.Change(change.item(), change.from(), change.to(), change.unit()))
                        .toList(),
                standing.items().stream()
                        .filter(found -> found.unusual() > 0.5)
                        .map(found -> new ExplanationJson.SetupItem(
                                found.item().name(),
                                digits(found.item().value()),
                                found.item().unit(),
                                digits(found.item().min()),
                                digits(found.item().max()),
                                digits(found.usual()),
                                known(found.item().place()),
                                known(found.unusual()),
                                balance(found)))
                        .toList());
    }

    private static List<ExplanationJson.InPhase> balance(ItemStanding found) {
        List<ExplanationJson.InPhase> cells = new ArrayList<>();
        for (Phase phase : PHASES) {
            cells.add(cell(found, Pool.all(phase), "all"));
            for (SpeedClass speed : SpeedClass.values()) {
                cells.add(cell(found, Pool.of(phase, speed), speed.words()));
            }
        }
        return cells;
    }

    private static ExplanationJson.InPhase cell(ItemStanding found, Pool pool, String speed) {
        boolean there = found.effect().balance(pool.phase(), pool.speedClass()).isPresent();
        return new ExplanationJson.InPhase(
                pool.phase().words(), speed, there ? degrees(found.balanceRad(pool)) : OptionalDouble.empty());
    }
}
