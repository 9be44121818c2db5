package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.logbook.Amending.Amendment;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.core.judgement.Diagnostician;
import setwright.logbook.problem.LogbookProblem;

/** Which stint another is held against once people said in which the car was in good order. */
final class GoodOrderTest {
    private static final int ENOUGH = 6;

    @TempDir
    private Path folder;

    private Fixture fixture;

    @BeforeEach
    void open() throws IOException {
        fixture = new Fixture(folder);
    }

    private StintDesk desk() {
        return new StintDesk(fixture.logbook, Diagnostician::diagnose);
    }

    private void good(long stint) {
        new Amending(fixture.logbook).amend(stint, Amendment.order(true));
    }

    private Optional<Long> against(long stint) {
        return desk().laps(Optional.of(stint)).baseline().map(KeptStint::number);
    }

    @Test
    void theLastOneIsTakenAndNeverTheStintItself() {
        long first = fixture.stint("Ines", ENOUGH, 1);
        long second = fixture.stint("Ada", ENOUGH, 1);
        long third = fixture.stint("Ines", ENOUGH, 1);
        assertThat(against(third)).isEmpty();
        good(first);
        assertThat(against(first)).isEmpty();
        assertThat(against(third)).contains(first);
        good(second);
        assertThat(against(first)).contains(second);
        assertThat(against(second)).contains(first);
        assertThat(against(third)).contains(second);
        assertThat(desk().alone(Optional.of(third)).baseline()).isEmpty();
    }

    @Test
    void whatWasDrivenWithAnotherWheelbaseIsPassedOver() throws IOException {
        long other = fixture.stint("Ines", ENOUGH, 1);
        good(other);
        Path longer = Files.writeString(
                folder.resolve("longer.yaml"),
                Fixture.text().replaceFirst("(?m)^wheelbase_m: .*$", "wheelbase_m: 3.9"));
        fixture.setups.enter(longer, Optional.of("Heron"), "", "");
        assertThat(against(fixture.stint("Ines", ENOUGH))).isEmpty();
    }

    @Test
    void aStintWithTooFewLapsIsRefusedAndNothingIsWritten() {
        long few = fixture.stint("Ines", 2, 1);
        long later = fixture.stint("Ines", ENOUGH, 1);
        assertThatThrownBy(() -> good(few))
                .isInstanceOf(LogbookProblem.class)
                .hasMessageContaining("2 laps that can be judged; at least 3");
        assertThat(against(later)).isEmpty();
        assertThat(new StoryDesk(fixture.logbook).about(few)).isEmpty();
    }

    @Test
    void stintsThatAreHeldTogetherHaveOneBaselineOrNone() {
        long good = fixture.stint("Ines", ENOUGH, 1);
        good(good);
        KeptLaps one = desk().laps(Optional.of(fixture.stint("Ada", ENOUGH, 1)));
        KeptLaps other = desk().laps(Optional.of(fixture.stint("Bo", ENOUGH, 1)));
        assertThat(StintDesk.together(List.of(one, other)))
                .allSatisfy(laps -> assertThat(laps.baseline()).isPresent());
        assertThat(StintDesk.together(List.of(one, desk().laps(Optional.of(good)))))
                .allSatisfy(laps -> assertThat(laps.baseline()).isEmpty());
    }
}
