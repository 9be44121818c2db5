package setwright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.predict.ChangePredictor;
import setwright.app.propose.ChangeProposer;
import setwright.app.server.PageWork;
import setwright.app.watch.FolderWatch;
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
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright serve", "  setwright serve --watch logger", "  setwright serve --no-browser --port 8090"
        })
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

    @Option(
            names = "--watch",
            paramLabel = "FOLDER",
            description =
                    "Reads in what comes into this folder, as soon as it is complete, and has it judged. Car, setup and driver are"
                            + " those of the last stint.")
    private Optional<Path> watch = Optional.empty();

    /** Makes the command with what does its work. */
    public ServeCommand(DeskOpener desk, ChangeProposer proposer, ChangePredictor predictor) {
        this.desk = desk;
        this.proposer = proposer;
        this.predictor = predictor;
    }

    @Override
    public Integer call() throws InterruptedException, IOException {
        page.check();
        Optional<FolderWatch> watched =
                watch.isPresent() ? Optional.of(FolderLoop.begin(spec, watch.get())) : Optional.empty();
        Logbook open = logbook.place().begin();
        page.serve(
                spec,
                new PageWork(open, desk.open(open), proposer, predictor, PageWork.USUAL_UPLOAD, watched),
                () -> {});
        return ExitCode.DONE;
    }
}
