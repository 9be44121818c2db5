package setwright.app.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Back to back. */
@Command(
        name = "trial",
        description = "Works with changes that are tried back to back.",
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright trial plan 12 rear_bar=-1step", "  setwright trial judge", "  setwright trial tried"})
public final class TrialCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "A command is missing: trial plan, judge, drop or tried.");
    }
}
