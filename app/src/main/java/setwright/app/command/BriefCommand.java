package setwright.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
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
import setwright.app.diagnose.LapSource;
import setwright.app.diagnose.Progress;
import setwright.app.files.WholeFile;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.pdf.PdfFile;
import setwright.app.propose.ChangeProposer;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.brief.BriefReport;
import setwright.app.report.brief.BriefRequest;
import setwright.app.units.Figures;

/** Writes the driver's sheet and the engineer's. */
@Command(
        name = "brief",
        description = {
            "Writes one sheet for the driver, in plain words, and one for the engineer: HTML and PDF.",
            "",
            "The driver's sheet says where to work and how, at most three places; the engineer's what repeats, what to change and what would"
                    + " refute it."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright brief", "  setwright brief laps.csv --car car.yaml --driver Ines --out ines"})
public final class BriefCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final DeskOpener desk;
    private final ChangeProposer proposer;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "FILE|STINT", description = LapChoice.WORDS)
    private Optional<String> named = Optional.empty();

    @Mixin
    private LapChoice choice;

    @Option(names = "--driver", paramLabel = "NAME", description = "Who drove, for a file; a stint knows.")
    private Optional<String> driver = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "NAME",
            defaultValue = "setwright-brief",
            description = "Name of both files, without .html and .pdf; setwright-brief unless given.")
    private Path out;

    @Mixin
    private UnitsOption units;

    /** Makes the command with what does its work. */
    public BriefCommand(Diagnoser diagnoser, DeskOpener desk, ChangeProposer proposer) {
        this.diagnoser = diagnoser;
        this.desk = desk;
        this.proposer = proposer;
    }

    @Override
    public Integer call() throws Exception {
        Path html = out.resolveSibling(out.getFileName() + ".html");
        Path pdf = out.resolveSibling(out.getFileName() + ".pdf");
        OutputFiles.check(
                choice.inputs(named), Map.of("--out (page)", Optional.of(html), "--out (PDF)", Optional.of(pdf)));
        LapSource laps = choice.laps(spec, named, diagnoser, desk, Optional.empty());
        if (driver.isPresent() && laps instanceof KeptLaps) {
            throw new BadOption("a stint of the logbook has its driver already: leave out --driver.");
        }
        ProposalAnswer proposed;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS + 2)) {
            proposed = ProposalAnswer.of(laps, proposer, progress);
            progress.step("writing the sheets");
            String page = BriefReport.html(request(laps, proposed), Figures.forPage(units.system()));
            WholeFile.write(html, page);
            WholeFile.write(pdf, PdfFile.of(page));
        }
        PrintWriter messages = spec.commandLine().getErr();
        messages.println("Brief: " + html + " and " + pdf);
        messages.flush();
        return Output.code(proposed.answer());
    }

    private BriefRequest request(LapSource laps, ProposalAnswer proposed) {
        if (laps instanceof KeptLaps kept) {
            return BriefRequest.of(kept.stint(), proposed);
        }
        return new BriefRequest(
                laps.name(),
                driver.orElse(""),
                proposed.answer().diagnosis().stint().circuit().name(),
                proposed.answer().car().description(),
                proposed);
    }
}
