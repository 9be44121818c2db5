package setwright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import setwright.app.failure.Trouble;
import setwright.app.watch.FolderWatch;

/** Takes in what a logger puts into a folder, until the process is stopped. */
final class FolderLoop {
    private static final long PAUSE_MS = 500;

    @Option(
            names = "--watch",
            paramLabel = "FOLDER",
            description =
                    "Goes on until Ctrl+C, and reads in and judges what comes into this folder as soon as it is complete.")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--until", paramLabel = "N", description = "With --watch: ends after so many recordings.")
    private Optional<Integer> until = Optional.empty();

    /** What is done with a file. */
    @FunctionalInterface
    interface Taking {
        /** Takes it in. */
        void take(Path file) throws IOException;
    }

    /** Tells whether a folder is to be watched. */
    boolean wanted() {
        if (folder.isEmpty() && until.isPresent()) {
            throw new BadOption("--until counts what comes into the folder of --watch: give that, too.");
        }
        until.filter(count -> count < 1).ifPresent(count -> {
            throw new BadOption("--until " + count + ": give 1 or more.");
        });
        return folder.isPresent();
    }

    /**
     * Begins to watch, and says so.
     *
     * @throws IOException when there is no such folder
     */
    static FolderWatch begin(CommandSpec spec, Path folder) throws IOException {
        if (!Files.isDirectory(InputFiles.existing(folder))) {
            throw new BadOption("--watch " + folder + ": that is no folder.");
        }
        FolderWatch watch = new FolderWatch(folder, FolderWatch.USUAL_REST);
        String before = switch (watch.before()) {
            case 0 -> ".";
            case 1 -> "; the file that is in it is left alone: add it by name.";
            default -> "; the " + watch.before() + " files that are in it are left alone: add them by name.";
        };
        tell(spec, "watching " + folder + before);
        return watch;
    }

    /** Follows the folder; a file that cannot be used is told, and the next is waited for. */
    void follow(CommandSpec spec, Taking taking) throws IOException, InterruptedException {
        FolderWatch watch = begin(spec, folder.orElseThrow());
        int taken = 0;
        while (until.isEmpty() || taken < until.get()) {
            for (Path file : watch.complete(System.nanoTime())) {
                try {
                    taking.take(file);
                    taken++;
                } catch (IOException | RuntimeException e) {
                    Trouble trouble = Trouble.of(e);
                    if (trouble.kind() == Trouble.Kind.FAULT) {
                        throw e;
                    }
                    tell(spec, trouble.message());
                }
            }
            Thread.sleep(PAUSE_MS);
        }
    }

    private static void tell(CommandSpec spec, String words) {
        PrintWriter messages = spec.commandLine().getErr();
        messages.println("setwright: " + words);
        messages.flush();
    }
}
