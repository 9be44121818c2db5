package setwright.app.command;

import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
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

    @Mixin
    private RecordingParameter recording;

    @Mixin
    private CarOption car;

    @Override
    public Integer call() throws Exception {
        Path file = recording.path();
        if (!Files.exists(file)) {
            throw new NoSuchFileException(file.toString());
        }
        String yaml = ChannelMapFile.write(
                MapProposer.propose(CsvReader.read(file), car.path().map(CarSheetReader::read)));
        spec.commandLine().getOut().print(yaml);
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }
}
