package setwright.benchmarks.growth;

import java.util.List;
import setwright.benchmarks.laps.FileShape;
import setwright.benchmarks.laps.TenLaps;

/** What is varied, the rest staying as usual. */
enum Series {
    LAPS("laps", "", List.of(1, 3, 10, 30, 100)),
    RATE("rows per second", "Hz", List.of(10, 25, 50, 100, 200, 400)),
    COLUMNS("columns", "", List.of(10, 20, 40, 100, 200));

    private final String words;
    private final String unit;

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
    private final List<Integer> values;

    Series(String words, String unit, List<Integer> values) {
        this.words = words;
        this.unit = unit;
        this.values = values;
    }

    String words() {
        return words;
    }

    String axis() {
        return unit.isEmpty() ? words : words + ", " + unit;
    }

    List<Integer> points() {
        return values;
    }

    FileShape shape(int value) {
        return switch (this) {
            case LAPS -> FileShape.of(value);
            case RATE -> new FileShape(TenLaps.LAPS, value, FileShape.USUAL_COLUMNS);
            case COLUMNS -> new FileShape(TenLaps.LAPS, FileShape.USUAL_HZ, value);
        };
    }

    /** What stays, in words. */
    String rest() {
        return switch (this) {
            case LAPS -> "100 rows per second, 40 columns";
            case RATE -> "10 laps, 40 columns";
            case COLUMNS -> "10 laps, 100 rows per second";
        };
    }

    /** Name of its drawing. */
    String fileName() {
        return "growth-" + name().toLowerCase(java.util.Locale.ROOT) + ".svg";
    }
}
