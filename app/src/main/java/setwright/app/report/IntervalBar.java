package setwright.app.report;

import setwright.app.plot.Markup;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;

/** An interval drawn small: a line with a dot at the middle, zero marked. */
public final class IntervalBar {
    private IntervalBar() {}

    /**
     * Returns the drawing.
     *
     * @param low     lower end
     * @param high    upper end
     * @param middle  where the dot stands
     * @param span    the drawing reaches from minus this to plus this, &gt; 0
     */
    public static Markup of(double low, double high, double middle, double span) {
        Scale x = new Scale(-span, span, 0.0, 1.0);
        double from = x.within(low);
        double to = x.within(high);
        return new Svg()
                .open("svg", "class", "interval", "width", "100%", "height", "7", "aria-hidden", "true")
                .add("line", "class", "zero", "x1", "50%", "x2", "50%", "y1", "0", "y2", "7")
                .add("rect", "x", Svg.percent(from), "width", Svg.percent(to - from), "y", "2.5", "height", "2")
                .add("circle", "cx", Svg.percent(x.within(middle)), "cy", "3.5", "r", "2.6")
                .close()
                .markup();
    }
}
