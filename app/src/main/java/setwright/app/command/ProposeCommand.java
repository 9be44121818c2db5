package setwright.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.json.ProposalJsonWriter;
import setwright.app.propose.ChangeProposer;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.Report;
import setwright.app.report.change.ProposalReport;
import setwright.app.text.ProposalText;
import setwright.core.proposal.Proposal;

/** Says what to change next, or that nothing is to be changed. */
@Command(
        name = "propose",
        description = {
            "Says what to do next: coach the driver, change one item of the setup, or nothing.",
            "",
            "All items are turned on the recorded laps, within their ranges and steps. The change that helps the problem most for"
                    + " what it upsets elsewhere is proposed, with what the next stint should show if it is right. Changes that"
                    + " are not to be made are listed with the reason."
        },
        mixinStandardHelpOptions = true)
public final class ProposeCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final ChangeProposer proposer;

    @Spec
    private CommandSpec spec;

    @Mixin
    private RecordingParameter recording;

    @Mixin
    private CarOption car;

    @Mixin
    private ReadingOptions reading;

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public ProposeCommand(Diagnoser diagnoser, ChangeProposer proposer) {
        this.diagnoser = diagnoser;
        this.proposer = proposer;
    }

    @Override
    public Integer call() throws Exception {
        Path sheet = car.required(spec, "its setup lists the items that can be turned.");
        OutputFiles.check(
                List.of(Optional.of(recording.path()), Optional.of(sheet), reading.map(), reading.circuit()),
                Map.of("--html", showing.html()));
        Answer answer;
        Proposal proposal;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS + 1)) {
            answer = diagnoser.diagnose(
                    DiagnoseRequest.of(recording.path(), car.path(), reading.map(), reading.circuit()), progress);
            progress.step("turning each item on the laps");
            proposal = proposer.propose(answer.diagnosis(), answer.car());
        }
        ProposalAnswer proposed = new ProposalAnswer(answer, proposal);
        showing.show(
                spec,
                () -> page(proposed),
                () -> ProposalJsonWriter.write(proposed),
                () -> ProposalText.write(proposed, showing.forTerminal(), Output.terminal(spec)));
        return ExitCode.DONE;
    }

    /** The change and what else was weighed; the diagnosis where the car is not to be changed. */
    private String page(ProposalAnswer proposed) {
        return proposed.proposal().target().isPresent()
                ? ProposalReport.html(proposed, showing.forPage())
                : Report.html(proposed.answer(), showing.forPage());
    }
}
