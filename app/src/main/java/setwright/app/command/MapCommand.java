package setwright.app.command;

import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.intake.car.CarSheetReader;
import setwright.intake.csv.CsvReader;
import setwright.intake.map.ChannelMapFile;
import setwright.intake.map.MapProposer;

/** Proposes which column of a file is what. */
@Command(
        name = "map",
        description =
                "Prints the proposed channel map of a recording as YAML, each entry with its evidence. Keep it in a file,"
                        + " correct it, and give it to diagnose with --map.",
        mixinStandardHelpOptions = true)
public final class MapCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "Recorded laps: a table with a header, CSV or CSV packed with gzip.")
    private Path recording;

    @Option(
            names = "--car",
            paramLabel = "SHEET",
            description = "Car sheet (YAML); its wheelbase and steering ratio sharpen the proposal.")
    private Optional<Path> car = Optional.empty();

    @Override
    public Integer call() throws Exception {
        if (!Files.exists(recording)) {
            throw new NoSuchFileException(recording.toString());
        }
        String yaml =
                ChannelMapFile.write(MapProposer.propose(CsvReader.read(recording), car.map(CarSheetReader::read)));
        spec.commandLine().getOut().print(yaml);
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }
}
