package setwright.intake.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/**
 * The state of one search for a channel map: words per column, what was found so far, and the signals that later steps build on.
 * Used by one thread, within one call.
 */
final class Search {
    /** Typical wheelbase where no car sheet tells it, m; racing and road cars lie within a quarter of it (common practice). */
    private static final double TYPICAL_WHEELBASE_M = 2.7;

    /** How the data stand to a choice. */
    enum Standing {
        CONFIRMED,
        SILENT,
        AGAINST
    }

    /** One choice with its reasons. */
    record Found(int column, MapEntry entry, double wordScore, Standing standing, String physics) {}

    /** A column that may hold a quantity. */
    record Candidate(int column, double wordScore) {}

    final Signals signals;
    final Optional<CarSheet> car;
    final List<HeaderWords> headers = new ArrayList<>();
    private final List<Map<Quantity, Double>> scores = new ArrayList<>();
    private final Optional<ChannelMap> given;
    final Map<Quantity, Found> found = new EnumMap<>(Quantity.class);
    final Set<Integer> claimed = new HashSet<>();
    final List<String> remarks = new ArrayList<>();

    /** Speed on the slow base, m/s; set by the search for speed. */
    double[] speedMps = new double[0];
    /** Its derivative, m/s2. */
    double[] speedRise = new double[0];
    /** From position, when there is one: rate of turn of the path, rad/s, left positive, and speed along it, m/s. */
    Optional<double[]> courseRate = Optional.empty();

    Optional<double[]> pathSpeed = Optional.empty();

    Search(Signals signals, Optional<CarSheet> car, Optional<ChannelMap> given) {
        this.signals = signals;
        this.car = car;
        this.given = given;
        for (TableColumn column : signals.table().columns()) {
            HeaderWords words = HeaderWords.of(column);
            headers.add(words);
            scores.add(Vocabulary.scores(words));
        }
    }

    double wheelbaseM() {
        return car.map(CarSheet::wheelbaseM).orElse(TYPICAL_WHEELBASE_M);
    }

    /** Tells whether a user gave the map, so that only its columns count and its units are to be tested, not believed. */
    boolean isGiven() {
        return given.isPresent();
    }

    Optional<MapEntry> givenEntry(Quantity quantity) {
        return given.flatMap(map -> map.entry(quantity));
    }

    /** Columns whose words fit, best first; the user's column alone when a map was given. */
    List<Candidate> named(Quantity quantity) {
        if (given.isPresent()) {
            return givenEntry(quantity)
                    .flatMap(entry -> signals.indexOf(entry.column()))
                    .map(index -> List.of(new Candidate(index, 1.0)))
                    .orElse(List.of());
        }
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            double score = wordScore(i, quantity);
            if (score > 0.0 && usable(i)) {
                candidates.add(new Candidate(i, score));
            }
        }
        candidates.sort(Comparator.comparingDouble(Candidate::wordScore).reversed());
        return candidates;
    }

    double wordScore(int column, Quantity quantity) {
        if (given.isPresent()) {
            return givenEntry(quantity)
                            .flatMap(entry -> signals.indexOf(entry.column()))
                            .filter(index -> index == column)
                            .isPresent()
                    ? 1.0
                    : 0.0;
        }
        return scores.get(column).getOrDefault(quantity, 0.0);
    }

    /** Columns whose words say nothing at all: only physics can tell what they are. */
    List<Candidate> nameless() {
        List<Candidate> candidates = new ArrayList<>();
        if (given.isPresent()) {
            return candidates;
        }
        for (int i = 0; i < headers.size(); i++) {
            boolean silent = scores.get(i).values().stream().allMatch(score -> score < 0.5);
            if (silent && usable(i) && !Vocabulary.namesSomethingElse(headers.get(i))) {
                candidates.add(new Candidate(i, 0.0));
            }
        }
        return candidates;
    }

    /** Tells whether a column is still free and holds changing numbers. */
    boolean usable(int column) {
        TableColumn values = signals.table().columns().get(column);
        return !claimed.contains(column) && !values.isText() && values.finiteCount() > 1 && !signals.isConstant(column);
    }

    /** The best of the columns whose words fit, also one that holds one value only: the weather need not change. */
    Optional<Candidate> namedOrConstant(Quantity quantity) {
        if (given.isPresent()) {
            return named(quantity).stream().findFirst();
        }
        return IntStream.range(0, headers.size())
                .filter(i -> wordScore(i, quantity) > 0.0 && !claimed.contains(i))
                .filter(i -> !table().columns().get(i).isText()
                        && table().columns().get(i).finiteCount() > 1)
                .mapToObj(i -> new Candidate(i, wordScore(i, quantity)))
                .max(Comparator.comparingDouble(Candidate::wordScore));
    }

    /** Tells whether a column is named like something that is used but holds one value only. */
    boolean isConstantAndNamed(String header) {
        return signals.indexOf(header)
                .filter(i -> !scores.get(i).isEmpty() && signals.isConstant(i))
                .isPresent();
    }

    /** The unit the header names; when a user gave a map it is put to the test and not believed. */
    Optional<Unit> declaredUnit(int column, Quantity quantity) {
        return given.isPresent() ? Optional.empty() : headers.get(column).unitFor(quantity);
    }

    /** The unit that a user's map says, else the one that the header names. */
    Optional<Unit> unit(int column, Quantity quantity) {
        return givenEntry(quantity).map(MapEntry::unit).or(() -> declaredUnit(column, quantity));
    }

    String header(int column) {
        return signals.table().columns().get(column).header();
    }

    void accept(Quantity quantity, int column, Unit unit, int sign, double offset, Standing standing, String physics) {
        MapEntry entry = new MapEntry(header(column), unit, sign, offset);
        found.put(quantity, new Found(column, entry, wordScore(column, quantity), standing, physics));
        claimed.add(column);
    }

    Optional<Found> get(Quantity quantity) {
        return Optional.ofNullable(found.get(quantity));
    }

    void remark(String format, Object... values) {
        remarks.add(text(format, values));
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /** The value of a key that is known to be there. */
    static <V> V at(Map<Quantity, V> map, Quantity key) {
        return Objects.requireNonNull(map.get(key), key.words());
    }

    Table table() {
        return signals.table();
    }
}
