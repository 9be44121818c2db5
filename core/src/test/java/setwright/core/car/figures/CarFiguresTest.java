package setwright.core.car.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.Sheets;
import setwright.core.car.sums.Gravity;

final class CarFiguresTest {
    private static final CarSheet BARE = Sheets.plain(DrivenAxle.FRONT, 1000.0, 0.6, 2.5, 15.0, 0.5);

    @Test
    void whatASheetCannotTellIsSaidWithTheKeyThatWould() {
        CarFigures figures = CarFigures.of(BARE, UndersteerModel.NONE);
        assertThat(figures.front().ride()).isEmpty();
        assertThat(figures.roll()).isEmpty();
        assertThat(figures.rakeRad()).isEmpty();
        assertThat(figures.speeds().gears()).isEmpty();
        assertThat(figures.brakes().frontLocksFirst()).isEmpty();
        assertThat(figures.understeerGradient()).isEmpty();
        assertThat(String.join(" ", figures.untold()))
                .contains("front_spring", "damper_rate_front_Ns_per_m", "gear_ratios", "engine_power_kW");
    }

    @Test
    void loadsAddUpToTheWeightAtRestAndUnderBraking() {
        CarFigures figures = CarFigures.of(BARE, UndersteerModel.NONE);
        double weight = 1030.0 * Gravity.STANDARD_MPS2;
        double roundOff = 1.0e-9 * weight;
        assertThat(figures.front().loadN() + figures.rear().loadN()).isCloseTo(weight, within(roundOff));
        assertThat(figures.brakes().frontLoadN() + figures.brakes().rearLoadN()).isCloseTo(weight, within(roundOff));
        assertThat(figures.front().loadN()).isCloseTo(0.6 * weight, within(roundOff));
    }

    @Test
    void usualValuesAreNamed() {
        CarFigures figures = CarFigures.of(BARE, UndersteerModel.NONE);
        assertThat(figures.assumed())
                .extracting(Assumption::key)
                .contains("roll_centre_height_front_m", "unsprung_mass_rear_kg", "tyre_spring_rate_front_N_per_mm")
                .doesNotContain("drag_area_m2");
    }

    @Test
    void theModelTellsTheUndersteerGradient() {
        assertThat(CarFigures.of(BARE, sheet -> OptionalDouble.of(2.0e-3)).understeerGradient())
                .hasValue(2.0e-3);
    }
}
