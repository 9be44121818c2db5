package setwright.app.scoreboard;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.evidence.Answer;
import setwright.core.judgement.Diagnostician;

/** The answer to a practice case as a user gets it: its first recording with its car sheet. */
public final class PracticeAnswer {
    private PracticeAnswer() {}

    /** Returns the answer to a case with one car sheet. */
    public static Answer of(String name) throws IOException {
        Path folder = Home.cases().resolve(name);
        return new FileDiagnoser(Diagnostician::diagnose)
                .diagnose(
                        DiagnoseRequest.of(
                                folder.resolve("stint1.csv.gz"),
                                Optional.of(folder.resolve("car.yaml")),
                                Optional.empty(),
                                Optional.empty()),
                        step -> {});
    }
}
