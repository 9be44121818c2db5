package setwright.fleet.work;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.failure.Trouble;
import setwright.core.judgement.Verdict;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.TemporaryFolder;
import setwright.fleet.ledger.Status;
import setwright.fleet.tree.Recorded;

/**
 * Judges one recording as the command line does; whatever is wrong with it becomes words.
 *
 * @param diagnoser  that reads and judges
 * @param tree       of the recordings
 * @param assumeCar  whether a recording without a car sheet is judged
 */
record RecordingJudge(Diagnoser diagnoser, Depot tree, boolean assumeCar) {
    /**
     * Judges.
     *
     * @param circuit  on which, where it is known
     * @param task     that is asked whether a failure is the recording's or that of being stopped
     */
    Outcome judge(Recorded recorded, Optional<Path> circuit, Task task) throws InterruptedException {
        if (recorded.sheet().isEmpty() && !assumeCar) {
            return Outcome.failed(
                    "no car sheet goes with it. Put one beside it as " + stem(recorded)
                            + ".car.yaml, or as car.yaml into its folder or one above; or allow an assumed car with --assume-car.");
        }
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-recording")) {
            return outcome(diagnoser.diagnose(
                    DiagnoseRequest.of(
                            tree.local(recorded.path(), folder.path()),
                            companion(recorded.sheet(), "sheet", folder),
                            companion(recorded.map(), "map", folder),
                            circuit),
                    Progress.silent()));
        } catch (OutOfMemoryError e) {
            stopped(task);
            return Outcome.failed("it needs more memory than the worker has (" + recorded.bytes()
                    + " bytes). Give workers more, or cut the recording.");
        } catch (Exception | StackOverflowError e) {
            stopped(task);
            Trouble trouble = Trouble.of(e);
            return new Outcome(
                    trouble.kind() == Trouble.Kind.NOT_ENOUGH_EVIDENCE ? Status.NOT_ENOUGH_EVIDENCE : Status.FAILED,
                    trouble.message(),
                    Optional.empty());
        }
    }

    private static String stem(Recorded recorded) {
        String name = recorded.path().substring(recorded.path().lastIndexOf('/') + 1);
        return name.substring(0, name.indexOf('.', 1));
    }

    /** In a folder of its own, as two companions may have the same name. */
    private Optional<Path> companion(String name, String kind, TemporaryFolder folder) throws IOException {
        return name.isEmpty()
                ? Optional.empty()
                : Optional.of(tree.local(name, folder.path().resolve(kind)));
    }

    private static Outcome outcome(Answer answer) {
        Verdict verdict = answer.diagnosis().verdict();
        return new Outcome(
                verdict == Verdict.NOT_ENOUGH_EVIDENCE ? Status.NOT_ENOUGH_EVIDENCE : Status.JUDGED,
                answer.diagnosis().reason(),
                Optional.of(answer));
    }

    /** Work that is stopped fails in all sorts of ways, none of which is the recording's. */
    private static void stopped(Task task) throws InterruptedException {
        if (task.interrupted().getAsBoolean() || Thread.interrupted()) {
            throw new InterruptedException("stopped");
        }
    }
}
