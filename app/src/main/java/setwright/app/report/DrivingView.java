package setwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.app.evidence.BalanceTable;
import setwright.app.evidence.BalanceTable.Row;
import setwright.app.evidence.DrivingMeasure;
import setwright.app.evidence.Spread;
import setwright.app.plot.Markup;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.story.CoachWords;
import setwright.app.story.Story;
import setwright.app.units.Figures;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.judgement.driving.DrivingReview;
import setwright.core.judgement.driving.DrivingReviewer;
import setwright.core.judgement.driving.MovingEvent;
import setwright.core.judgement.driving.MovingEvent.Source;

/**
 * What the driving link shows: corner by corner, how alike the laps are.
 *
 * @param link      the argument
 * @param columns   headings of the measures with the span that a small drawing covers
 * @param rows      in driving order
 * @param faults    habits with the laps that prove them
 */
public record DrivingView(Story.Link link, List<Column> columns, List<CornerRow> rows, List<FaultRow> faults) {
    private static final int HEIGHT = 30;
    private static final double MIDDLE = HEIGHT / 2.0;
    private static final String NOTHING = "\u2013";

    /** A measure and the span that its small drawings cover. */
    public record Column(String name, String span) {}

    /**
     * One corner.
     *
     * @param corner    number
     * @param steady    whether the car is judged there
     * @param verdict   in words
     * @param power     smallest change of balance and time that could be told there, and laps needed
     * @param gain      what the better quarter of the laps gains there
     * @param event     what moves most against the other corners
     * @param cost      what that costs
     * @param measures  one per column
     */
    public record CornerRow(
            int corner,
            boolean steady,
            String verdict,
            String power,
            String gain,
            String event,
            String cost,
            List<MeasureCell> measures) {}

    /**
     * One habit.
     *
     * @param kind   in words
     * @param where  corners and share of the passes
     * @param size   how large
     * @param laps   that prove it
     * @param cost   what less of it would gain; a dash where the laps do not show it
     */
    public record FaultRow(String kind, String where, String size, String laps, String cost) {}

    /**
     * One measure at one corner.
     *
     * @param scatter  in the user's unit; a dash when it does not happen there
     * @param dots     the laps as dots around their median
     * @param worst    whether it is the one that scatters most for its kind
     */
    public record MeasureCell(String scatter, Markup dots, boolean worst) {}

    static DrivingView of(Diagnosis diagnosis, BalanceTable table, Story.Link link, Figures figures) {
        DrivingReview review = DrivingReviewer.review(diagnosis);
        Map<DrivingMeasure, Double> spans = new EnumMap<>(DrivingMeasure.class);
        List<Column> columns = new ArrayList<>();
        for (DrivingMeasure measure : DrivingMeasure.values()) {
            double span = span(measure, table);
            spans.put(measure, span);
            columns.add(
                    new Column(Figures.capital(measure.measure().words()), "\u00b1 " + shown(measure, span, figures)));
        }
        return new DrivingView(
                link,
                columns,
                table.rows().stream()
                        .map(row -> row(
                                row,
                                diagnosis.repeatability().at(row.corner().number()),
                                review.at(row.corner().number()),
                                spans,
                                figures))
                        .toList(),
                diagnosis.faults().stream().map(fault -> row(fault, figures)).toList());
    }

    private static FaultRow row(DrivingFault fault, Figures figures) {
        return new FaultRow(
                Figures.capital(fault.kind()),
                Figures.corners(fault.corners()) + ", " + figures.percent(fault.lapShare()),
                CoachWords.size(fault.unit(), fault.size(), figures),
                CoachWords.proof(fault).orElse(NOTHING),
                fault.cost().map(cost -> CoachWords.cost(cost, figures)).orElse(NOTHING));
    }

    private static String cost(MovingEvent event, Figures figures) {
        return event.cost()
                .map(cost -> event.source() == Source.PHYSICS
                        ? "up to " + figures.seconds(cost.high(), 2) + " (physics)"
                        : CoachWords.cost(cost, figures) + ", " + event.better() + " pays")
                .orElse(event.source().words());
    }

    private static CornerRow row(
            Row row,
            Optional<AtCorner> judged,
            Optional<DrivingReview.AtCorner> review,
            Map<DrivingMeasure, Double> spans,
            Figures figures) {
        List<MeasureCell> cells = Arrays.stream(DrivingMeasure.values())
                .map(measure -> cell(row, judged, measure, spans.getOrDefault(measure, 1.0), figures))
                .toList();
        String verdict = row.repeatable() ? "steady" : "left out";
        return new CornerRow(
                row.corner().number(),
                row.repeatable(),
                verdict,
                review.map(found -> CoachWords.power(found, figures)).orElse(NOTHING),
                review.flatMap(DrivingReview.AtCorner::spread)
                        .map(gain -> figures.seconds(gain.seconds(), 2))
                        .orElse(NOTHING),
                review.flatMap(DrivingReview.AtCorner::event)
                        .map(event -> CoachWords.event(event, figures))
                        .orElse(NOTHING),
                review.flatMap(DrivingReview.AtCorner::event)
                        .map(event -> cost(event, figures))
                        .orElse(NOTHING),
                cells);
    }

    private static MeasureCell cell(
            Row row, Optional<AtCorner> judged, DrivingMeasure measure, double span, Figures figures) {
        double[] values = values(row, measure);
        Spread spread = Spread.of(values);
        boolean worst =
                judged.filter(entry -> entry.worst() == measure.measure()).isPresent();
        if (spread.count() < 2) {
            return new MeasureCell("\u2013", new Markup(""), worst);
        }
        return new MeasureCell(shown(measure, spread.scatter(), figures), dots(values, spread.median(), span), worst);
    }

    private static double[] values(Row row, DrivingMeasure measure) {
        return row.passes().stream()
                .mapToDouble((CornerPass pass) -> measure.of(pass).orElse(Double.NaN))
                .toArray();
    }

    /** One span for all corners, so that their scatters compare by eye: what nine in ten passes stay within. */
    private static double span(DrivingMeasure measure, BalanceTable table) {
        double[] away = table.rows().stream()
                .flatMapToDouble(row -> {
                    double[] values = values(row, measure);
                    double median = Spread.of(values).median();
                    return Arrays.stream(values).map(v -> Math.abs(v - median));
                })
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        return away.length == 0 ? 1.0 : Math.max(0.1, 1.5 * away[(int) (0.9 * (away.length - 1))]);
    }

    private static String shown(DrivingMeasure measure, double value, Figures figures) {
        return measure == DrivingMeasure.LOWEST_SPEED
                ? figures.number(figures.units().speed(value), 1) + " "
                        + figures.units().speedUnit()
                : figures.distance(value);
    }

    private static Markup dots(double[] values, double median, double span) {
        Scale y = new Scale(-span, span, HEIGHT - 3.0, 3.0);
        String middle = Svg.number(MIDDLE);
        Svg svg = new Svg()
                .open("svg", "class", "plot", "width", "100%", "height", String.valueOf(HEIGHT), "aria-hidden", "true");
        svg.add("line", "class", "grid", "x1", "0", "x2", "100%", "y1", middle, "y2", middle);
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i])) {
                double away = values[i] - median;
                svg.add(
                        "circle",
                        "class",
                        Math.abs(away) > span ? "dot beyond" : "dot",
                        "cx",
                        Svg.percent((i + 0.5) / values.length),
                        "cy",
                        Svg.number(y.within(away)),
                        "r",
                        "2.2");
            }
        }
        return svg.close().markup();
    }
}
