package setwright.app.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.json.DoneJsonWriter;
import setwright.app.logbook.OpenTrial;
import setwright.app.text.Sentence;
import setwright.logbook.row.TrialRow;

/** Gives up a trial. */
@Command(
        name = "drop",
        description = "Gives up the trial that is under way in the logbook, so that other things may be changed.",
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright trial drop"})
public final class TrialDropCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--car", paramLabel = "NAME", description = "Name of the car; else the car of the last stint.")
    private Optional<String> car = Optional.empty();

    @Option(names = "--json", description = "Prints JSON (docs/trial-drop.schema.json) instead of text.")
    private boolean json;

    @Mixin
    private LogbookOption logbook;

    @Override
    public Integer call() {
        TrialRow trial = new OpenTrial(logbook.place().open(), car).drop();
        String words = "Trial " + trial.id() + " (" + trial.changeWords() + ") is given up.";
        Output.print(
                spec,
                json
                        ? DoneJsonWriter.trial(trial.id(), trial.changeWords(), words)
                        : Sentence.write(words, Output.terminal(spec)));
        return ExitCode.DONE;
    }
}
