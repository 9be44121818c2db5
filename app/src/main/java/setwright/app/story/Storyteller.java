package setwright.app.story;

import setwright.app.evidence.Answer;
import setwright.app.evidence.BalanceTable;
import setwright.app.units.Figures;

/** Tells the chain of reasoning of an answer. */
public final class Storyteller {
    private Storyteller() {}

    /** Returns the story, with figures as given. */
    public static Story tell(Answer answer, Figures figures) {
        BalanceTable table = BalanceTable.of(answer.diagnosis());
        VerdictWords verdict = new VerdictWords(answer.diagnosis(), table, figures);
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
                WhyWords.tell(answer.diagnosis(), figures));
    }
}
