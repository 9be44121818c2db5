package setwright.core.car.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.core.car.SetupItem;

final class SetupCatalogueTest {

    static Stream<SetupItemKind> numbers() {
        return SetupCatalogue.all().stream().filter(kind -> !kind.family().isLabel());
    }

    @Test
    void holdsEveryItemOfACarOnce() {
        assertThat(SetupCatalogue.names())
                .doesNotHaveDuplicates()
                .contains(
                        "front_spring",
                        "rear_bar",
                        "front_bump",
                        "rear_rebound",
                        "front_bump_low",
                        "front_rebound_high",
                        "rear_bump_high",
                        "rear_rebound_low",
                        "front_bump_stop_gap",
                        "rear_ride_height",
                        "front_wing",
                        "brake_bias_front",
                        "diff_preload",
                        "diff_power_lock",
                        "diff_coast_lock",
                        "rear_tyre_pressure",
                        "front_camber",
                        "rear_toe",
                        "front_tyre_compound",
                        "final_drive",
                        "gear_1",
                        "gear_8",
                        "fuel",
                        "ballast",
                        "ballast_position");
        assertThat(SetupCatalogue.find("front_sprung")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void usualValuesArePossible(SetupItemKind kind) {
        for (SetupUnit unit : kind.units()) {
            SetupFamily.Range possible = kind.possible(unit);
            SetupFamily.Range usual = kind.usual(unit);
            assertThat(possible.least()).as(unit.symbol()).isLessThanOrEqualTo(usual.least());
            assertThat(usual.least()).isLessThan(usual.most());
            assertThat(usual.most()).isLessThanOrEqualTo(possible.most());
            assertThat(kind.usualStep(unit)).isPositive().isLessThan(usual.most() - usual.least());
            assertThat(kind.unit(unit.symbol())).contains(unit);
        }
        assertThat(kind.family().actsOn()).endsWith(".");
    }

    /** Factors as in NIST Special Publication 811, appendix B; value of one unit in SI. */
    @ParameterizedTest
    @CsvSource({
        "front_spring, N/mm, 1000",
        "front_spring, lbf/in, 175.1268",
        "front_spring, lbs/in, 175.1268",
        "front_spring, kgf/mm, 9806.65",
        "rear_tyre_pressure, psi, 6894.757",
        "rear_tyre_pressure, kPa, 1000",
        "rear_tyre_pressure, BAR, 100000",
        "diff_preload, lbf ft, 1.355818",
        "diff_preload, N m, 1",
        "front_ride_height, in, 0.0254",
        "rear_toe, arcmin, 0.0002908882",
        "brake_bias_front, %, 0.01",
        "fuel, lb, 0.4535924",
        "front_bar, hole, 1",
        "front_wing, deg, 1"
    })
    void oneOfAUnitIsSoMuchInSi(String name, String unit, double si) {
        SetupItemKind kind = SetupCatalogue.find(name).orElseThrow();
        SetupItem item = new SetupItem(name, 1.0, unit, 0.0, 10.0, 1.0);
        double printedDigits = 1.0e-6 * si;
        assertThat(kind.toSi(item)).isCloseTo(si, within(printedDigits));
    }

    @Test
    void aUnitOfSomethingElseIsRefused() {
        SetupItemKind spring = SetupCatalogue.of(SetupFamily.SPRING, SetupPlace.FRONT);
        assertThat(spring.unit("bar")).isEmpty();
        assertThat(spring.unit("")).isEmpty();
        assertThatThrownBy(() -> spring.toSi(new SetupItem("front_spring", 1.0, "bar", 0.0, 2.0, 1.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("front_spring");
    }

    @Test
    void rangesFollowTheUnit() {
        SetupItemKind pressure = SetupCatalogue.of(SetupFamily.TYRE_PRESSURE, SetupPlace.REAR);
        // 1.2 and 2.4 bar over 0.06894757 bar per psi, to three digits
        assertThat(pressure.usual(SetupUnit.PSI)).isEqualTo(new SetupFamily.Range(17.4, 34.8));
        assertThat(SetupCatalogue.of(SetupFamily.TYRE_COMPOUND, SetupPlace.FRONT)
                        .units())
                .isEqualTo(List.of());
    }
}
