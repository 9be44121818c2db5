package setwright.app.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What helps to read a recording. */
final class ReadingOptions {
    @Option(
            names = "--map",
            paramLabel = "MAP",
            description = "Channel map (YAML): which column is what. Without it one is proposed from the data.")
    private Optional<Path> map = Optional.empty();

    @Option(
            names = "--circuit",
            paramLabel = "FILE",
            description = "Circuit kept with diagnose --save-circuit, so that corner numbers stay the same.")
    private Optional<Path> circuit = Optional.empty();

    Optional<Path> map() {
        return map;
    }

    Optional<Path> circuit() {
        return circuit;
    }
}
