package setwright.app.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import setwright.app.diagnose.Progress;
import setwright.app.logbook.AddRequest;
import setwright.app.logbook.Adding;
import setwright.app.logbook.LogbookTrials;
import setwright.app.logbook.OpenTrial;
import setwright.app.logbook.StintDesk;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.core.car.setup.ItemRange;
import setwright.core.proposal.Candidate;
import setwright.logbook.Logbook;

/** Enters the stints of a told story into a logbook, as a day would have left them: the trial is open and can be judged. */
public final class DemoLogbook {
    /** How many steps are told to the progress, at most. */
    public static final int STEPS = 5;

    private static final String DRIVER = "the demo's driver";

    private final Logbook logbook;
    private final StintDesk desk;
    private final LogbookTrials trials;
    private final Path folder;

    /**
     * Makes one.
     *
     * @param folder  that the story left recordings and car sheets in
     */
    public DemoLogbook(Logbook logbook, StintDesk desk, LogbookTrials trials, Path folder) {
        this.logbook = logbook;
        this.desk = desk;
        this.trials = trials;
        this.folder = folder;
    }

    /**
     * Enters them.
     *
     * @throws IOException when a recording cannot be read
     */
    public void enter(DemoStory story, Progress progress) throws IOException {
        add(story.loose(), story, progress);
        long coached = add(story.coached(), story, progress);
        Optional<Long> technique = Optional.empty();
        if (story.technique().isPresent()) {
            technique = Optional.of(add(story.technique().get().stint(), story, progress));
        }
        if (story.changed().isEmpty() || story.again().isEmpty()) {
            return;
        }
        KeptLaps first = desk.laps(Optional.of(coached));
        trials.plan(first, story.coached().answer(), words(story.chosen().orElseThrow()), Optional.empty());
        technique.ifPresent(stint ->
                new OpenTrial(logbook, Optional.empty()).leaveOut(List.of(stint), "driven with another technique"));
        add(story.changed().get(), story, progress);
        add(story.again().get(), story, progress);
    }

    private static List<String> words(Candidate chosen) {
        return chosen.prediction().changes().stream()
                .map(change -> change.item() + "=" + ItemRange.plain(change.to()))
                .toList();
    }

    private long add(DemoStint stint, DemoStory story, Progress progress) throws IOException {
        progress.step("entering the stint \"" + stint.name() + "\"");
        return new Adding(logbook)
                .add(
                        AddRequest.of(
                                folder.resolve(stint.name() + ".csv"),
                                folder.resolve(stint.name() + "-car.yaml"),
                                story.car(),
                                DRIVER,
                                story.circuit()),
                        Progress.silent())
                .get(0)
                .stint()
                .number();
    }
}
