package setwright.app.report.drawings;

import java.util.List;
import java.util.stream.Collectors;
import setwright.app.plot.Svg;
import setwright.app.report.RibbonView;
import setwright.app.report.RibbonView.PhaseBar;
import setwright.app.report.RibbonView.Place;

/** The lap unrolled: a bar for each phase of each corner, up for understeer. */
final class RibbonDrawing {
    private static final double WIDTH = 1100.0;
    private static final double HALF = 55.0;
    private static final double GAP = 5.0;
    private static final double LEAST = 1.5;

    private RibbonDrawing() {}

    static Drawing draw(String recording, RibbonView ribbon, String against) {
        double weights = ribbon.cells().stream()
                .mapToDouble(place -> Double.parseDouble(place.width()))
                .sum();
        double room = WIDTH - GAP * (ribbon.cells().size() - 1);
        Svg svg = new Svg().open("g", "class", "bar");
        double x = 0.0;
        for (Place place : ribbon.cells()) {
            double width = room * Double.parseDouble(place.width()) / weights;
            place(svg, place, x, width);
            x += width + GAP;
        }
        return Drawing.of(
                "ribbon",
                "The lap unrolled \u2013 " + recording,
                List.of(
                        "Up: understeer +, down: oversteer \u2212, against " + against
                                + ". Each box is a corner, each bar a phase of it"
                                + " (braking, entry, mid, exit), as wide as the time spent in it.",
                        "Triangle: unusual hands in most laps. Dot: an axle lets go in most laps, front above, rear below. Grey: small,"
                                + " or not clear of chance. Dashed box: left out, the driving differs there."),
                ribbon.cells().stream().map(Place::label).collect(Collectors.joining(" ")),
                WIDTH,
                2.0 * HALF + 26.0,
                svg.close().markup());
    }

    private static void place(Svg svg, Place place, double x, double width) {
        svg.add(
                "rect",
                "class",
                "box",
                "stroke-dasharray",
                place.steady() ? "none" : "4 4",
                "x",
                Svg.number(x),
                "y",
                "0",
                "width",
                Svg.number(width),
                "height",
                Svg.number(2.0 * HALF),
                "rx",
                "3");
        double weights = place.phases().stream()
                .mapToDouble(bar -> Double.parseDouble(bar.width()))
                .sum();
        double at = x;
        for (PhaseBar bar : place.phases()) {
            double part = width * Double.parseDouble(bar.width()) / weights;
            bar(svg, bar, at, part);
            at += part;
        }
        String middle = Svg.number(HALF);
        svg.add("line", "class", "grid", "x1", Svg.number(x), "x2", Svg.number(x + width), "y1", middle, "y2", middle);
        svg.text(
                "text",
                String.valueOf(place.corner()),
                "class",
                "note middle",
                "x",
                Svg.number(x + 0.5 * width),
                "y",
                Svg.number(2.0 * HALF + 18.0));
    }

    private static void bar(Svg svg, PhaseBar bar, double x, double width) {
        double up = HALF * bar.up() / 100.0;
        double down = HALF * bar.down() / 100.0;
        if (up > 0.0 || down > 0.0) {
            double height = Math.max(LEAST, up + down);
            svg.open(
                            "rect",
                            "class",
                            bar.css(),
                            "stroke",
                            "none",
                            "x",
                            Svg.number(x + 0.5),
                            "y",
                            Svg.number(up > 0.0 ? HALF - height : HALF),
                            "width",
                            Svg.number(Math.max(1.0, width - 1.0)),
                            "height",
                            Svg.number(height))
                    .text("title", bar.phase())
                    .close();
        }
        double middle = x + 0.5 * width;
        if (bar.notch()) {
            svg.add("path", "d", "M" + Svg.number(middle - 4.0) + " 1h8l-4 6z");
        }
        if (!bar.letsGo().isEmpty()) {
            boolean rear = bar.letsGo().equals("rear");
            svg.add(
                    "circle",
                    "class",
                    "lets-go " + bar.letsGo(),
                    "cx",
                    Svg.number(middle),
                    "cy",
                    Svg.number(rear ? 2.0 * HALF - 6.0 : 13.0),
                    "r",
                    "3.5");
        }
    }
}
