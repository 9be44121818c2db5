package setwright.intake.map;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Found;
import setwright.intake.map.Search.Standing;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/**
 * Proposes which column is what, from the words of the headers and from how the columns follow each other.
 *
 * <p>The order matters: time first, then where the car is, its speed, what the speed's change and the path's turning explain,
 * then the pedals that cause it, then the rest. What physics confirms is believed against a header that says otherwise, and
 * said so; what neither tells is left out, and said so.
 */
public final class MapProposer {
    /** No lap of a circuit is shorter, and the comparisons need some corners, s. */
    private static final double SHORTEST_S = 20.0;

    private MapProposer() {}

    /**
     * Proposes a map.
     *
     * @param table  as read
     * @param car    for wheelbase, steering ratio, tyre radius and brake pressure, when known
     * @throws setwright.intake.problem.InputProblem when there is no usable time
     */
    public static Proposal propose(Table table, Optional<CarSheet> car) {
        return conclude(search(table, car, Optional.empty()));
    }

    /**
     * Puts a user's map to the test.
     *
     * @throws setwright.intake.problem.InputProblem when a column is missing or the data contradict the map, with the figures
     */
    public static Proposal check(Table table, ChannelMap map, Optional<CarSheet> car) {
        return MapCheck.check(table, map, car);
    }

    /** Returns the times of all rows, s, rising, as a map tells them. */
    public static double[] timesS(Table table, ChannelMap map) {
        return TimeColumn.find(table, map.entry(Quantity.TIME)).timesS();
    }

    /**
     * Returns which column tells the time, by a map or by its beginning.
     *
     * @throws setwright.intake.problem.InputProblem when there is none
     */
    public static MapEntry time(Table beginning, Optional<ChannelMap> given) {
        Optional<MapEntry> told = given.flatMap(map -> map.entry(Quantity.TIME));
        TimeColumn found = TimeColumn.find(beginning, told);
        return new MapEntry(beginning.columns().get(found.index()).header(), found.unit(), 1, 0.0);
    }

    static Search search(Table table, Optional<CarSheet> car, Optional<ChannelMap> given) {
        TimeColumn time = TimeColumn.find(table, given.flatMap(map -> map.entry(Quantity.TIME)));
        refuseShort(table, time.timesS());
        Search search = new Search(new Signals(table, time.timesS()), car, given);
        search.accept(Quantity.TIME, time.index(), time.unit(), 1, 0.0, Standing.CONFIRMED, time.physics());
        PlaceSearch.run(search);
        SpeedSearch.run(search);
        if (search.get(Quantity.SPEED).isPresent()) {
            PullSearch.run(search);
            LateralSearch.run(search);
            BrakePressureSearch.run(search);
            PedalSearch.run(search);
            WheelSearch.run(search);
            DistanceSearch.run(search);
        }
        RestSearch.run(search);
        return search;
    }

    private static void refuseShort(Table table, double[] timesS) {
        double seconds = timesS[timesS.length - 1] - timesS[0];
        if (seconds < SHORTEST_S) {
            throw InputProblem.in(table.file())
                    .expected("rows for at least one lap")
                    .found(Search.text("%d rows that last %.1f s", timesS.length, seconds))
                    .advice("Export whole laps.")
                    .problem();
        }
    }

    static Proposal conclude(Search search) {
        Map<Quantity, MapEntry> entries = new EnumMap<>(Quantity.class);
        List<Proposal.Reason> reasons = new ArrayList<>();
        for (Map.Entry<Quantity, Found> item : search.found.entrySet()) {
            Found found = item.getValue();
            entries.put(item.getKey(), found.entry());
            String words = found.wordScore() > 0.0
                    ? Search.text("its header reads like %s", item.getKey().words())
                    : "its header says nothing";
            reasons.add(new Proposal.Reason(item.getKey(), found.entry(), confidence(found), words, found.physics()));
        }
        List<String> remarks = new ArrayList<>(search.table().remarks());
        remarks.addAll(search.remarks);
        List<String> unused = new ArrayList<>();
        for (TableColumn column : search.table().columns()) {
            boolean used = entries.values().stream().anyMatch(e -> e.column().equals(column.header()));
            if (!used) {
                unused.add(column.header());
            }
            if (!used && search.isConstantAndNamed(column.header())) {
                remarks.add("Column '" + column.header()
                        + (column.finiteCount() == 0 ? "' holds no number." : "' never changes."));
            }
        }
        if (!unused.isEmpty()) {
            remarks.add("Not used: " + String.join(", ", unused) + ".");
        }
        return new Proposal(new ChannelMap(entries), reasons, remarks);
    }

    /** Words alone leave a doubt; data that agree remove most of it. */
    private static double confidence(Found found) {
        double doubt = 1.0 - 0.85 * found.wordScore();
        return switch (found.standing()) {
            case CONFIRMED -> 1.0 - 0.1 * doubt;
            case SILENT -> 1.0 - doubt;
            case AGAINST -> 0.0;
        };
    }
}
