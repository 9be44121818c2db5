package setwright.app.report.drawings;

import java.util.List;
import setwright.app.plot.Svg;
import setwright.app.report.DrivingView;
import setwright.app.report.DrivingView.Column;
import setwright.app.report.DrivingView.CornerRow;
import setwright.app.report.DrivingView.MeasureCell;

/** How the driving repeats: a small drawing for each corner and measure. */
final class DrivingDrawing {
    private static final double LEFT = 190.0;
    private static final double CELL = 190.0;
    private static final double DOTS = 112.0;
    private static final double ROW = 36.0;
    private static final double HEAD = 44.0;

    private DrivingDrawing() {}

    static Drawing draw(String recording, DrivingView driving) {
        List<Column> columns = driving.columns();
        double width = LEFT + columns.size() * CELL;
        Svg svg = new Svg();
        for (int i = 0; i < columns.size(); i++) {
            String x = Svg.number(LEFT + i * CELL);
            svg.text("text", columns.get(i).name(), "class", "strong", "x", x, "y", "14");
            svg.text("text", columns.get(i).span(), "class", "note", "x", x, "y", "31");
        }
        double y = HEAD;
        for (CornerRow row : driving.rows()) {
            row(svg, row, y, width);
            y += ROW;
        }
        return Drawing.of(
                "driving",
                "How the driving repeats \u2013 " + recording,
                List.of(
                        "Each dot is a lap, left to right as driven, around that corner's median; up is later or faster. The figure is the"
                                + " scatter of one lap; bold: the one that scatters most where the driving differs."),
                driving.link().answer(),
                width,
                y,
                svg.markup());
    }

    private static void row(Svg svg, CornerRow row, double y, double width) {
        String line = Svg.number(y);
        svg.add("line", "class", "grid", "x1", "0", "x2", Svg.number(width), "y1", line, "y2", line);
        String base = Svg.number(y + 0.5 * ROW + 4.5);
        svg.text("text", String.valueOf(row.corner()), "class", "strong", "x", "0", "y", base);
        svg.text("text", row.verdict(), "class", "note", "x", "28", "y", base);
        for (int i = 0; i < row.measures().size(); i++) {
            MeasureCell cell = row.measures().get(i);
            double x = LEFT + i * CELL;
            if (!cell.dots().text().isEmpty()) {
                PanelStack.place(svg, cell.dots(), x, y + 3.0, DOTS, PanelStack.height(cell.dots()));
            }
            svg.text(
                    "text",
                    cell.scatter(),
                    "class",
                    cell.worst() && !row.steady() ? "strong end" : "note end",
                    "x",
                    Svg.number(x + CELL - 16.0),
                    "y",
                    base);
        }
    }
}
