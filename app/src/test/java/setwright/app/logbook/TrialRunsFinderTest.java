package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.car.setup.SetupDifference;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.VerdictRow;

/** Which stints count in a trial, and how much of its error a look may spend. */
final class TrialRunsFinderTest {
    private static final Optional<String> CAR = Optional.of("Heron");
    private static final List<SetupDifference> BAR = List.of(new SetupDifference("front_bar", "9", "4", "position"));

    @TempDir
    private Path folder;

    private Fixture fixture;

    @BeforeEach
    void open() throws IOException {
        fixture = new Fixture(folder);
    }

    private void set(String... words) {
        fixture.setups.change(CAR, List.of(words), "", "");
    }

    private long trial(long first) {
        return fixture.logbook.with(tables -> {
            long id = tables.trials()
                    .add(new TrialRow(
                            0, 1, 1, 1, first, 1, "front_bar 9 to 4", "", "ABA", 6, TrialRow.OPEN, Instant.now()));
            tables.trials().add(TriedChange.rows(id, BAR));
            return id;
        });
    }

    private TrialRunsFinder.Runs runs(long trial) {
        return fixture.logbook.look(tables ->
                TrialRunsFinder.find(tables, tables.trials().find(trial).orElseThrow()));
    }

    private void judged(TrialRunsFinder.Runs runs) {
        fixture.logbook.with(tables -> tables.verdicts()
                .add(new VerdictRow(0, runs.trial().id(), runs.key(), runs.seen(), "undecided", "x", Instant.now())));
    }

    @Test
    void onlyRunsThatTellTheChangeCountAndTheOthersSayWhy() {
        set("rear_bar=5");
        set("rear_bar=4");
        long first = fixture.stint("Ines", 7);
        long trial = trial(first);
        set("front_bar=4");
        long changed = fixture.stint("Ines", 7);
        fixture.stint("Bo", 7);
        fixture.stint("Ines", 1);
        fixture.stint("Ines", 7, 2);
        set("front_bar=9");
        long again = fixture.stint("Ines", 7);
        long flagged = fixture.stint("Ines", 7);
        new OpenTrial(fixture.logbook, CAR).leaveOut(List.of(flagged), "red flag");

        TrialRunsFinder.Runs runs = runs(trial);

        assertThat(runs.key()).isEqualTo(first + "," + changed + "," + again);
        assertThat(runs.changed()).extracting(KeptStint::number).containsExactly(changed);
        assertThat(runs.changes()).isEqualTo(BAR);
        assertThat(String.join(" ", runs.aside()))
                .contains("driven by Bo", "fewer than 2 of its laps", "rear_bar 4 to 5", "left out, red flag");
        assertThat(runs.aside()).hasSize(4);
    }

    @Test
    void errorIsSpentOnceHoweverOftenOneLooks() {
        long trial = trial(fixture.stint("Ines", 7));
        set("front_bar=4");
        fixture.stint("Ines", 7);
        TrialRunsFinder.Runs half = runs(trial);
        assertThat(half.seenBefore()).isZero();
        assertThat(half.seen()).isCloseTo(0.5, within(1e-12));
        judged(half);
        assertThat(runs(trial).seenBefore())
                .as("the same runs again are the same look")
                .isZero();

        set("front_bar=9");
        fixture.stint("Ines", 7);
        TrialRunsFinder.Runs whole = runs(trial);
        assertThat(whole.seenBefore()).isCloseTo(0.5, within(1e-12));
        assertThat(whole.seen()).isEqualTo(1.0);
        judged(whole);

        fixture.stint("Ines", 7);
        TrialRunsFinder.Runs beyond = runs(trial);
        assertThat(beyond.seenBefore()).as("beyond the plan nothing is left").isEqualTo(1.0);
        assertThat(beyond.seen()).isEqualTo(1.0);
    }

    @Test
    void runsThatWereJudgedDoNotCountAgainInATrialOfTheSameChange() {
        long first = fixture.stint("Ines", 7);
        long trial = trial(first);
        set("front_bar=4");
        long second = fixture.stint("Ines", 7);
        judged(runs(trial));
        fixture.logbook.with(tables -> {
            tables.trials().end(trial);
            return trial;
        });
        set("front_bar=9");
        long third = fixture.stint("Ines", 7);

        long again = trial(third);
        assertThat(runs(again).key()).isEqualTo(String.valueOf(third));
        fixture.logbook.with(tables -> {
            tables.trials().end(again);
            return again;
        });
        long older = trial(first);
        assertThat(runs(older).key()).isEqualTo(String.valueOf(third));
        assertThat(runs(older).aside())
                .anyMatch(words -> words.contains("Stint " + second + " does not count: judged in trial 1"));
    }

    @Test
    void theCarIsLockedWhileATrialIsUnderWay() {
        set("rear_bar=5");
        set("rear_bar=4");
        trial(fixture.stint("Ines", 7));

        assertThatThrownBy(() -> set("rear_bar=6")).isInstanceOf(LogbookProblem.class);
        assertThatThrownBy(() -> fixture.setups.undo(CAR)).isInstanceOf(LogbookProblem.class);
        assertThatThrownBy(() -> fixture.setups.use(CAR, 2)).isInstanceOf(LogbookProblem.class);
        set("front_bar=4");
        fixture.setups.undo(CAR);
    }
}
