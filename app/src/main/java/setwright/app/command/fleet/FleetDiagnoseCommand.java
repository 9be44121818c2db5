package setwright.app.command.fleet;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.command.BadOption;
import setwright.app.command.Examples;
import setwright.app.command.ExitCode;
import setwright.app.command.Output;
import setwright.app.fleet.FleetCount;
import setwright.app.fleet.FleetEngine;
import setwright.app.fleet.FleetRequest;
import setwright.app.fleet.FleetRequest.Again;
import setwright.app.json.FleetJsonWriter;

/** Judges a tree of recordings. */
@Command(
        name = "diagnose",
        description = {
            "Judges every recording of a tree as diagnose does, and writes laps, corner passes, phases, findings, faults and setups"
                    + " as partitioned Parquet, with a list of all recordings and what came of each.",
            "",
            "What is judged already is left alone, unless its file, car sheet, map or circuit has changed. A recording that cannot"
                    + " be judged is listed with the reason and stops nothing."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright fleet diagnose --in season --out judged",
            "  setwright fleet diagnose --in season --out judged --workers 2",
            "  setwright fleet diagnose --in season --out judged --again failed"
        })
final class FleetDiagnoseCommand implements Callable<Integer> {
    private static final String LOCAL = "local[*]";
    private static final int MOST_WORKERS = 256;

    private final Supplier<Optional<FleetEngine>> engine;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--in",
            paramLabel = "TREE",
            required = true,
            description = "The recordings: a folder with folders, or an address such as hdfs://host/season.")
    private String in;

    @Option(
            names = "--out",
            paramLabel = "TREE",
            required = true,
            description =
                    "Where the tables go; made when it is not there. A second run goes on where the first one ended.")
    private String out;

    @Option(
            names = "--master",
            paramLabel = "URL",
            description =
                    "The cluster, as Spark names it. Default: local[*], every core of this machine in one process.")
    private Optional<String> master = Optional.empty();

    @Option(
            names = "--workers",
            paramLabel = "N",
            description = "So many processes of their own on this machine, each with one core, instead of --master.")
    private Optional<Integer> workers = Optional.empty();

    @Option(names = "--limit", paramLabel = "N", description = "Judges no more than so many recordings in this run.")
    private Optional<Integer> limit = Optional.empty();

    @Option(
            names = "--again",
            paramLabel = "WHICH",
            description = "Judges recordings again whose files have not changed: failed or all. Default: none.")
    private Again again = Again.NONE;

    @Option(
            names = "--assume-car",
            description =
                    "Judges recordings without a car sheet, too, on an assumed car. Without it they are listed as failed.")
    private boolean assumeCar;

    @Option(names = "--json", description = "Prints the counts as JSON (docs/fleet.schema.json).")
    private boolean json;

    FleetDiagnoseCommand(Supplier<Optional<FleetEngine>> engine) {
        this.engine = engine;
    }

    @Override
    public Integer call() throws Exception {
        FleetRequest request = request();
        PrintWriter messages = spec.commandLine().getErr();
        FleetCount count = FleetCommand.found(engine).diagnose(request, words -> {
            messages.println("setwright: " + words);
            messages.flush();
        });
        count.failures().forEach(failure -> messages.println(failure.path() + ": " + failure.reason()));
        int more = count.failed() - count.failures().size();
        if (more > 0) {
            messages.println("and " + more + " more, listed in " + out + "/recordings");
        }
        messages.flush();
        Output.print(spec, json ? FleetJsonWriter.write(count) : text(count));
        if (count.judged() > 0) {
            return ExitCode.DONE;
        }
        return count.notEnough() > 0 ? ExitCode.NOT_ENOUGH_EVIDENCE : ExitCode.BAD_INPUT;
    }

    private FleetRequest request() {
        if (workers.isPresent() && master.isPresent()) {
            throw new BadOption(
                    "--workers starts processes on this machine, --master names a cluster: give one of them.");
        }
        workers.filter(count -> count < 1 || count > MOST_WORKERS).ifPresent(count -> {
            throw new BadOption("--workers is 1 to " + MOST_WORKERS + ", got " + count + ".");
        });
        limit.filter(count -> count < 1).ifPresent(count -> {
            throw new BadOption("--limit is 1 or more, got " + count + ".");
        });
        return new FleetRequest(
                in, out, master.orElse(LOCAL), workers.orElse(0), limit.orElse(Integer.MAX_VALUE), again, assumeCar);
    }

    private String text(FleetCount count) {
        return String.format(
                Locale.ROOT,
                "%d recordings: %d judged, %d without enough evidence, %d failed%s%s. %d of them were done before; this run took"
                        + " %.0f s. The tables are in %s.%n",
                count.recordings(),
                count.judged(),
                count.notEnough(),
                count.failed(),
                count.failed() > 0 ? " (each with its reason in " + out + "/recordings)" : "",
                count.left() > 0 ? ", " + count.left() + " not looked at yet" : "",
                count.before(),
                count.seconds(),
                out);
    }
}
