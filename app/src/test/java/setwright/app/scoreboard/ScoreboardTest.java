package setwright.app.scoreboard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Holds every change to the answers of the last accepted run. */
final class ScoreboardTest {

    @Test
    void noTotalIsWorseThanInTheLastAcceptedRun() {
        Score score = Score.of(PracticeCase.in(Home.cases()), name -> {});

        assertThat(Floor.read(Home.floor()).faults(score.totals()))
                .as(
                        "Totals of the practice cases became worse. See which answers changed with ./scoreboard. If the change is"
                                + " right nevertheless, accept it with ./scoreboard --record and say why in the commit.\n%s",
                        Tables.summary(score).text())
                .isEmpty();
    }
}
