package setwright.app.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.json.MapJsonWriter;
import setwright.intake.car.CarSheetReader;
import setwright.intake.gather.Gatherer;
import setwright.intake.map.ChannelMapFile;
import setwright.intake.map.MapProposer;
import setwright.intake.map.Proposal;

/** Proposes which column of a file is what. */
@Command(
        name = "map",
        description =
                "Prints the proposed channel map of a recording as YAML, each entry with its evidence. Keep it in a file,"
                        + " correct it, and give it to diagnose with --map.",
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright map laps.csv > map.yaml", "  setwright diagnose laps.csv --map map.yaml"})
public final class MapCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private RecordingParameter recording;

    @Mixin
    private CarOption car;

    @Option(names = "--json", description = "Prints JSON (docs/map.schema.json) instead of YAML.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        Proposal proposal =
                MapProposer.propose(Gatherer.read(recording.files()), car.path().map(CarSheetReader::read));
        Output.print(spec, json ? MapJsonWriter.write(proposal) : ChannelMapFile.write(proposal));
        return ExitCode.DONE;
    }
}
