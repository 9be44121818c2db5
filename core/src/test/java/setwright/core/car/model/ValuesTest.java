package setwright.core.car.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;

final class ValuesTest {
    private final Values values = new Values(Sheets.with(List.of(
            new SetupItem("front_tyre_pressure", 26.0, "psi", 20.0, 30.0, 0.5),
            new SetupItem("rear_tyre_pressure", 1.8, "bar", 1.4, 2.0, 0.02),
            new SetupItem("front_spring", 800.0, "lbf/in", 400.0, 1200.0, 50.0),
            new SetupItem("rear_spring", 150.0, "N/mm", 80.0, 200.0, 5.0),
            new SetupItem("front_camber", -3.0, "deg", -5.0, 0.0, 0.25),
            new SetupItem("front_wing", 9.0, "step", 1.0, 9.0, 1.0),
            new SetupItem("rear_bar", 2.0, "position", 2.0, 2.0, 1.0))));

    /** Half of the last digit of the factors that NIST Special Publication 811, appendix B, prints. */
    private static final double PRINTED = 5.0e-7;

    @Test
    void unitsBecomeSi() {
        assertThat(values.of("front_tyre_pressure", 0.0)).isCloseTo(26.0 * 6894.757, within(PRINTED * 1.8e5));
        assertThat(values.of("rear_tyre_pressure", 0.0)).isCloseTo(1.8e5, within(1.0e-6));
        // 1 lbf/in = 175.1268 N/m
        assertThat(values.of("front_spring", 0.0)).isCloseTo(800.0 * 175.1268, within(PRINTED * 1.4e5));
        assertThat(values.of("rear_spring", 0.0)).isCloseTo(150.0e3, within(1.0e-6));
        assertThat(values.of("front_camber", 0.0)).isCloseTo(Math.toRadians(-3.0), within(1.0e-12));
    }

    @Test
    void countsStayCounts() {
        assertThat(values.of("front_wing", 0.0)).isEqualTo(9.0);
    }

    @Test
    void middleOfTheRangeIsInSiToo() {
        assertThat(values.middle("front_tyre_pressure", 0.0)).isCloseTo(25.0 * 6894.757, within(PRINTED * 1.8e5));
        assertThat(values.middle("rear_camber", -0.04)).isEqualTo(-0.04);
    }

    @Test
    void placeGoesFromOneEndOfTheRangeToTheOther() {
        assertThat(values.place("front_wing")).isEqualTo(0.5);
        assertThat(values.place("front_spring")).isZero();
        assertThat(values.place("rear_bar")).as("no range").isZero();
        assertThat(values.place("rear_wing")).as("not on the sheet").isZero();
    }

    @Test
    void whatIsNotOnTheSheetIsTakenAsTold() {
        assertThat(values.has("rear_wing")).isFalse();
        assertThat(values.of("rear_wing", 7.0)).isEqualTo(7.0);
    }
}
