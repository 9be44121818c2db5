package setwright.app.command;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.LapSource;
import setwright.app.diagnose.Progress;
import setwright.app.json.ProposalJsonWriter;
import setwright.app.propose.ChangeProposer;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.Report;
import setwright.app.report.change.ProposalReport;
import setwright.app.text.ProposalText;

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
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright propose laps.csv --car car.yaml",
            "  setwright propose laps.csv --car car.yaml --html change.html",
            "  setwright propose 12 --json"
        })
public final class ProposeCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final DeskOpener desk;
    private final ChangeProposer proposer;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "FILE|STINT", description = LapChoice.WORDS)
    private Optional<String> named = Optional.empty();

    @Mixin
    private LapChoice choice;

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public ProposeCommand(Diagnoser diagnoser, DeskOpener desk, ChangeProposer proposer) {
        this.diagnoser = diagnoser;
        this.desk = desk;
        this.proposer = proposer;
    }

    @Override
    public Integer call() throws Exception {
        LapSource laps = choice.laps(spec, named, diagnoser, desk, CarOption.ITEMS);
        OutputFiles.check(choice.inputs(named), Map.of("--html", showing.html()));
        ProposalAnswer proposed;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS + 1)) {
            proposed = ProposalAnswer.of(laps, proposer, progress);
        }
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
