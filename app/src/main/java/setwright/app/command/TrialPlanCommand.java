package setwright.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.LapSource;
import setwright.app.diagnose.Progress;
import setwright.app.json.PlanJsonWriter;
import setwright.app.logbook.LogbookTrials;
import setwright.app.logbook.StintDesk;
import setwright.app.predict.ChangePredictor;
import setwright.app.propose.ChangeProposer;
import setwright.app.propose.ProposalAnswer;
import setwright.app.text.PlanText;
import setwright.app.trial.PlanAnswer;
import setwright.app.units.Figures;
import setwright.logbook.Logbook;

/** Says how many laps and runs a trial takes; in the logbook, opens it. */
@Command(
        name = "plan",
        description = {
            "Says how a change is to be tried: how many runs and laps, and what they would show.",
            "",
            "From this driver's scatter on recorded laps, and what is known of the scatter from run to run. The change is the proposed"
                    + " one, or one that is named. With a stint of the logbook the trial is opened: until it is judged or dropped,"
                    + " nothing else is changed on the car."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright trial plan laps.csv --car car.yaml",
            "  setwright trial plan 12",
            "  setwright trial plan 12 rear_bar=-1step"
        })
public final class TrialPlanCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final DeskOpener desk;
    private final ChangeProposer proposer;
    private final ChangePredictor predictor;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "FILE|STINT [ITEM=VALUE]",
            description =
                    LapChoice.WORDS + " Then, for a stint, the change that is to be tried; else the proposed one.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--together", paramLabel = "WHY", description = "Why several items are to be changed at once.")
    private Optional<String> together = Optional.empty();

    @Mixin
    private LapChoice choice;

    @Option(names = "--json", description = "Prints JSON (docs/trial-plan.schema.json) instead of text.")
    private boolean json;

    @Mixin
    private UnitsOption units;

    /** Makes the command with what does its work. */
    public TrialPlanCommand(Diagnoser diagnoser, DeskOpener desk, ChangeProposer proposer, ChangePredictor predictor) {
        this.diagnoser = diagnoser;
        this.desk = desk;
        this.proposer = proposer;
        this.predictor = predictor;
    }

    @Override
    public Integer call() throws Exception {
        Optional<String> laps = words.stream().findFirst().filter(word -> word.indexOf('=') < 0);
        List<String> changes = words.subList(laps.isPresent() ? 1 : 0, words.size());
        PlanAnswer answer;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS + 1)) {
            answer = LapChoice.namesStint(laps)
                    ? open(laps, changes, progress)
                    : plan(choice.laps(spec, laps, diagnoser, desk, CarOption.ITEMS), changes, progress);
        }
        Output.print(
                spec,
                json
                        ? PlanJsonWriter.write(answer)
                        : PlanText.write(answer, Figures.forTerminal(units.system()), Output.terminal(spec)));
        return answer.plans().isEmpty() ? ExitCode.NOT_ENOUGH_EVIDENCE : ExitCode.DONE;
    }

    private PlanAnswer plan(LapSource laps, List<String> changes, Progress progress) throws Exception {
        if (!changes.isEmpty()) {
            throw new BadOption("a change of one's own is planned for stints of the logbook: read the recording in with"
                    + " setwright add, or leave out " + changes.get(0) + ".");
        }
        ProposalAnswer proposed = ProposalAnswer.of(laps, proposer, progress);
        return PlanAnswer.of(proposed.answer(), proposed.proposal());
    }

    private PlanAnswer open(Optional<String> number, List<String> changes, Progress progress) throws Exception {
        Logbook logbook = choice.openLogbook();
        StintDesk stints = desk.open(logbook);
        return new LogbookTrials(logbook, stints, predictor)
                .plan(choice.kept(number, stints), changes, together, proposer, progress);
    }
}
