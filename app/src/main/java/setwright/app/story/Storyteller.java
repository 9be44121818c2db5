package setwright.app.story;

import java.util.List;
import setwright.app.evidence.Answer;
import setwright.app.evidence.BalanceTable;
import setwright.app.units.Figures;
import setwright.core.advice.Adviser;
import setwright.core.chassis.ChassisEvidence;
import setwright.core.technique.TechniqueFinder;
import setwright.core.technique.TechniqueLever;

/** Tells the chain of reasoning of an answer. */
public final class Storyteller {
    private Storyteller() {}

    /** Returns the story, with figures as given. */
    public static Story tell(Answer answer, Figures figures) {
        BalanceTable table = BalanceTable.of(answer.diagnosis());
        List<TechniqueLever> levers =
                TechniqueFinder.find(answer.diagnosis(), answer.car().drivenAxle());
        VerdictWords verdict = new VerdictWords(answer.diagnosis(), table, levers, figures);
        return new Story(
                verdict.headline(),
                verdict.reason(),
                verdict.next(),
                LapsWords.tell(answer, figures),
                DrivingWords.tell(answer.diagnosis(), figures),
                AxleWords.added(
                        BalanceWords.tell(answer.diagnosis(), table, figures),
                        answer.diagnosis().axles(),
                        figures),
                CauseWords.tell(answer.diagnosis(), figures),
                PatternWords.tell(answer.diagnosis(), figures),
                WhyWords.tell(answer.diagnosis(), figures),
                levers,
                AdviceWords.tell(Adviser.review(answer.diagnosis(), answer.car()), figures),
                SensorWords.tell(ChassisEvidence.of(answer.diagnosis(), answer.car()), figures));
    }
}
