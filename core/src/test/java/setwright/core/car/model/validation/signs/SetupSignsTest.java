package setwright.core.car.model.validation.signs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.core.car.model.validation.signs.Phase.Corner;
import setwright.core.car.model.validation.signs.Row.Sign;

/**
 * Signs of setup effects against handbooks (named in {@link HandbookRows}): each row, car and phase, balance as the replay
 * finds it. A row may disagree only with a reason, and a reason may stand only where a row disagrees.
 */
final class SetupSignsTest {
    /** The model has no noise; what is smaller than this is nothing, degrees. */
    private static final double LEAST_DEG = 1.0e-4;

    /** "None to first order": a fifth of what three positions of a bar do in mid-corner, degrees. */
    private static final double NONE_DEG = 0.02;

    private static final Map<InventedCar, Corner> USUAL = new EnumMap<>(InventedCar.class);
    private static final Map<InventedCar, Corner> TIGHT = new EnumMap<>(InventedCar.class);

    static {
        for (InventedCar car : InventedCar.values()) {
            USUAL.put(car, Corner.of(car));
            TIGHT.put(car, Corner.tight(car));
        }
    }

    private static Stream<Arguments> rows() {
        return HandbookRows.all().stream()
                .flatMap(row -> Arrays.stream(InventedCar.values())
                        .filter(row.applies())
                        .flatMap(car -> Arrays.stream(Phase.values()).map(phase -> Arguments.of(row, car, phase))));
    }

    private static double change(Row row, InventedCar car, Phase phase) {
        Corner corner = (row.tight() ? TIGHT : USUAL).get(car);
        return phase.balanceDeg(row.after().apply(car), corner)
                - phase.balanceDeg(row.before().apply(car), corner);
    }

    private static boolean agrees(double change, Sign sign) {
        return switch (sign) {
            case UNDERSTEER -> change > LEAST_DEG;
            case OVERSTEER -> change < -LEAST_DEG;
            case NONE -> Math.abs(change) < NONE_DEG;
            case DEPENDS -> true;
        };
    }

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @MethodSource("rows")
    void signAgreesOrTheReasonIsStated(Row row, InventedCar car, Phase phase) {
        Sign sign = row.expected().get(phase);
        double change = change(row, car, phase);
        if (sign == Sign.DEPENDS) {
            System.out.printf("not asserted: %s, %s, %s: %+.4f deg%n", row, car, phase, change);
            assertThat(Double.isFinite(change)).isTrue();
        } else if (row.reason(car, phase).isPresent()) {
            assertThat(agrees(change, sign))
                    .as("agrees with %s by %+.4f deg though a reason against it is stated", sign, change)
                    .isFalse();
        } else {
            assertThat(agrees(change, sign))
                    .as("changes by %+.4f deg, handbooks say %s, and no reason is stated", change, sign)
                    .isTrue();
        }
    }

    /** What disagrees is told to the reader of the documents, too. */
    @Test
    void reasonsStandInTheDocuments() throws IOException {
        String document = Files.readString(Path.of("..", "docs", "model.md"));
        for (Row row : HandbookRows.all()) {
            for (String reason : row.reasons().values()) {
                assertThat(document).contains(reason);
            }
        }
    }

    /** Row 39: load leaves the front before drive force uses the rear up. */
    @ParameterizedTest
    @EnumSource(
            value = InventedCar.class,
            names = {"TOURER", "WINGED"})
    void throttleOfARearDriveFirstUndersteersThenOversteers(InventedCar car) {
        Corner corner = TIGHT.get(car);
        double none = Phase.EXIT.balanceDeg(car.car(), corner.driving(0.0));
        assertThat(Phase.EXIT.balanceDeg(car.car(), corner.driving(1.0))).isGreaterThan(none);
        double limit = 0.6 * corner.limitMps2();
        assertThat(Phase.EXIT.balanceDeg(car.car(), corner.driving(limit))).isLessThan(none);
    }

    /** Row 40. */
    @Test
    void throttleOfAFrontDriveUndersteers() {
        Corner corner = USUAL.get(InventedCar.HATCH);
        double before = Phase.EXIT.balanceDeg(InventedCar.HATCH.car(), corner.driving(0.0));
        for (double driving : new double[] {1.0, 2.0, 3.0}) {
            double there = Phase.EXIT.balanceDeg(InventedCar.HATCH.car(), corner.driving(driving));
            assertThat(there).isGreaterThan(before);
            before = there;
        }
    }

    /** Row 41: braking into the corner, against rolling into it on the same line. */
    @ParameterizedTest
    @EnumSource(InventedCar.class)
    void trailBrakingOversteers(InventedCar car) {
        Corner corner = USUAL.get(car);
        assertThat(Phase.ENTRY.balanceDeg(car.car(), corner.braking(4.0)))
                .isLessThan(Phase.ENTRY.balanceDeg(car.car(), corner.braking(1.0)));
    }
}
