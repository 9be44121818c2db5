package setwright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.predict.ChangePredictor;
import setwright.app.propose.ChangeProposer;
import setwright.app.server.PageServer;
import setwright.app.server.PageWork;
import setwright.app.server.PortTaken;
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
    /** Of those that nobody is known to use (IANA's register of ports, value from memory). */
    private static final String USUAL_PORT = "8727";

    private final DeskOpener desk;
    private final ChangeProposer proposer;
    private final ChangePredictor predictor;

    @Spec
    private CommandSpec spec;

    @Mixin
    private LogbookOption logbook;

    @Option(
            names = "--port",
            paramLabel = "NUMBER",
            defaultValue = USUAL_PORT,
            description = "Where it listens, " + USUAL_PORT + " unless given; 0 for any that is free.")
    private int port;

    @Option(names = "--no-browser", description = "Does not open a browser; tells the address only.")
    private boolean noBrowser;

    /** Makes the command with what does its work. */
    public ServeCommand(DeskOpener desk, ChangeProposer proposer, ChangePredictor predictor) {
        this.desk = desk;
        this.proposer = proposer;
        this.predictor = predictor;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > 65535) {
            throw new BadOption("--port " + port + ": a port is a number from 0 to 65535.");
        }
        Logbook open = logbook.place().begin();
        PageWork work = new PageWork(open, desk.open(open), proposer, predictor, PageWork.USUAL_UPLOAD);
        try (PageServer server = start(work)) {
            PrintWriter out = spec.commandLine().getOut();
            out.println(server.address());
            out.flush();
            PrintWriter messages = spec.commandLine().getErr();
            messages.println("The page of " + open.words() + " is at " + server.address() + "; Ctrl+C stops it.");
            messages.flush();
            if (!noBrowser) {
                openBrowser(server.address());
            }
            Runtime.getRuntime().addShutdownHook(new Thread(server::close, "page stops"));
            new CountDownLatch(1).await(); // until the process is stopped
        }
        return ExitCode.DONE;
    }

    private PageServer start(PageWork work) {
        try {
            return PageServer.start(work, port);
        } catch (PortTaken e) {
            throw new BadOption("--port: " + e.getMessage() + " Give another, or 0 for any that is free.");
        }
    }

    /** Where no browser can be opened the address is there to be typed. */
    private static void openBrowser(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> words = system.contains("win")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                : List.of(system.contains("mac") ? "open" : "xdg-open", address);
        try {
            new ProcessBuilder(words)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // no such program here: the address was told
        }
    }
}
