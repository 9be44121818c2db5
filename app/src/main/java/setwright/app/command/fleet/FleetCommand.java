package setwright.app.command.fleet;

import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import setwright.app.command.BadOption;
import setwright.app.command.Examples;
import setwright.app.fleet.FleetEngine;

/** Many recordings at once. */
@Command(
        name = "fleet",
        description = {
            "Judges the recordings of a whole tree, and answers what a school asks of all of them.",
            "",
            "It runs on Apache Spark, on this machine or on a cluster; docs/fleet.md tells how a tree is laid out."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright fleet diagnose --in season --out judged", "  setwright fleet summary --in judged"})
public final class FleetCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    private FleetCommand() {}

    /**
     * Makes the command with those below it.
     *
     * @param engine  looked for when there is work to do
     */
    public static CommandLine with(Supplier<Optional<FleetEngine>> engine) {
        return new CommandLine(new FleetCommand())
                .addSubcommand(new FleetDiagnoseCommand(engine))
                .addSubcommand(new FleetSummaryCommand(engine));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "A command is missing: fleet diagnose or fleet summary.");
    }

    static FleetEngine found(Supplier<Optional<FleetEngine>> engine) {
        return engine.get()
                .orElseThrow(
                        () -> new BadOption(
                                "this copy comes without Apache Spark, on which fleet runs: use ./setwright in a copy of the sources,"
                                        + " which fetches it on first use, or judge recordings one by one with setwright diagnose."));
    }
}
