package setwright.fleet.circuits;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import setwright.app.circuit.CircuitFile;
import setwright.core.car.CarSheet;
import setwright.core.circuit.StintBuilder;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.TemporaryFolder;
import setwright.fleet.tree.Recorded;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;
import setwright.intake.gather.RecordingFiles;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.ChannelMapFile;

/** Finds the circuit that recordings show. */
public final class CircuitSearch {
    private CircuitSearch() {}

    /**
     * Returns the circuit of the first recording that shows one, as the text of a circuit file.
     *
     * @param tree         of the recordings
     * @param recordings   made at one circuit, in order
     * @param interrupted  whether to stop
     * @return empty when none shows one; judging will say why
     */
    public static Optional<String> first(Depot tree, List<Recorded> recordings, BooleanSupplier interrupted)
            throws InterruptedException {
        for (Recorded recorded : recordings) {
            try {
                return Optional.of(of(tree, recorded));
            } catch (IOException | RuntimeException | OutOfMemoryError | StackOverflowError e) {
                if (interrupted.getAsBoolean()) {
                    throw new InterruptedException("stopped");
                }
            }
        }
        return Optional.empty();
    }

    private static String of(Depot tree, Recorded recorded) throws IOException {
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-circuit")) {
            Optional<CarSheet> sheet = Optional.empty();
            if (!recorded.sheet().isEmpty()) {
                sheet = Optional.of(CarSheetReader.read(
                        tree.local(recorded.sheet(), folder.path().resolve("sheet"))));
            }
            Optional<ChannelMap> map = Optional.empty();
            if (!recorded.map().isEmpty()) {
                map = Optional.of(ChannelMapFile.read(
                        tree.local(recorded.map(), folder.path().resolve("map"))));
            }
            return CircuitFile.text(StintBuilder.build(RecordingReader.read(
                                    RecordingFiles.of(tree.local(recorded.path(), folder.path())), map, sheet)
                            .recording())
                    .circuit());
        }
    }
}
