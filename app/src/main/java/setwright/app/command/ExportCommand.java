package setwright.app.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.logbook.Exporting;

/** Takes the logbook out. */
@Command(
        name = "export",
        description =
                "Writes the whole logbook in open formats: a JSON file for each table, and the recordings as Parquet.",
        mixinStandardHelpOptions = true)
public final class ExportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "A new or empty folder.")
    private Path out;

    @Mixin
    private LogbookOption logbook;

    @Override
    public Integer call() throws Exception {
        long rows = new Exporting(logbook.place().open()).export(out);
        Output.print(spec, rows + " rows of the logbook and its recordings are in " + out + ".\n");
        return ExitCode.DONE;
    }
}
