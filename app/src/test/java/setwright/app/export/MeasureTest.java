package setwright.app.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.app.units.UnitSystem;
import setwright.core.recording.Quantity;
import setwright.intake.map.Dimension;
import setwright.intake.map.Unit;
import setwright.intake.map.Units;

final class MeasureTest {
    /** Exact definitions: NIST SP 811, appendix B (mile, foot, inch, pound); 0 degC is 273.15 K (BIPM, SI brochure). */
    @ParameterizedTest
    @CsvSource({
        "SPEED, 10, 36, 22.36936292",
        "DISTANCE, 100, 100, 328.0839895",
        "TRAVEL, 0.0254, 25.4, 1",
        "ANGLE, 3.141592653589793, 180, 180",
        "ENGINE_SPEED, 104.71975511965978, 1000, 1000",
        "TEMPERATURE, 373.15, 100, 212",
        "MASS, 0.45359237, 0.45359237, 1",
        "CURVATURE, 0.01, 0.01, 0.003048"
    })
    void isShownInTheUnitsPeopleRead(Measure measure, double si, double metric, double imperial) {
        assertThat(measure.shown(si, UnitSystem.METRIC)).isCloseTo(metric, within(1e-8 * metric));
        assertThat(measure.shown(si, UnitSystem.IMPERIAL)).isCloseTo(imperial, within(1e-8 * imperial));
    }

    /** What is taken out must be understood when it comes in: the reader's own units, which were written before. */
    @ParameterizedTest
    @EnumSource(Quantity.class)
    void theReaderKnowsTheUnits(Quantity quantity) {
        Measure measure = Measure.of(quantity);
        assertThat(measure.si()).isEqualTo(quantity.siUnit());
        for (UnitSystem units : UnitSystem.values()) {
            if (measure == Measure.NUMBER) {
                continue;
            }
            Unit unit = Units.spelled(measure.unit(units)).stream()
                    .filter(known -> known.dimension() != Dimension.SHARE)
                    .findFirst()
                    .orElseThrow();
            assertThat(unit.toSi(measure.shown(300.0, units))).isCloseTo(300.0, within(1e-4));
        }
    }

    @Test
    void everyMeasureHasAUnit() {
        for (Measure measure : Measure.values()) {
            assertThat(measure.si()).isNotBlank();
        }
    }
}
