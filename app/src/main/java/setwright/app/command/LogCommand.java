package setwright.app.command;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.json.LogJsonWriter;
import setwright.app.logbook.StoryDesk;
import setwright.app.text.LogText;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.logbook.row.EntryRow;

/** The story of a day. */
@Command(
        name = "log",
        description = {
            "Tells the story of a day in order: stints, findings, changes, trials, verdicts and notes.",
            "",
            "Of the last day that has anything, unless --day, --all or words to search for are given."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright log",
            "  setwright log --stints",
            "  setwright log --note \"rain from lap 6\" --about 12",
            "  setwright log rear bar"
        })
public final class LogCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "WORD",
            description = "Searches the whole logbook for entries that hold all these words, or words that begin so.")
    private List<String> words = List.of();

    @Option(names = "--day", paramLabel = "YYYY-MM-DD", description = "Which day.")
    private Optional<LocalDate> day = Optional.empty();

    @Option(names = "--all", description = "All days.")
    private boolean all;

    @Option(names = "--stints", description = "Lists all stints instead.")
    private boolean stints;

    @Option(names = "--note", paramLabel = "TEXT", description = "Enters a note first.")
    private Optional<String> note = Optional.empty();

    @Option(names = "--about", paramLabel = "STINT", description = "Number of the stint that the note is about.")
    private Optional<Long> about = Optional.empty();

    @Option(names = "--json", description = "Prints JSON (docs/log.schema.json) instead of text.")
    private boolean json;

    @Mixin
    private LogbookOption logbook;

    @Override
    public Integer call() {
        if (about.isPresent() && note.isEmpty()) {
            throw new BadOption("--about names the stint of a note: give --note too.");
        }
        StoryDesk desk = new StoryDesk(logbook.place().open());
        note.ifPresent(text -> desk.note(text, about));
        if (stints) {
            Output.print(
                    spec,
                    json
                            ? LogJsonWriter.stints(desk.stints())
                            : LogText.stints(
                                    desk.stints(), Figures.forTerminal(UnitSystem.METRIC), Output.terminal(spec)));
            return ExitCode.DONE;
        }
        ZoneId zone = ZoneId.systemDefault();
        List<EntryRow> entries =
                words.isEmpty() ? all ? desk.all() : desk.day(day, zone) : desk.search(String.join(" ", words));
        Output.print(spec, json ? LogJsonWriter.write(entries) : LogText.write(entries, zone, Output.terminal(spec)));
        return ExitCode.DONE;
    }
}
