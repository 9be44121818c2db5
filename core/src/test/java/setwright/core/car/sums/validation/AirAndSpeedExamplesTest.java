package setwright.core.car.sums.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.sums.AeroLoad;
import setwright.core.car.sums.AirDensity;
import setwright.core.car.sums.BrakingRun;
import setwright.core.car.sums.ConstantPower;
import setwright.core.car.sums.Cornering;
import setwright.core.car.sums.Gearing;
import setwright.core.car.sums.TopSpeed;

/** Air, power and speed against published tables and examples worked out apart from this program. */
final class AirAndSpeedExamplesTest {
    private static final double KMH = 3.6;

    /** ISO 2533:1975, table of the standard atmosphere (values from memory, four decimals). */
    @ParameterizedTest(name = "{0} m: {1} kg/m3")
    @CsvSource({"0, 1.2250", "500, 1.1673", "1000, 1.1116", "1500, 1.0581", "2000, 1.0065"})
    void standardAtmosphere(double altitudeM, double density) {
        double halfLastDigit = 0.00005;
        assertThat(AirDensity.standard(altitudeM)).isCloseTo(density, within(halfLastDigit));
    }

    /** ISO 2533:1975: 22 632 Pa and 216.65 K at the tropopause, 11 km (value from memory). */
    @Test
    void tropopause() {
        assertThat(AirDensity.standardPressurePa(11_000.0)).isCloseTo(22_632.0, within(1.0));
        assertThat(AirDensity.standardTemperatureK(11_000.0)).isCloseTo(216.65, within(1.0e-9));
    }

    /** Ideal gas at 101 325 Pa. */
    @ParameterizedTest(name = "{0} C: {1} kg/m3")
    @CsvSource({"10, 1.2466", "20, 1.2041", "30, 1.1644", "40, 1.1272"})
    void dryAir(double celsius, double density) {
        assertThat(AirDensity.dry(101_325.0, celsius + 273.15)).isCloseTo(density, within(1.0e-4));
    }

    /** Saturation pressure of water: 2339 Pa at 20 C, 7384 Pa at 40 C (steam tables, value from memory; Magnus holds to 0.3 %). */
    @ParameterizedTest(name = "{0} C: {1} Pa")
    @CsvSource({"20, 2339", "40, 7384"})
    void saturation(double celsius, double pascal) {
        assertThat(AirDensity.saturationPa(celsius + 273.15)).isCloseTo(pascal, within(0.003 * pascal));
    }

    /** Power balance of drag and rolling resistance. */
    @ParameterizedTest(name = "{0} kW: {5} km/h")
    @CsvSource({
        "100, 0.65, 1300, 0.012, 1.225, 219.83",
        "100, 0.65, 1300, 0, 1.225, 227.14",
        "550, 1.2, 720, 0.012, 1.225, 325.31",
        "550, 1.2, 720, 0, 1.225, 326.83",
        "300, 0.9, 1200, 0.012, 1.112, 299.54"
    })
    void topSpeed(double kilowatt, double dragArea, double mass, double rolling, double density, double kmh) {
        TopSpeed car = new TopSpeed(density, dragArea, rolling, mass);
        assertThat(KMH * car.speedMps(1000.0 * kilowatt)).isCloseTo(kmh, within(1.0e-4 * kmh));
    }

    /** Rolling without slip: tyre 0.31 m, 7000 rpm, final drive 3.9. */
    @ParameterizedTest(name = "ratio {0}: {1} km/h")
    @CsvSource({"1.0, 209.76", "2.5, 83.90"})
    void speedInAGear(double ratio, double kmh) {
        Gearing gearing = new Gearing(3.9, 0.31);
        assertThat(KMH * gearing.speedMps(7000.0 * Math.PI / 30.0, ratio)).isCloseTo(kmh, within(0.005));
    }

    /** Definition of the coefficients. */
    @Test
    void downforceAndDrag() {
        AeroLoad air = new AeroLoad(1.2, 1.0, 1.2, 1.8);
        assertThat(air.frontN(50.0)).isCloseTo(1800.0, within(1.0e-9));
        assertThat(air.rearN(50.0)).isCloseTo(2700.0, within(1.0e-9));
        assertThat(air.frontShare()).isCloseTo(0.4, within(1.0e-12));
        assertThat(air.dragTransferN(50.0, 0.4, 2.6)).isCloseTo(230.8, within(0.05));
    }

    /**
     * Circle with downforce; the car's figures are those of B. Lenzo, V. Rossi, Applied Sciences 10(4), 1498, 2020: 620 kg, drag
     * 0.72 and downforce 2.15 N s2/m2; the friction is ours.
     */
    @ParameterizedTest(name = "mu {0}, R {1} m: {2} m/s")
    @CsvSource({
        "1.0, 50, 24.360, 24.335",
        "1.0, 100, 38.753, 38.555",
        "1.0, 200, 80.014, 76.751",
        "1.5, 50, 31.534, 31.498",
        "1.5, 100, 55.377, 54.994"
    })
    void circleWithDownforce(double friction, double radius, double withoutDrag, double withDrag) {
        Cornering car = new Cornering(620.0, friction, 2.15, 0.72);
        assertThat(car.withoutDrag(radius).orElseThrow()).isCloseTo(withoutDrag, within(1.0e-3 * withoutDrag));
        assertThat(car.withDrag(radius).orElseThrow()).isCloseTo(withDrag, within(1.0e-3 * withDrag));
    }

    /** The same car: radius from which grip limits no speed. */
    @Test
    void radiusWithoutLimit() {
        assertThat(new Cornering(620.0, 1.0, 2.15, 0.72).limitlessRadiusM()).isCloseTo(288.37, within(0.005));
        Cornering grippy = new Cornering(620.0, 1.5, 2.15, 0.72);
        assertThat(grippy.limitlessRadiusM()).isCloseTo(192.25, within(0.005));
        assertThat(grippy.withoutDrag(200.0)).isEmpty();
        assertThat(Math.cbrt(550_000.0 / 0.72)).isCloseTo(91.413, within(0.0005));
        assertThat(new TopSpeed(1.2, 1.2, 0.0, 620.0).speedMps(550_000.0)).isCloseTo(91.413, within(0.0005));
    }

    /** The same car, mu 1.5, braking from 80 to 20 m/s: closed solution of a = A + c v^2. */
    @Test
    void brakingWithDownforce() {
        BrakingRun run = new BrakingRun(new Cornering(620.0, 1.5, 2.15, 0.72));
        assertThat(run.distanceM(80.0, 20.0)).isCloseTo(91.692, within(1.0e-3 * 91.692));
        assertThat(run.timeS(80.0, 20.0)).isCloseTo(2.0766, within(1.0e-3 * 2.0766));
        assertThat(run.decelerationMps2(80.0) / 9.81).isCloseTo(5.651, within(1.0e-3 * 5.651));
    }

    /** Constant power from rest: 1000 kg, 100 kW to 30 m/s. */
    @Test
    void constantPower() {
        assertThat(ConstantPower.timeS(1000.0, 100_000.0, 30.0)).isCloseTo(4.5, within(1.0e-12));
        assertThat(ConstantPower.distanceM(1000.0, 100_000.0, 30.0)).isCloseTo(90.0, within(1.0e-12));
    }
}
