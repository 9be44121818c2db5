package setwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.app.evidence.Answer;
import setwright.app.evidence.BalanceTable;
import setwright.app.report.sensors.SensorsView;
import setwright.app.story.Story;
import setwright.app.story.Storyteller;
import setwright.app.units.Figures;
import setwright.core.chassis.ChassisEvidence;
import setwright.core.circuit.Stint;
import setwright.core.judgement.Diagnosis;

/** Writes the report of an answer: one HTML document with everything in it. */
public final class Report {
    private Report() {}

    /** Returns the document. */
    public static String html(Answer answer, Figures figures) {
        return Page.render("report.jte", view(answer, figures));
    }

    /** Returns what the document shows. */
    public static ReportView view(Answer answer, Figures figures) {
        Diagnosis diagnosis = answer.diagnosis();
        Stint stint = diagnosis.stint();
        BalanceTable table = BalanceTable.of(diagnosis);
        Story story = Storyteller.tell(answer, figures);
        CornerFacts facts = new CornerFacts(table, diagnosis.findings(), figures);
        RibbonView ribbon = RibbonView.of(table, facts);
        CircuitMap map = CircuitMap.of(table, stint.circuit().line(), facts);
        return new ReportView(
                stint.recording().name() + " \u2013 Setwright",
                facts(answer),
                story,
                diagnosis.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                ribbon,
                LapsView.of(answer, story.laps(), figures),
                DrivingView.of(diagnosis, table, story.driving(), figures),
                BalanceView.of(table, map, AxleView.of(diagnosis.axles(), figures), story.balance(), figures),
                CauseView.of(answer, table, facts, story, figures),
                PatternView.of(diagnosis.findings(), story.pattern(), figures),
                SensorsView.of(ChassisEvidence.of(diagnosis, answer.car()), story.sensors(), figures),
                Page.style(),
                Page.script());
    }

    private static List<String> facts(Answer answer) {
        Stint stint = answer.diagnosis().stint();
        String recording = stint.recording().name();
        String circuit = stint.circuit().name();
        List<String> facts = new ArrayList<>(List.of(recording));
        if (!circuit.contains(recording)) { // else it was named after the recording, for want of a name
            facts.add(circuit);
        }
        facts.add(stint.goodLaps().size() + " of " + stint.laps().size() + " laps used");
        facts.add(answer.car().description());
        return facts;
    }
}
