package setwright.app.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.json.DoneJsonWriter;
import setwright.app.logbook.Amending;
import setwright.app.logbook.Amending.Amendment;
import setwright.app.text.Sentence;

/** Corrects what was said of a stint. */
@Command(
        name = "amend",
        description =
                "Corrects what was said of a stint when it came into the logbook; what was before stays in the story.",
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright amend 12 --driver Ines",
            "  setwright amend 12 --setup 3 --track-temperature 31",
            "  setwright amend 7 --good-order"
        })
public final class AmendCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "STINT", description = "Number of the stint.")
    private long stint;

    @Option(names = "--driver", paramLabel = "NAME", description = "Who drove.")
    private Optional<String> driver = Optional.empty();

    @Option(names = "--setup", paramLabel = "N", description = "Number of the setup that was driven.")
    private Optional<Integer> setup = Optional.empty();

    @Option(
            names = "--good-order",
            negatable = true,
            description = "The car was in good order: other stints of it on this circuit are held against this one."
                    + " With --no-good-order that is taken back.")
    private Optional<Boolean> goodOrder = Optional.empty();

    @Mixin
    private ConditionOptions conditions;

    @Option(names = "--json", description = "Prints JSON (docs/amend.schema.json) instead of text.")
    private boolean json;

    @Mixin
    private LogbookOption logbook;

    @Override
    public Integer call() {
        if (driver.isEmpty() && setup.isEmpty() && goodOrder.isEmpty() && !conditions.given()) {
            throw new BadOption(
                    "nothing is to be corrected: give --driver, --setup, --tyre-age, --track-temperature, --fuel or --good-order.");
        }
        String words = new Amending(logbook.place().open())
                .amend(
                        stint,
                        new Amendment(
                                driver,
                                setup,
                                conditions.tyreAgeLaps(),
                                conditions.trackCelsius(),
                                conditions.fuelKg(),
                                goodOrder));
        Output.print(spec, json ? DoneJsonWriter.stint(stint, words) : Sentence.write(words, Output.terminal(spec)));
        return ExitCode.DONE;
    }
}
