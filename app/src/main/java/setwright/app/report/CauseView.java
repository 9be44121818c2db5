package setwright.app.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import setwright.app.evidence.Answer;
import setwright.app.evidence.BalanceTable;
import setwright.app.evidence.BalanceTable.Row;
import setwright.app.evidence.Spread;
import setwright.app.evidence.TraceBuilder;
import setwright.app.plot.Markup;
import setwright.app.story.FindingWords;
import setwright.app.story.Story;
import setwright.app.units.Figures;
import setwright.core.handling.HandsEvent;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Trigger;

/**
 * What the cause link shows: triggers, hands, and the traces of each corner.
 *
 * @param link      the argument
 * @param about     the finding that the triggers are of; empty without findings
 * @param triggers  most probable first
 * @param hands     most frequent first
 * @param panels    one per corner, in driving order
 * @param chosen    corner shown first
 * @param chains    why, one for each finding, or one for a verdict without
 * @param technique what the driver can do himself
 */
public record CauseView(
        Story.Link link,
        String about,
        List<TriggerBar> triggers,
        List<HandsRow> hands,
        List<CornerPanel> panels,
        int chosen,
        List<ChainView> chains,
        List<TechniqueRow> technique) {

    /** Less probable triggers are added up. */
    private static final double LEAST_SHOWN = 0.1;

    /** A trigger with its probability, also as a whole per cent for the bar's width. */
    public record TriggerBar(String words, String probability, int percent) {}

    /** One gesture in one corner. */
    public record HandsRow(
            int corner, String kind, String meaning, String passes, String where, String lasts, String size) {}

    /**
     * The traces of one corner.
     *
     * @param corner   number
     * @param facts    in one line
     * @param best     which lap was quickest here
     * @param reference what the balance is held against
     * @param laps     how many laps are drawn
     * @param plots    one per quantity
     */
    public record CornerPanel(int corner, String facts, String best, String reference, int laps, List<Panel> plots) {}

    /** One drawing with its title and unit. */
    public record Panel(String title, String unit, Markup plot) {}

    static CauseView of(Answer answer, BalanceTable table, CornerFacts facts, Story story, Figures figures) {
        List<Finding> findings = answer.diagnosis().findings();
        TraceBuilder traces = new TraceBuilder(answer);
        TracePlot plot = new TracePlot(
                figures, facts, table.baseline().map(name -> "the baseline").orElse("a balanced car"));
        List<CornerPanel> panels = table.rows().stream()
                .map(row -> plot.panel(row, traces.build(row.corner())))
                .toList();
        int chosen = facts.telling().map(row -> row.corner().number()).orElse(0);
        return new CauseView(
                story.cause(),
                findings.stream().findFirst().map(FindingWords::name).orElse(""),
                findings.stream()
                        .findFirst()
                        .map(finding -> triggers(finding, figures))
                        .orElse(List.of()),
                hands(table, figures),
                panels,
                chosen,
                ChainView.of(answer.diagnosis(), figures),
                story.technique().stream()
                        .map(lever -> TechniqueRow.of(lever, figures))
                        .toList());
    }

    private static List<TriggerBar> triggers(Finding finding, Figures figures) {
        List<TriggerBar> bars = new ArrayList<>();
        double rest = 0.0;
        List<Map.Entry<Trigger, Double>> sorted = finding.triggers().entrySet().stream()
                .sorted(Map.Entry.<Trigger, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .toList();
        for (Map.Entry<Trigger, Double> entry : sorted) {
            if (bars.isEmpty() || entry.getValue() >= LEAST_SHOWN) {
                String words = entry.getKey() == Trigger.NONE
                        ? "no single input"
                        : entry.getKey().words();
                bars.add(bar(words, entry.getValue(), figures));
            } else {
                rest += entry.getValue();
            }
        }
        if (rest >= 0.01) {
            bars.add(bar("any other", rest, figures));
        }
        return bars;
    }

    private static TriggerBar bar(String words, double probability, Figures figures) {
        return new TriggerBar(words, figures.probability(probability), (int) Math.round(100.0 * probability));
    }

    private static List<HandsRow> hands(BalanceTable table, Figures figures) {
        record Counted(int count, HandsRow row) {}
        List<Counted> rows = new ArrayList<>();
        for (Row row : table.rows()) {
            Map<HandsEvent.Kind, List<HandsEvent>> byKind = new EnumMap<>(HandsEvent.Kind.class);
            row.passes().stream()
                    .flatMap(pass -> pass.hands().stream())
                    .forEach(event -> byKind.computeIfAbsent(event.kind(), kind -> new ArrayList<>())
                            .add(event));
            byKind.forEach((kind, events) -> {
                int passes = (int) row.passes().stream()
                        .filter(pass -> pass.hands().stream().anyMatch(event -> event.kind() == kind))
                        .count();
                rows.add(new Counted(passes, hands(row, kind, passes, events, figures)));
            });
        }
        return rows.stream()
                .sorted(Comparator.comparingInt(Counted::count).reversed())
                .map(Counted::row)
                .toList();
    }

    private static HandsRow hands(Row row, HandsEvent.Kind kind, int passes, List<HandsEvent> events, Figures figures) {
        String phase = events.stream()
                .collect(java.util.stream.Collectors.groupingBy(
                        HandsEvent::phase, java.util.stream.Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(entry -> entry.getKey().words())
                .orElse("");
        return new HandsRow(
                row.corner().number(),
                kind.words(),
                FindingWords.meaning(kind),
                passes + " of " + row.passes().size(),
                phase,
                figures.seconds(
                        Spread.of(events.stream()
                                        .mapToDouble(HandsEvent::durationS)
                                        .toArray())
                                .median(),
                        2),
                figures.number(
                                Math.toDegrees(Spread.of(events.stream()
                                                .mapToDouble(HandsEvent::sizeRad)
                                                .toArray())
                                        .median()),
                                0)
                        + " deg");
    }
}
