package setwright.app.plot;

/** What stands around a drawing of points: levels with their numbers at the left, numbers and a name below. */
public final class Axes {
    private static final int LEVELS = 5;

    private Axes() {}

    /** Writes a number with so many decimals, the way the reader wants it. */
    @FunctionalInterface
    public interface Numbers {
        /** Returns the number in words. */
        String write(double value, int decimals);
    }

    /**
     * Draws them.
     *
     * @param x       from the left edge, at 0, to the right one
     * @param height  of the drawing; the numbers stand below
     * @param along   about how many numbers there are below
     * @param name    of what runs along, with its unit
     */
    public static void draw(Svg svg, Scale x, Scale y, int height, int along, Numbers numbers, String name) {
        Axis up = Axis.between(y.low(), y.high(), LEVELS);
        for (double tick : up.ticks()) {
            String at = Svg.number(y.at(tick));
            svg.add("line", "class", "grid", "x1", "0", "x2", "100%", "y1", at, "y2", at);
            svg.text(
                    "text",
                    numbers.write(tick, up.decimals()),
                    "class",
                    "tick end",
                    "x",
                    "-6",
                    "y",
                    Svg.number(y.at(tick) + 4.0));
        }
        Axis below = Axis.between(x.low(), x.high(), along);
        for (double tick : below.ticks()) {
            svg.text(
                    "text",
                    numbers.write(tick, below.decimals()),
                    "class",
                    "tick middle",
                    "x",
                    Svg.percent(x.at(tick) / x.to()),
                    "y",
                    String.valueOf(height + 14));
        }
        svg.text("text", name, "class", "tick middle", "x", "50%", "y", String.valueOf(height + 30));
    }
}
