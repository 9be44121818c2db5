package setwright.app.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import setwright.app.predict.ChangePredictor;
import setwright.app.propose.ChangeProposer;
import setwright.app.server.PageWork;
import setwright.logbook.Logbook;

/** Serves the local page until it is stopped. */
@Command(
        name = "serve",
        description = {
            "Opens the local page: recordings are brought in, stints looked at, changes tried, all in the browser.",
            "",
            "Only browsers on this machine can see it. It begins a logbook where there is none, and runs until it is"
                    + " stopped with Ctrl+C."
        },
        mixinStandardHelpOptions = true)
public final class ServeCommand implements Callable<Integer> {
    private final DeskOpener desk;
    private final ChangeProposer proposer;
    private final ChangePredictor predictor;

    @Spec
    private CommandSpec spec;

    @Mixin
    private LogbookOption logbook;

    @Mixin
    private PageRun page;

    /** Makes the command with what does its work. */
    public ServeCommand(DeskOpener desk, ChangeProposer proposer, ChangePredictor predictor) {
        this.desk = desk;
        this.proposer = proposer;
        this.predictor = predictor;
    }

    @Override
    public Integer call() throws InterruptedException {
        page.check();
        Logbook open = logbook.place().begin();
        page.serve(spec, new PageWork(open, desk.open(open), proposer, predictor, PageWork.USUAL_UPLOAD), () -> {});
        return ExitCode.DONE;
    }
}
