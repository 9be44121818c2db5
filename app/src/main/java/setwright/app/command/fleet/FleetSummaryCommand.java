package setwright.app.command.fleet;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.command.Examples;
import setwright.app.command.ExitCode;
import setwright.app.command.Output;
import setwright.app.fleet.FleetEngine;
import setwright.app.fleet.SummaryRequest;

/** What a school asks. */
@Command(
        name = "summary",
        description = {
            "Answers what a school asks of the tables that fleet diagnose wrote: which problems and faults, in which corners, which"
                    + " drivers have more of them than is usual here, and which changes helped.",
            "",
            "Every figure comes with its counts and an interval, or with the words too few."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright fleet summary --in judged", "  setwright fleet summary --in judged --circuit hill --json"
        })
final class FleetSummaryCommand implements Callable<Integer> {
    private final Supplier<Optional<FleetEngine>> engine;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--in",
            paramLabel = "TREE",
            required = true,
            description = "The tables: what fleet diagnose was given as --out.")
    private String in;

    @Option(
            names = "--master",
            paramLabel = "URL",
            description = "The cluster, as Spark names it. Default: ${DEFAULT-VALUE}.",
            defaultValue = "local[*]")
    private String master;

    @Option(names = "--driver", paramLabel = "NAME", description = "Only recordings of this driver.")
    private Optional<String> driver = Optional.empty();

    @Option(names = "--circuit", paramLabel = "NAME", description = "Only recordings made at this circuit.")
    private Optional<String> circuit = Optional.empty();

    @Option(names = "--json", description = "Prints JSON (docs/fleet-summary.schema.json) instead of text.")
    private boolean json;

    FleetSummaryCommand(Supplier<Optional<FleetEngine>> engine) {
        this.engine = engine;
    }

    @Override
    public Integer call() throws Exception {
        Output.print(spec, FleetCommand.found(engine).summary(new SummaryRequest(in, master, driver, circuit, json)));
        return ExitCode.DONE;
    }
}
