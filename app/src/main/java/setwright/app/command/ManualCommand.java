package setwright.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.files.WholeFile;
import setwright.app.manual.ManualPage;

/** Writes the manual's pages. */
@Command(
        name = "manual",
        description = "Writes a page of the manual for each command, as man reads it.",
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright manual ~/.local/share/man/man1", "  setwright manual pages"})
public final class ManualCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER", description = "Where to write the pages; made if it is not there.")
    private Path folder;

    @Override
    public Integer call() throws Exception {
        Files.createDirectories(folder);
        List<ManualPage> pages = ManualPage.of(spec.root().commandLine());
        for (ManualPage page : pages) {
            WholeFile.write(folder.resolve(page.name() + ".1"), page.text());
        }
        Output.print(spec, pages.size() + " pages are in " + folder + ".\n");
        return ExitCode.DONE;
    }
}
