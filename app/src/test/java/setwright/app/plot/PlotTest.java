package setwright.app.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

final class PlotTest {
    @Test
    void ticksAreRoundAndInside() {
        assertThat(Axis.between(0.0, 1.0, 5).ticks()).hasSize(6).startsWith(0.0).endsWith(1.0);
        assertThat(Axis.between(83.0, 141.0, 4).ticks()).containsExactly(100.0, 120.0, 140.0);
        assertThat(Axis.between(-0.31, 0.12, 4).step()).isEqualTo(0.2);
        assertThat(Axis.between(-0.31, 0.12, 4).decimals()).isEqualTo(1);
    }

    @Test
    void aGapBreaksALine() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {5, 6, Double.NaN, 7, 8};
        assertThat(PathData.line(x, y)).isEqualTo("M0 5L1 6M3 7L4 8");
    }

    @Test
    void aGapSplitsABand() {
        double[] x = {0, 1, 2, 3, 4};
        double[] low = {0, 0, Double.NaN, 0, 0};
        double[] high = {2, 2, 2, 2, 2};
        assertThat(PathData.band(x, low, high)).isEqualTo("M0 2L1 2L1 0L0 0ZM3 2L4 2L4 0L3 0Z");
    }

    @Test
    void textAndAttributesAreEscaped() {
        Svg svg = new Svg();
        svg.open("g", "id", "a\"b").text("text", "<script>&\u0001").close();
        assertThat(svg.markup().text()).isEqualTo("<g id=\"a&quot;b\"><text>&lt;script&gt;&amp;</text></g>");
    }

    @Test
    void anUnclosedElementIsAFaultOfTheProgram() {
        Svg svg = new Svg().open("g");
        assertThatThrownBy(svg::markup)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("g");
    }

    @Test
    void aScaleIsALineAndKeepsWithinItsEndsOnRequest() {
        Scale scale = new Scale(-1.0, 1.0, 100.0, 0.0);
        assertThat(scale.at(0.5)).isEqualTo(25.0);
        assertThat(scale.at(2.0)).isEqualTo(-50.0);
        assertThat(scale.within(2.0)).isZero();
        assertThatThrownBy(() -> new Scale(1.0, 1.0, 0.0, 1.0)).isInstanceOf(IllegalArgumentException.class);
    }
}
