package setwright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import setwright.app.server.PageServer;
import setwright.app.server.PageWork;
import setwright.app.server.PortTaken;

/** Runs the local page from a command, until the process is stopped. */
final class PageRun {
    /** One that nobody is known to use (IANA's register of ports, value from memory). */
    private static final String USUAL_PORT = "8727";

    @Option(
            names = "--port",
            paramLabel = "NUMBER",
            defaultValue = USUAL_PORT,
            description = "Where the page listens, " + USUAL_PORT + " unless given; 0 for any that is free.")
    private int port;

    @Option(names = "--no-browser", description = "Does not open a browser; tells the address only.")
    private boolean noBrowser;

    /** Refuses what is no port. */
    void check() {
        if (port < 0 || port > 65535) {
            throw new BadOption("--port " + port + ": a port is a number from 0 to 65535.");
        }
    }

    /**
     * Serves the page; comes back only when the process is being stopped.
     *
     * @param afterwards  done before the process ends
     */
    void serve(CommandSpec spec, PageWork work, Runnable afterwards) throws InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        try (PageServer server = start(work)) {
            Runtime.getRuntime()
                    .addShutdownHook(new Thread(
                            () -> {
                                server.close();
                                afterwards.run();
                                stopped.countDown();
                            },
                            "page stops"));
            PrintWriter out = spec.commandLine().getOut();
            out.println(server.address());
            out.flush();
            PrintWriter messages = spec.commandLine().getErr();
            messages.println(
                    "The page of " + work.logbook().words() + " is at " + server.address() + "; Ctrl+C stops it.");
            messages.flush();
            if (!noBrowser) {
                openBrowser(server.address());
            }
            stopped.await();
        }
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
