package setwright.app.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.app.example.ExampleFinding;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.SetupItem;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.proposal.Turn;
import setwright.core.technique.Lever;
import setwright.core.technique.TechniqueLever;

/** What is turned and which way, and what the driver may try before it. */
final class TurnWordsTest {
    private static final Figures METRIC = Figures.forTerminal(UnitSystem.METRIC);

    private static Turn turn(String item, String unit, double from, double to) {
        return new Turn(
                new SetupItem(item, from, unit, Math.min(from, to) - 1.0, Math.max(from, to) + 1.0, 0.5),
                to,
                Math.round((to - from) / 0.5));
    }

    @ParameterizedTest
    @CsvSource({
        "front_bar, 5, 3, softer",
        "rear_spring, 100, 110, stiffer",
        "front_rebound, 8, 9, stiffer",
        "rear_ride_height, 60, 58, down",
        "rear_wing, 4, 6, more downforce",
        "front_tyre_pressure, 1.8, 1.9, more",
        "front_camber, -3, -3.5, more negative",
        "rear_toe, 0.1, 0.2, toward toe-in",
        "brake_bias_front, 60, 59, more to the rear",
        "diff_preload, 40, 60, more locking",
        "final_drive, 3.5, 3.6, shorter",
        "ballast_position, 1, 2, rearward",
        "bump_stop_shim, 1, 2, up",
    })
    void theWayFollowsTheKindOfItem(String item, double from, double to, String way) {
        assertThat(TurnWords.brief(turn(item, "", from, to)))
                .startsWith(item + " ")
                .endsWith(" (" + way + ")");
    }

    @Test
    void theUnitStandsWithTheFigureUnlessItOnlyCounts() {
        assertThat(TurnWords.inFull(turn("front_spring", "N/mm", 120.0, 110.0)).replace(Figures.KEPT_TOGETHER, ' '))
                .isEqualTo("front_spring 120 to 110 N/mm (softer)");
        assertThat(TurnWords.inFull(turn("front_bar", "position", 5.0, 3.0))).isEqualTo("front_bar 5 to 3 (softer)");
    }

    @Test
    void whatTheDriverCanTryForTheSameProblemIsToldBeforeTheTurn() {
        Finding target = finding(BalanceSign.UNDERSTEER);
        Turn bar = turn("front_bar", "position", 5.0, 3.0);
        assertThat(ProposalWords.action(bar, target, List.of(lever(target)), METRIC)
                        .replace(Figures.KEPT_TOGETHER, ' '))
                .isEqualTo(
                        "Technique first: pick the throttle up later, by 0.12 s in corner 3; then turn front_bar 5 to 3"
                                + " (softer)");
        assertThat(ProposalWords.action(bar, target, List.of(), METRIC)).isEqualTo("Turn front_bar 5 to 3 (softer)");
        assertThat(ProposalWords.action(bar, target, List.of(lever(finding(BalanceSign.OVERSTEER))), METRIC))
                .as("what is for another problem waits")
                .startsWith("Turn front_bar");
    }

    private static TechniqueLever lever(Finding finding) {
        return new TechniqueLever(
                1,
                Optional.of(finding),
                Optional.empty(),
                Lever.PICK_UP,
                0.12,
                TechniqueLever.Response.BALANCE,
                Optional.empty(),
                Optional.of(new TechniqueLever.Effect(-0.002, -0.003, -0.001)),
                List.of(new TechniqueLever.AtCorner(3, 1.4, 1.52, Optional.empty())),
                List.of(4, 7),
                List.of(2),
                0.01,
                0.87,
                false,
                true);
    }

    private static Finding finding(BalanceSign balance) {
        return ExampleFinding.of(Phase.EXIT, SpeedRange.ALL, balance, List.of(3), new Finding.Price(0.2, 0.1, 0.3));
    }
}
