package setwright.app.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.evidence.BalanceTable;
import setwright.app.predict.PredictionAnswer;
import setwright.app.predict.PresentBalance;
import setwright.app.story.PredictionWords;
import setwright.app.story.Story;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.text.TextTable.Style;
import setwright.app.units.Figures;
import setwright.core.circuit.Stint;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.CornerEffect;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;

/** What a change of setup would do, as lines of text: the answer in words first, then where. */
public final class PredictionText {
    private final PredictionAnswer answer;
    private final Figures figures;
    private final PredictionWords words;
    private final PresentBalance now;
    private final TextLines lines;

    private PredictionText(PredictionAnswer answer, Figures figures, Terminal terminal) {
        this.answer = answer;
        this.figures = figures;
        this.words = new PredictionWords(answer, figures);
        this.now = PresentBalance.of(answer);
        this.lines = new TextLines(terminal);
    }

    /** Returns the text, ending with a line break; the answer holds at least one prediction. */
    public static String write(PredictionAnswer answer, Figures figures, Terminal terminal) {
        PredictionText text = new PredictionText(answer, figures, terminal);
        if (answer.asked()) {
            text.one(answer.predictions().get(0));
        } else {
            text.all();
        }
        text.lines.gap();
        text.lines.faint(Story.CAUTION);
        return text.lines.text();
    }

    private void laps() {
        Stint stint = answer.answer().diagnosis().stint();
        lines.faint(stint.recording().name() + ", " + answer.answer().car().description() + ", on "
                + stint.goodLaps().size() + " laps");
    }

    private void one(Prediction prediction) {
        lines.wide(words.headline(prediction));
        laps();
        lines.gap();
        lines.paragraph("Balance", "Change in deg: + toward understeer, - toward oversteer.");
        lines.table(phases(prediction));
        lines.note(
                "Below each change: the range that holds eight tenths of what the car may be, and the balance now. In"
                        + " brackets: the sign is not sure, " + PredictionWords.OPEN + ".");
        words.selectivity(prediction).ifPresent(text -> lines.paragraph("", text));
        lines.gap();
        lines.paragraph("Corners", "Change of balance in deg and of time in s; - is quicker.");
        lines.table(corners(prediction));
        if (!prediction.reasons().isEmpty()) {
            lines.gap();
            lines.paragraphs(
                    "Why", prediction.reasons().stream().map(figures::told).toList());
        }
        List<String> doubts = words.doubts(prediction);
        if (!doubts.isEmpty()) {
            lines.gap();
            lines.paragraphs("Doubts", doubts);
        }
    }

    private TextTable phases(Prediction prediction) {
        List<Optional<SpeedClass>> classes = new ArrayList<>();
        Arrays.stream(SpeedClass.values())
                .filter(speed -> prediction.phases().stream()
                        .anyMatch(effect -> effect.speedClass().equals(Optional.of(speed))))
                .forEach(speed -> classes.add(Optional.of(speed)));
        classes.add(Optional.empty());
        List<Column> columns = new ArrayList<>(List.of(new Column("", false, 9)));
        classes.forEach(speed -> columns.add(
                new Column(speed.map(SpeedClass::words).orElse("all") + " corners", true, speed.isEmpty() ? 8 : 5)));
        List<List<Cell>> rows = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            if (prediction.phases().stream().anyMatch(effect -> effect.phase() == phase)) {
                List<Optional<Effect>> effects = classes.stream()
                        .map(speed -> prediction.balance(phase, speed))
                        .toList();
                rows.add(row(
                        phase.words(),
                        effects.stream()
                                .map(e -> e.map(this::moved).orElse(Cell.of("")))
                                .toList()));
                rows.add(row(
                        "",
                        effects.stream()
                                .map(e -> e.map(this::range).orElse(Cell.of("")))
                                .toList()));
                rows.add(row(
                        "", classes.stream().map(speed -> present(phase, speed)).toList()));
            }
        }
        return new TextTable(columns, rows);
    }

    private static List<Cell> row(String name, List<Cell> cells) {
        List<Cell> row = new ArrayList<>(List.of(Cell.of(name)));
        row.addAll(cells);
        return row;
    }

    private Cell moved(Effect effect) {
        double degrees = Math.toDegrees(effect.central());
        String value = figures.signed(degrees, 2);
        if (!effect.signSure()) {
            return new Cell("(" + value + ")", Style.FAINT);
        }
        return switch (value.charAt(0)) {
            case '+' -> new Cell(value + " under", Style.PUSH);
            case '-' -> new Cell(value + " over", Style.SLIDE);
            default -> Cell.of(value); // sure, but smaller than is shown
        };
    }

    private Cell range(Effect effect) {
        return new Cell(
                figures.signed(Math.toDegrees(effect.low()), 2) + " to "
                        + figures.signed(Math.toDegrees(effect.high()), 2),
                Style.FAINT);
    }

    private Cell present(Phase phase, Optional<SpeedClass> speed) {
        OptionalDouble rad = now.rad(phase, speed);
        return rad.isEmpty()
                ? Cell.of("")
                : new Cell("now " + figures.signed(Math.toDegrees(rad.getAsDouble()), 2), Style.FAINT);
    }

    private TextTable corners(Prediction prediction) {
        List<Column> columns = List.of(
                new Column("corner", true, 9),
                new Column("turn", false, 3),
                new Column("braking", true, 6),
                new Column("entry", true, 6),
                new Column("mid", true, 6),
                new Column("exit", true, 6),
                new Column("time, s", true, 8),
                new Column("range", true, 2));
        List<List<Cell>> rows = new ArrayList<>();
        for (CornerEffect corner : prediction.corners()) {
            List<Cell> row = new ArrayList<>();
            row.add(Cell.of(String.valueOf(corner.corner())));
            row.add(Cell.of(turn(corner)));
            for (Phase phase : Phase.values()) {
                row.add(corner.balance(phase).map(this::moveOnly).orElse(Cell.of("")));
            }
            row.add(time(corner.timeS()));
            row.add(timeRange(corner.timeS()));
            rows.add(row);
        }
        List<Cell> lap = new ArrayList<>(List.of(Cell.of("lap"), Cell.of("")));
        for (Phase phase : Phase.values()) {
            lap.add(prediction
                    .balance(phase, Optional.empty())
                    .map(this::moveOnly)
                    .orElse(Cell.of("")));
        }
        lap.add(time(prediction.lapTimeS()));
        lap.add(timeRange(prediction.lapTimeS()));
        rows.add(lap);
        return new TextTable(columns, rows);
    }

    private String turn(CornerEffect corner) {
        return now.table().rows().stream()
                        .filter(row -> row.corner().number() == corner.corner())
                        .findFirst()
                        .map(PredictionText::direction)
                        .orElse("")
                + corner.speedClass().words();
    }

    private static String direction(BalanceTable.Row row) {
        return row.corner().direction().name().toLowerCase(Locale.ROOT) + ", ";
    }

    private Cell moveOnly(Effect effect) {
        return bracketed(figures.signed(Math.toDegrees(effect.central()), 2), effect);
    }

    private Cell time(Effect effect) {
        return bracketed(figures.signed(effect.central(), 3), effect);
    }

    private Cell timeRange(Effect effect) {
        return new Cell(figures.signed(effect.low(), 3) + " to " + figures.signed(effect.high(), 3), Style.FAINT);
    }

    private static Cell bracketed(String value, Effect effect) {
        return effect.signSure() ? Cell.of(value + " ") : new Cell("(" + value + ")", Style.FAINT);
    }

    private void all() {
        lines.wide(words.summary() + " " + words.first());
        laps();
        words.driving().forEach(lines::faint);
        lines.gap();
        List<Column> columns = List.of(
                new Column("change", false, 9),
                new Column("lap, s", true, 8),
                new Column("range", true, 4),
                new Column("sure", true, 5),
                new Column("braking", true, 6),
                new Column("entry", true, 6),
                new Column("mid", true, 6),
                new Column("exit", true, 6));
        lines.wide(new TextTable(
                columns, answer.predictions().stream().map(this::candidate).toList()));
        lines.gap();
        lines.faint(
                "One step each way, quickest first. Lap time in s, - is quicker; balance by phase over all corners in"
                        + " deg, + toward understeer. In brackets: the sign is not sure, " + PredictionWords.OPEN
                        + ". A narrow window leaves columns out; --json and --html have all. For one change in full: predict with"
                        + " ITEM=VALUE.");
    }

    private List<Cell> candidate(Prediction prediction) {
        List<Cell> row = new ArrayList<>();
        Effect time = prediction.lapTimeS();
        row.add(Cell.of(words.change(prediction).replace(Figures.KEPT_TOGETHER, ' ')));
        row.add(time(time));
        row.add(timeRange(time));
        row.add(new Cell(figures.sureness(time.probabilityOfSign()).replace(Figures.KEPT_TOGETHER, ' '), Style.FAINT));
        for (Phase phase : Phase.values()) {
            row.add(prediction
                    .balance(phase, Optional.empty())
                    .map(this::moveOnly)
                    .orElse(Cell.of("")));
        }
        return row;
    }
}
