package setwright.app.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.json.TriedJsonWriter;
import setwright.app.logbook.StoryDesk;
import setwright.app.text.TriedText;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** Predicted against measured. */
@Command(
        name = "tried",
        description = {
            "Lists every change that was ever tried, what it was to do and what it did.",
            "",
            "What was measured on a car draws the next predictions for it."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright trial tried", "  setwright trial tried --json"})
public final class TrialTriedCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--car", paramLabel = "NAME", description = "Name of a car; else all cars.")
    private Optional<String> car = Optional.empty();

    @Option(names = "--json", description = "Prints JSON (docs/trial-tried.schema.json) instead of text.")
    private boolean json;

    @Mixin
    private LogbookOption logbook;

    @Override
    public Integer call() {
        List<StoryDesk.Tried> tried = new StoryDesk(logbook.place().open()).tried(car);
        Output.print(
                spec,
                json
                        ? TriedJsonWriter.write(tried)
                        : TriedText.write(tried, Figures.forTerminal(UnitSystem.METRIC), Output.terminal(spec)));
        return ExitCode.DONE;
    }
}
