package setwright.app.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class FiguresTest {
    private final Figures metric = Figures.forTerminal(UnitSystem.METRIC);
    private final Figures imperial = Figures.forTerminal(UnitSystem.IMPERIAL);

    @Test
    void signsAndZeros() {
        assertThat(metric.signed(0.424, 2)).isEqualTo("+0.42");
        assertThat(metric.signed(-0.424, 2)).isEqualTo("-0.42");
        assertThat(metric.signed(-0.001, 2)).isEqualTo("0.00");
        assertThat(Figures.forPage(UnitSystem.METRIC).number(-1.5, 1)).isEqualTo("\u22121.5");
        assertThat(metric.number(Double.NaN, 2)).isEqualTo("unknown");
    }

    @Test
    void unitsOfTheUsersChoice() {
        assertThat(metric.speed(25.0)).isEqualTo("90\u00a0km/h");
        assertThat(imperial.speed(44.704)).isEqualTo("100\u00a0mph"); // by definition of the mile
        assertThat(imperial.distance(0.3048)).isEqualTo("1.0\u00a0ft"); // by definition of the foot
    }

    @Test
    void lapTimesRoundOnce() {
        assertThat(metric.lapTime(78.6396)).isEqualTo("1:18.640");
        assertThat(metric.lapTime(119.9996)).isEqualTo("2:00.000");
    }

    @Test
    void noProbabilityIsACertainty() {
        assertThat(metric.probability(1.0)).isEqualTo("over 0.99");
        assertThat(metric.probability(0.0)).isEqualTo("under 0.01");
        assertThat(metric.probability(0.97)).isEqualTo("0.97");
    }

    @Test
    void listsAsWords() {
        assertThat(Figures.corners(List.of(4))).isEqualTo("corner 4");
        assertThat(Figures.corners(List.of(1, 4, 7))).isEqualTo("corners 1, 4 and 7");
        assertThat(Figures.sentence("the rear slides")).isEqualTo("The rear slides.");
        assertThat(Figures.sentence("")).isEmpty();
    }

    /** 180 km/h are 111.8 mph: 1 mile is 1609.344 m (international yard and pound agreement, 1959). */
    @Test
    void whatTheCoreSaysIsShownInTheUnitsChosen() {
        String said = "at 180 km/h it moves by -0.12 deg (-0.2 to 0.1), item-2 stays";
        assertThat(Figures.forPage(UnitSystem.METRIC).told(said))
                .isEqualTo("At 180 km/h it moves by \u22120.12 deg (\u22120.2 to 0.1), item-2 stays.");
        assertThat(Figures.forPage(UnitSystem.IMPERIAL).told(said)).startsWith("At 112 mph it moves by \u22120.12 deg");
        assertThat(Figures.forTerminal(UnitSystem.METRIC).shown(said)).isEqualTo(said);
    }
}
