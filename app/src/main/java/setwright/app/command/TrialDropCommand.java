package setwright.app.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.logbook.LogbookTrials;
import setwright.app.predict.ChangePredictor;
import setwright.app.text.Sentence;
import setwright.logbook.Logbook;
import setwright.logbook.row.TrialRow;

/** Gives up a trial. */
@Command(
        name = "drop",
        description = "Gives up the trial that is under way in the logbook, so that other things may be changed.",
        mixinStandardHelpOptions = true)
public final class TrialDropCommand implements Callable<Integer> {
    private final DeskOpener desk;
    private final ChangePredictor predictor;

    @Spec
    private CommandSpec spec;

    @Option(names = "--car", paramLabel = "NAME", description = "Name of the car; else the car of the last stint.")
    private Optional<String> car = Optional.empty();

    @Mixin
    private LogbookOption logbook;

    /** Makes the command with what does its work. */
    public TrialDropCommand(DeskOpener desk, ChangePredictor predictor) {
        this.desk = desk;
        this.predictor = predictor;
    }

    @Override
    public Integer call() {
        Logbook opened = logbook.place().open();
        TrialRow trial = new LogbookTrials(opened, desk.open(opened), predictor).drop(car);
        Output.print(
                spec,
                Sentence.write(
                        "Trial " + trial.id() + " (" + trial.changeWords() + ") is given up.", Output.terminal(spec)));
        return ExitCode.DONE;
    }
}
