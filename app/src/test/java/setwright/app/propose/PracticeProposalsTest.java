package setwright.app.propose;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.evidence.Answer;
import setwright.app.json.DiagnosisJsonWriter;
import setwright.app.json.ProposalJsonWriter;
import setwright.app.scoreboard.Home;
import setwright.app.scoreboard.PracticeAnswer;
import setwright.app.story.TurnWords;
import setwright.app.text.ProposalText;
import setwright.app.text.Terminal;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.LearntEffects;
import setwright.core.proposal.MeasuredEffect;
import setwright.core.proposal.Proposer;
import setwright.core.proposal.Turn;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is proposed for the practice cases, held against the true effect of every change of another simulation. */
final class PracticeProposalsTest {

    private static ProposalAnswer propose(String name) throws IOException {
        Answer answer = PracticeAnswer.of(name);
        return new ProposalAnswer(answer, Proposer.propose(answer.diagnosis(), answer.car()));
    }

    /** The truth lists changes with the quickest first. */
    @ParameterizedTest
    @ValueSource(strings = {"practice-01", "practice-04", "practice-05", "practice-07"})
    void aFaultyCarGetsAChangeFromTheBestThirdThatDoesNoHarm(String name) throws IOException {
        ProposalAnswer answer = propose(name);
        Turn turn = answer.proposal().chosen().orElseThrow().turn();
        JsonNode truth = JsonMapper.shared()
                .readTree(Files.readString(Home.cases().resolve(name).resolve("truth.json")));
        JsonNode changes = truth.at("/changes");
        int rank = -1;
        for (int i = 0; i < changes.size() && rank < 0; i++) {
            JsonNode change = changes.get(i);
            boolean same = change.at("/item").asString().equals(turn.item().name())
                    && (change.at("/to").asDouble() - change.at("/from").asDouble()) * turn.steps() > 0.0;
            rank = same ? i : -1;
        }
        assertThat(rank).as(turn.toString()).isGreaterThanOrEqualTo(0).isLessThan(changes.size() / 3);
        assertHelpsWhereItIsToHelp(changes.get(rank), answer.proposal().target().orElseThrow());
        assertThat(changes.get(rank).at("/lap_time_delta_s").asDouble())
                .isLessThan(2.0 * truth.at("/lap_time_noise_s").asDouble());

        assertKeeps("../docs/propose.schema.json", ProposalJsonWriter.write(answer));
        String diagnosis = DiagnosisJsonWriter.write(answer.answer(), answer.proposal());
        assertKeeps("../docs/diagnose.schema.json", diagnosis);
        assertThat(JsonMapper.shared().readTree(diagnosis).at("/changes/0/item").asString())
                .isEqualTo(turn.item().name());
        assertThat(text(answer))
                .contains("urn " + turn.item().name(), TurnWords.way(turn), "Expect", "refuted", "qualified person");
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-02", "practice-03", "practice-06"})
    void aDriverAtFaultASoundCarAndUnevenLapsGetNoChange(String name) throws IOException {
        ProposalAnswer answer = propose(name);
        assertThat(answer.proposal().chosen()).isEmpty();
        assertThat(text(answer)).contains("no change of the setup");
    }

    /** Rough replays alone would have left it out. */
    @Test
    void whatTheLogbookHasLearntIsCountedBeforeTheShortlistIsCut() throws IOException {
        Answer answer = PracticeAnswer.of("practice-01");
        List<Candidate> weighed = WeighedColumns.all(Proposer.propose(answer.diagnosis(), answer.car()))
                .toList();
        SetupItem leftOut = answer.car().setup().stream()
                .filter(item -> item.name().startsWith("front_") || item.name().startsWith("rear_"))
                .filter(item -> clearlyUp(item) < item.max())
                .filter(item -> weighed.stream().noneMatch(found -> up(item, found)))
                .findFirst()
                .orElseThrow();
        MeasuredEffect quick = new MeasuredEffect(
                new SetupChange(leftOut.name(), leftOut.value(), clearlyUp(leftOut)), Optional.empty(), -1.0, 0.01);
        assertThat(WeighedColumns.all(Proposer.propose(
                        answer.diagnosis(), answer.car(), LearntEffects.of(Collections.nCopies(10, quick)))))
                .as(leftOut.name())
                .extracting(found -> found.turn().item().name() + (found.turn().steps() > 0 ? " up" : " down"))
                .contains(leftOut.name() + " up");
    }

    /** As far as items are turned in rough: what was measured at another size counts for less. */
    private static double clearlyUp(SetupItem item) {
        return item.value() + item.step() * Math.round(0.2 * (item.max() - item.min()) / item.step());
    }

    private static boolean up(SetupItem item, Candidate found) {
        return found.turn().item().name().equals(item.name()) && found.turn().steps() > 0;
    }

    /** In the place that was named the balance goes the right way, or stays within what the truth's own runs scatter by. */
    private static void assertHelpsWhereItIsToHelp(JsonNode change, Finding target) {
        double moved = change.at("/balance_delta_deg/" + target.speed().words() + "/"
                        + target.phase().name().toLowerCase(Locale.ROOT))
                .asDouble();
        double scatterDeg = 0.05; // the scoreboard's noise of these cases, docs/accuracy.md
        assertThat(-target.balance().direction() * moved).isGreaterThan(-scatterDeg);
    }

    private static void assertKeeps(String schema, String json) throws IOException {
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of(schema)), InputFormat.JSON)
                        .validate(json, InputFormat.JSON))
                .isEmpty();
    }

    private static String text(ProposalAnswer answer) {
        return ProposalText.write(
                answer, Figures.forTerminal(UnitSystem.METRIC), Terminal.of(Map.of("NO_COLOR", "1"), false, 100));
    }
}
