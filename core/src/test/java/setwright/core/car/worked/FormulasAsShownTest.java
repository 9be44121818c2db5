package setwright.core.car.worked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The formula that a reader sees, with the numbers put in, gives the value that the reader sees. */
final class FormulasAsShownTest {
    private static final double ROUND_OFF = 1.0e-9;

    @ParameterizedTest(name = "{0}")
    @MethodSource("calculations")
    void formulaGivesTheResult(Calculation calculation) {
        assertThat(calculation.results()).isNotEmpty();
        for (Result result : calculation.results()) {
            String numbers = calculation.with(result, FormulasAsShownTest::exactly);
            double size = Math.max(1.0, Math.abs(result.value()));
            if (result.solvesEquation()) {
                String[] sides = numbers.split(" = ", -1);
                double right = Expression.value(sides[1]);
                assertThat(Expression.value(sides[0]))
                        .as(numbers)
                        .isCloseTo(right, within(ROUND_OFF * Math.abs(right)));
            } else {
                assertThat(Expression.value(numbers))
                        .as(result.symbol() + " = " + numbers)
                        .isCloseTo(result.value(), within(ROUND_OFF * size));
            }
        }
    }

    static Stream<Calculation> calculations() {
        return Stream.of(
                new GearingSum(
                                in("n_max", 7600, Unit.RPM),
                                in("r", 0.288, Unit.METRE),
                                in("i_f", 3.4, Unit.RATIO),
                                List.of(
                                        in("i_1", 2.68, Unit.RATIO),
                                        in("i_2", 2.01, Unit.RATIO),
                                        in("i_3", 0.989, Unit.RATIO)),
                                Optional.of(in("v", 150, Unit.KMH)),
                                Optional.of(in("v_lim", 240, Unit.KMH)))
                        .calculation(),
                new BrakesSum(
                                in("m", 663, Unit.MASS),
                                in("w_f", 44.8, Unit.PERCENT),
                                in("L", 2.807, Unit.METRE),
                                in("h", 0.3, Unit.METRE),
                                in("p", 63, Unit.PERCENT),
                                in("z", 1.3, Unit.G),
                                in("r", 0.288, Unit.METRE),
                                Optional.of(in("mu", 1.2, Unit.NONE)))
                        .calculation(),
                ride(Optional.empty()).calculation(),
                ride(Optional.of(in("k_t", 250, Unit.N_PER_MM))).calculation(),
                new DampingSum(
                                "",
                                in("k_s", 150, Unit.N_PER_MM),
                                in("MR", 0.92, Unit.NONE),
                                in("MR_d", 0.8, Unit.NONE),
                                in("m", 180, Unit.MASS),
                                Optional.of(in("c_d", 6000, Unit.DAMPING)),
                                Optional.of(in("D", 0.7, Unit.NONE)))
                        .calculation(),
                new RollSum(axle("f", 150), axle("r", 130), Optional.of(in("q", 57, Unit.PERCENT))).calculation(),
                transfer(1.4, -1.1).calculation(),
                transfer(0.0, 0.4).calculation(),
                fuel(Optional.of(in("n", 20, Unit.COUNT)), Optional.empty(), Optional.empty())
                        .calculation(),
                fuel(Optional.empty(), Optional.of(in("T", 30, Unit.MINUTE)), Optional.of(in("t", 95, Unit.SECOND)))
                        .calculation(),
                new PressureSum(
                                "",
                                in("T_c", 20, Unit.CELSIUS),
                                in("T_h", 85, Unit.CELSIUS),
                                in("p_a", 0.97, Unit.BAR),
                                Optional.of(in("p_c", 1.5, Unit.BAR)),
                                Optional.of(in("p_h", 1.9, Unit.BAR)))
                        .calculation(),
                new AirSum(in("A", 1500, Unit.METRE), Optional.empty(), Optional.empty(), Optional.empty())
                        .calculation(),
                new AirSum(
                                in("A", 0, Unit.METRE),
                                Optional.of(in("T", -12, Unit.CELSIUS)),
                                Optional.of(in("p", 980, Unit.HECTOPASCAL)),
                                Optional.of(in("H", 60, Unit.PERCENT)))
                        .calculation(),
                new TopSpeedSum(
                                in("P", 200, Unit.KILOWATT),
                                in("CdA", 1.1, Unit.SQUARE_METRE),
                                in("c_rr", 0.012, Unit.NONE),
                                in("m", 663, Unit.MASS),
                                in("rho", 1.18, Unit.KG_PER_CUBIC_METRE))
                        .calculation());
    }

    @Test
    void wheelLoadsAddUpToTheWeight() {
        Calculation sum = transfer(1.4, -1.1).calculation();
        double total = Stream.of("F_fo", "F_fi", "F_ro", "F_ri")
                .mapToDouble(symbol -> sum.result(symbol).orElseThrow().value())
                .sum();
        assertThat(total).isCloseTo(663 * 9.80665, within(1.0e-8));
    }

    @Test
    void aSpringFoundForAFrequencyHasThatFrequency() {
        Calculation back = ride(Optional.of(in("k_t", 250, Unit.N_PER_MM))).calculation();
        double spring = back.result("k_S").orElseThrow().value();
        Calculation forward = new RideSum(
                        "",
                        in("MR", 0.92, Unit.NONE),
                        in("m", 180, Unit.MASS),
                        Optional.of(in("k_s", spring, Unit.N_PER_MM)),
                        Optional.of(in("k_t", 250, Unit.N_PER_MM)),
                        Optional.empty())
                .calculation();
        assertThat(forward.result("f_r").orElseThrow().value()).isCloseTo(3.5, within(1.0e-9));
    }

    @Test
    void whatDoesNotGoTogetherIsRefused() {
        RideSum tooHigh = new RideSum(
                "",
                in("MR", 0.92, Unit.NONE),
                in("m", 180, Unit.MASS),
                Optional.empty(),
                Optional.of(in("k_t", 200, Unit.N_PER_MM)),
                Optional.of(in("f", 9, Unit.HERTZ)));
        assertThatThrownBy(tooHigh::calculation)
                .isInstanceOf(ImpossibleSum.class)
                .hasMessageContaining("9 Hz");
    }

    private static RideSum ride(Optional<Input> tyre) {
        return new RideSum(
                "",
                in("MR", 0.92, Unit.NONE),
                in("m", 180, Unit.MASS),
                Optional.of(in("k_s", 150, Unit.N_PER_MM)),
                tyre,
                Optional.of(in("f", 3.5, Unit.HERTZ)));
    }

    private static RollSum.AxleInputs axle(String end, double spring) {
        return new RollSum.AxleInputs(
                in("k_s" + end, spring, Unit.N_PER_MM),
                in("MR_" + end, 0.92, Unit.NONE),
                in("k_b" + end, 35, Unit.N_PER_MM),
                in("t_" + end, 1.6, Unit.METRE));
    }

    private static TransferSum transfer(double lateral, double longitudinal) {
        return new TransferSum(
                in("m", 663, Unit.MASS),
                in("w_f", 44.8, Unit.PERCENT),
                in("L", 2.807, Unit.METRE),
                in("h", 0.3, Unit.METRE),
                transferAxle("f", 3700, 0.03),
                transferAxle("r", 2600, 0.06),
                in("h_u", 0.29, Unit.METRE),
                in("a_y", lateral, Unit.G),
                in("a_x", longitudinal, Unit.G));
    }

    private static TransferSum.AxleInputs transferAxle(String end, double stiffness, double centre) {
        return new TransferSum.AxleInputs(
                in("K_" + end, stiffness, Unit.NM_PER_DEG),
                in("z_" + end, centre, Unit.METRE),
                in("t_" + end, 1.6, Unit.METRE),
                in("m_u" + end, 50, Unit.MASS));
    }

    private static FuelSum fuel(Optional<Input> laps, Optional<Input> time, Optional<Input> lapTime) {
        return new FuelSum(
                in("u", 2.1, Unit.LITRE),
                in("R", 1, Unit.LITRE),
                in("rho", 0.745, Unit.KG_PER_LITRE),
                laps,
                time,
                lapTime,
                Optional.of(in("F_0", 50, Unit.LITRE)));
    }

    private static Input in(String symbol, double value, Unit unit) {
        return new Input(symbol, symbol, value, unit, Origin.GIVEN);
    }

    private static String exactly(Quantity quantity) {
        return "(" + new BigDecimal(quantity.value()).toPlainString() + ")";
    }
}
