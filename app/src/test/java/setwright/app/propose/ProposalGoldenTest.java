package setwright.app.propose;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.app.docs.KeptText;
import setwright.app.evidence.Answer;
import setwright.app.scoreboard.PracticeAnswer;
import setwright.app.text.ProposalText;
import setwright.app.text.Terminal;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.proposal.Proposer;

/**
 * The whole text for one practice case, as it is read at a width of 80. Whoever changes it looks at the difference and keeps it with
 * {@code -Dsetwright.docs=write} (CONTRIBUTING.md).
 */
final class ProposalGoldenTest {
    private static final Path GOLDEN = Path.of("src/test/resources/setwright/app/propose/practice-01.txt");

    @Test
    void theTextIsTheOneThatWasLookedAt() throws IOException {
        Answer answer = PracticeAnswer.of("practice-01");
        String text = ProposalText.write(
                new ProposalAnswer(answer, Proposer.propose(answer.diagnosis(), answer.car())),
                Figures.forTerminal(UnitSystem.METRIC),
                Terminal.of(Map.of("NO_COLOR", "1"), false, 80));
        KeptText.assertHolds(GOLDEN, text);
    }
}
