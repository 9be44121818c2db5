package setwright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.Diagnoser;
import setwright.app.export.ExportTables;
import setwright.app.export.Format;
import setwright.app.export.Material;
import setwright.app.export.Material.Laps;
import setwright.app.export.Table;
import setwright.app.export.Table.Source;
import setwright.app.export.TableWriter;
import setwright.app.files.WholeFile;
import setwright.app.logbook.Exporting;
import setwright.app.logbook.StoryDesk;
import setwright.app.propose.ChangeProposer;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.Report;
import setwright.app.report.change.PredictionView;
import setwright.app.report.change.ProposalReport;
import setwright.app.report.drawings.Drawing;
import setwright.app.report.drawings.Drawings;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** Takes tables out, or the whole logbook. */
@Command(
        name = "export",
        description = {
            "Writes a table for other programs (CSV, Parquet, JSON), the report's drawings (SVG), or the whole logbook.",
            "",
            "TABLE is laps, passes, phases, findings, faults, proposals, proposal-phases, proposal-corners, trials,"
                    + " trial-phases, channels or circuit; docs/export.md lists their columns. trials are those of the whole logbook; all"
                    + " others are of the laps named, or of the logbook's last stint.",
            "",
            "export plots [FILE|STINT] --to FOLDER writes every drawing of the report, and of the change that is proposed, as an"
                    + " SVG file of its own."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright export passes 7 --to passes.csv",
            "  setwright export plots laps.csv --car car.yaml --to drawings",
            "  setwright export --out everything"
        })
public final class ExportCommand implements Callable<Integer> {
    private static final String PLOTS = "plots";

    private final Diagnoser diagnoser;
    private final DeskOpener desk;
    private final ChangeProposer proposer;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "TABLE FILE|STINT",
            description = "What is wanted, then of which laps: recordings, or numbers of stints in the logbook.")
    private List<String> words = new ArrayList<>();

    @Option(
            names = "--as",
            paramLabel = "FORM",
            description = "csv (the default), parquet or json. Without it the ending of --to tells.")
    private Optional<Format> form = Optional.empty();

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "Where to; without it to standard output. Parquet needs it; for plots it is a folder.")
    private Optional<Path> to = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description =
                    "Writes the whole logbook into a new or empty folder: a JSON file for each of its tables, and the"
                            + " recordings as Parquet.")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description =
                    "Of CSV and drawings: metric (km/h, m, deg; the default) or imperial (mph, ft, deg). Parquet and JSON are SI.")
    private UnitSystem units = UnitSystem.METRIC;

    @Mixin
    private LapChoice choice;

    /** Makes the command with what does its work. */
    public ExportCommand(Diagnoser diagnoser, DeskOpener desk, ChangeProposer proposer) {
        this.diagnoser = diagnoser;
        this.desk = desk;
        this.proposer = proposer;
    }

    @Override
    public Integer call() throws Exception {
        if (out.isPresent()) {
            if (!words.isEmpty() || form.isPresent() || to.isPresent()) {
                throw new BadOption("--out writes the whole logbook: leave out the table, --as and --to.");
            }
            long rows = new Exporting(choice.openLogbook()).export(out.get());
            Output.print(spec, rows + " rows of the logbook and its recordings are in " + out.get() + ".\n");
            return ExitCode.DONE;
        }
        List<String> named = words.subList(Math.min(1, words.size()), words.size());
        if (words.stream().findFirst().filter(PLOTS::equals).isPresent()) {
            return plots(named);
        }
        Table<?> table = table();
        Format format = form.or(() -> to.flatMap(Format::of)).orElse(Format.CSV);
        if (format == Format.PARQUET && to.isEmpty()) {
            throw new BadOption("Parquet is no text: say with --to FILE where it is to go.");
        }
        if (table.source() == Source.RECORDING && named.size() > 1) {
            throw new BadOption(
                    "the table " + table.name() + " is of one recording or stint, got " + named.size() + ".");
        }
        List<Optional<Path>> inputs = new ArrayList<>();
        named.forEach(text -> inputs.addAll(choice.inputs(Optional.of(text))));
        OutputFiles.check(inputs, Map.of("--to", to));
        TableWriter writer = new TableWriter(table, material(table, named), format, units);
        if (to.isEmpty()) {
            writer.write(spec.commandLine().getOut());
        } else {
            told(writer.write(to.get()) + " rows of " + table.name() + ": " + to.get());
        }
        return ExitCode.DONE;
    }

    private Table<?> table() {
        if (words.isEmpty()) {
            throw new BadOption("say what is wanted: a table (" + String.join(", ", ExportTables.names())
                    + "), plots, or the whole logbook with --out FOLDER.");
        }
        return ExportTables.named(words.get(0))
                .orElseThrow(() -> new BadOption("there is no table '" + words.get(0) + "'. There are "
                        + String.join(", ", ExportTables.names()) + "; and plots."));
    }

    private Material material(Table<?> table, List<String> named) throws IOException {
        if (table.source() != Source.LOGBOOK) {
            return Material.of(new ExportedLaps(spec, choice, diagnoser, desk, proposer)
                    .judged(named, table.source().proposes()));
        }
        if (!named.isEmpty()) {
            throw new BadOption(
                    "the table " + table.name() + " is of the whole logbook: leave out '" + named.get(0) + "'.");
        }
        return Material.tried(new StoryDesk(choice.openLogbook()).tried(Optional.empty()));
    }

    /** The drawings of the report into a folder, which is made when it is missing. */
    private int plots(List<String> named) throws IOException {
        Path folder = to.orElseThrow(() -> new BadOption("say with --to FOLDER where the drawings are to go."));
        if (form.isPresent()) {
            throw new BadOption("drawings are SVG: leave out --as.");
        }
        if (named.size() > 1) {
            throw new BadOption("drawings are of one recording or stint, got " + named.size() + ".");
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new IOException(folder + " is a file. Name a folder for the drawings");
        }
        boolean car = choice.car().path().isPresent()
                || LapChoice.namesStint(named.stream().findFirst());
        Laps laps = new ExportedLaps(spec, choice, diagnoser, desk, proposer)
                .judged(named, car)
                .get(0);
        Figures figures = Figures.forPage(units);
        Optional<PredictionView> change = laps.proposal()
                .filter(proposal -> proposal.chosen().isPresent())
                .flatMap(proposal ->
                        Optional.ofNullable(ProposalReport.view(new ProposalAnswer(laps.answer(), proposal), figures)
                                .chosen()));
        List<Drawing> drawings = Drawings.of(Report.view(laps.answer(), figures), change);
        Files.createDirectories(folder);
        for (Drawing drawing : drawings) {
            WholeFile.write(folder.resolve(drawing.name() + ".svg"), drawing.text());
        }
        told(drawings.size() + " drawings: " + folder);
        return ExitCode.DONE;
    }

    private void told(String words) {
        PrintWriter messages = spec.commandLine().getErr();
        messages.println("Export: " + words);
        messages.flush();
    }
}
