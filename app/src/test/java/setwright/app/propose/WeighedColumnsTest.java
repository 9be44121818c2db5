package setwright.app.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import setwright.app.example.ExampleProposal;
import setwright.app.report.change.ProposalReport;
import setwright.app.report.change.ProposalView;
import setwright.app.text.ProposalText;
import setwright.app.text.Terminal;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.replay.Effect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

/** The target has a column of its own wherever it lies. */
final class WeighedColumnsTest {
    private static final ProposalAnswer EXAMPLE = ExampleProposal.answer();

    private static ProposalAnswer aimedAt(Phase phase, SpeedRange speed, SpeedClass... driven) {
        Proposal whole = EXAMPLE.proposal();
        Finding was = whole.target().orElseThrow();
        Finding target = new Finding(
                phase,
                speed,
                was.balance(),
                was.trigger(),
                was.triggers(),
                was.cause(),
                was.corners(),
                was.lapShare(),
                was.lapWide(),
                was.probability(),
                was.sizeRad(),
                was.sizeLowRad(),
                was.sizeHighRad(),
                was.price(),
                was.why());
        return new ProposalAnswer(
                EXAMPLE.answer(),
                new Proposal(
                        Optional.of(target),
                        whole.chosen().map(found -> moved(found, target, driven)),
                        whole.others().stream()
                                .map(found -> moved(found, target, driven))
                                .toList(),
                        whole.refused().stream()
                                .map(found -> moved(found, target, driven))
                                .toList(),
                        whole.expect(),
                        whole.laps(),
                        whole.refutation(),
                        whole.reason()));
    }

    /** Moves the balance everywhere, in all corners by 1.25 deg under braking, in each class by less. */
    private static Candidate moved(Candidate candidate, Finding target, SpeedClass... driven) {
        Prediction was = candidate.prediction();
        List<PhaseEffect> phases = Arrays.stream(Phase.values())
                .flatMap(phase -> Stream.concat(
                        Stream.of(effect(phase, Optional.empty(), phase == Phase.BRAKING ? 1.25 : 0.75)),
                        Arrays.stream(driven).map(speed -> effect(phase, Optional.of(speed), 0.5))))
                .toList();
        Prediction prediction = new Prediction(
                was.changes(),
                was.corners(),
                phases,
                was.lapTimeS(),
                phases.stream().map(phase -> 0.1).toList(),
                was.lap(),
                was.reasons(),
                was.doubts());
        return new Candidate(
                candidate.turn(),
                prediction,
                target.moved(prediction).orElseThrow(),
                candidate.towardCure(),
                candidate.gains(),
                candidate.score(),
                candidate.refused());
    }

    private static PhaseEffect effect(Phase phase, Optional<SpeedClass> speed, double degrees) {
        double rad = Math.toRadians(degrees);
        return new PhaseEffect(phase, speed, new Effect(rad, rad - 0.001, rad + 0.001, 1.0));
    }

    private static String text(ProposalAnswer answer) {
        return ProposalText.write(
                answer, Figures.forTerminal(UnitSystem.METRIC), Terminal.of(Map.of("NO_COLOR", "1"), false, 120));
    }

    @Test
    void aTargetUnderBrakingIsShownForEveryChange() {
        ProposalAnswer answer = aimedAt(Phase.BRAKING, SpeedRange.ALL, SpeedClass.LOW, SpeedClass.HIGH);
        WeighedColumns columns = WeighedColumns.of(answer.proposal());
        assertThat(columns.target()).contains(Pool.all(Phase.BRAKING));
        assertThat(columns.phases()).startsWith(Phase.BRAKING);
        String text = text(answer);
        assertThat(text.replaceAll("\\s+", " "))
                .contains("aim: the target, braking, all corners; phases in slower / faster corners");
        assertThat(text.lines().filter(line -> line.contains("  +1.25  ")))
                .as("chosen, weighed and refused")
                .hasSize(3);
        ProposalView page = ProposalReport.view(answer, Figures.forPage(UnitSystem.METRIC));
        assertThat(page.classes().get(0)).isEqualTo(new ProposalView.Heading("Target: braking, all", "target"));
        assertThat(page.candidates())
                .hasSize(3)
                .allSatisfy(row -> assertThat(row.cells().get(0).value()).isEqualTo("+1.25"))
                .allSatisfy(row -> assertThat(row.cells()).hasSameSizeAs(page.classes()));
    }

    @Test
    void cornersOfMediumSpeedAreShownWhereTheLapHasNoOthers() {
        WeighedColumns columns = WeighedColumns.of(
                aimedAt(Phase.MID, SpeedRange.LOW, SpeedClass.MEDIUM).proposal());
        assertThat(columns.target())
                .as("no corner is slow: the target is that of all")
                .contains(Pool.all(Phase.MID));
        assertThat(columns.classes()).containsExactly(SpeedClass.MEDIUM);
        assertThat(WeighedColumns.of(aimedAt(Phase.MID, SpeedRange.LOW, SpeedClass.values())
                                .proposal())
                        .classes())
                .containsExactly(SpeedClass.LOW, SpeedClass.HIGH);
    }

    @Test
    void whatIsRefusedIsTold() {
        String text = text(EXAMPLE);
        assertThat(text).containsPattern("(?m)^x front_spring ");
        assertThat(text.replaceAll("\\s+", " "))
                .containsPattern(
                        "Not front_spring 200 to 205 \\(stiffer; target [-+]?[0-9.]+ deg, lap [-+]?[0-9.]+ s\\): the"
                                + " front ride frequency would be 9.20 Hz \\(now 7.90\\), outside the 1 to 8 Hz");
    }
}
