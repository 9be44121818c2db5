package setwright.app.command.sums;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import setwright.app.command.Examples;

/** The everyday sums of the trade. */
@Command(
        name = "sums",
        description = "Works out everyday sums, each with its formula, the numbers put in, and its source.",
        mixinStandardHelpOptions = true,
        subcommands = {
            GearingCommand.class,
            BrakesCommand.class,
            RideCommand.class,
            DampingCommand.class,
            RollCommand.class,
            TransferCommand.class,
            FuelCommand.class,
            PressureCommand.class,
            AirCommand.class,
            TopSpeedCommand.class
        },
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums brakes --car car.yaml --deceleration 1.2",
            "  setwright sums fuel --laps 20 --per-lap 2.4"
        })
public final class SumsCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "A sum is missing; there are "
                        + String.join(", ", spec.subcommands().keySet()) + ".");
    }
}
