package setwright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import setwright.app.files.WholeFile;
import setwright.app.units.Figures;

/** How an answer is wanted. */
final class ShowingOptions {
    @Option(names = "--json", description = "Prints JSON instead of text; docs/ describes it.")
    private boolean json;

    @Option(names = "--html", paramLabel = "REPORT", description = "Writes the report with all its evidence.")
    private Optional<Path> html = Optional.empty();

    @Mixin
    private UnitsOption units;

    boolean json() {
        return json;
    }

    Optional<Path> html() {
        return html;
    }

    UnitsOption units() {
        return units;
    }

    /**
     * Writes the report where one is wanted, then prints the answer.
     *
     * @throws IOException when the report cannot be written; nothing has been printed then
     */
    void show(CommandSpec spec, Supplier<String> page, Supplier<String> data, Supplier<String> text)
            throws IOException {
        if (html.isPresent()) {
            WholeFile.write(html.get(), page.get());
        }
        Output.print(spec, json ? data.get() : text.get());
        html.ifPresent(report -> {
            spec.commandLine().getErr().println("Report: " + report);
            spec.commandLine().getErr().flush();
        });
    }

    Figures forPage() {
        return Figures.forPage(units.system());
    }

    Figures forTerminal() {
        return Figures.forTerminal(units.system());
    }
}
