package setwright.core.handling.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.Sheets;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Lap;
import setwright.core.circuit.LapKind;
import setwright.core.circuit.ReferenceLine;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTracer;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/**
 * The balance angle of a recorded constant-radius run equals the single-track formula {@code B = K ay}, with
 * {@code delta = L / R + K ay} (ISO 4138, constant radius; definition of the understeer gradient in ISO 8855).
 *
 * <p>Source of the car: H. B. Pacejka, Tire and Vehicle Dynamics, table 1.1 (value from memory): a 1.4 m, b 1.6 m,
 * m 1600 kg, 60 kN/rad an axle, hence K = 1.77778e-3 rad/(m/s²). At R 100 m and 25 m/s: ay 6.25 m/s², B 0.011111 rad.
 */
final class BalanceAngleOnACircleTest {
    private static final double WHEELBASE_M = 3.0;
    private static final double RATIO = 16.0;
    private static final double GRADIENT = 1600.0 / WHEELBASE_M * (1.6 / 60_000.0 - 1.4 / 60_000.0);
    private static final int SAMPLES = 500;

    @ParameterizedTest(name = "R {0} m, {1} m/s, turning {3}: {2} rad")
    @CsvSource({"100, 25, 0.0111111, 1", "100, 25, 0.0111111, -1", "100, 15, 0.0040000, 1", "50, 15, 0.0080000, -1"})
    void equalsTheUndersteerGradientTimesLateralAcceleration(
            double radius, double speed, double expected, double side) {
        double lateral = speed * speed / radius;
        double steer = WHEELBASE_M / radius + GRADIENT * lateral;
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        channels.put(Quantity.SPEED, constant(speed));
        channels.put(Quantity.STEERING_WHEEL_ANGLE, constant(side * steer * RATIO));
        channels.put(Quantity.YAW_RATE, constant(side * speed / radius));
        channels.put(Quantity.LATERAL_ACCELERATION, constant(side * lateral));
        channels.put(Quantity.LONGITUDINAL_ACCELERATION, constant(0.0));
        Stint stint = stint(new Recording("circle", 50.0, channels, List.of()), radius, side);

        double halfLastDigit = 5.0e-8;
        Channel balance = HandlingTracer.trace(stint, sheet()).balance();
        assertThat(balance.get(SAMPLES / 2)).isCloseTo(expected, within(halfLastDigit));
    }

    @ParameterizedTest
    @CsvSource({"100, 25, 0.0111111"})
    void needsNoYawRateOnASteadyCircle(double radius, double speed, double expected) {
        double lateral = speed * speed / radius;
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        channels.put(Quantity.SPEED, constant(speed));
        channels.put(Quantity.ROAD_WHEEL_ANGLE, constant(WHEELBASE_M / radius + GRADIENT * lateral));
        channels.put(Quantity.LATERAL_ACCELERATION, constant(lateral));
        Stint stint = stint(new Recording("circle", 50.0, channels, List.of()), radius, 1.0);

        double halfLastDigit = 5.0e-8;
        assertThat(HandlingTracer.trace(stint, sheet()).balance().get(SAMPLES / 2))
                .isCloseTo(expected, within(halfLastDigit));
        assertThat(HandlingTracer.trace(stint, sheet()).yawMeasured()).isFalse();
    }

    private static Channel constant(double value) {
        double[] samples = new double[SAMPLES];
        Arrays.fill(samples, value);
        return Channel.of(samples);
    }

    private static Stint stint(Recording recording, double radius, double side) {
        int nodes = 360;
        double[] angle = new double[nodes];
        double[] x = new double[nodes];
        double[] y = new double[nodes];
        double[] curvature = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            angle[i] = side * 2.0 * Math.PI * i / nodes;
            x[i] = radius * Math.sin(Math.abs(angle[i]));
            y[i] = side * radius * (1.0 - Math.cos(angle[i]));
            curvature[i] = side / radius;
        }
        ReferenceLine line = new ReferenceLine(2.0 * Math.PI * radius / nodes, x, y, angle, curvature);
        Circuit circuit = new Circuit("circle", line, List.of(), new Circuit.LocalPlane());
        Lap lap = new Lap(1, 0, SAMPLES, SAMPLES / 50.0, LapKind.GOOD, "");
        return new Stint(recording, circuit, List.of(lap), constant(0.0), constant(0.0));
    }

    private static CarSheet sheet() {
        return Sheets.plain(DrivenAxle.REAR, 1600.0, 1.6 / WHEELBASE_M, WHEELBASE_M, RATIO, 0.5);
    }
}
