package setwright.app.server.day;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import setwright.core.recording.Quantity;
import setwright.intake.map.Dimension;
import setwright.intake.map.MapEntry;
import setwright.intake.map.Proposal;
import setwright.intake.map.Unit;
import setwright.intake.map.Units;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/**
 * How a recording's columns are understood, for the page to show and to correct.
 *
 * @param columns     headers, in the file's order
 * @param entries     what is believed, each with why
 * @param quantities  all that a column could be
 * @param remarks     what was odd, in sentences
 * @param map         key of the map as a file, once it was corrected; empty before
 */
record Understood(
        List<String> columns, List<Entry> entries, List<Choice> quantities, List<String> remarks, String map) {
    Understood {
        columns = List.copyOf(columns);
        entries = List.copyOf(entries);
        quantities = List.copyOf(quantities);
        remarks = List.copyOf(remarks);
    }

    /**
     * A quantity with its column.
     *
     * @param quantity  its name in maps
     * @param otherWay  whether the column counts the other way round than ISO 8855 does
     * @param evidence  why, headers first, then physics, each in a sentence
     */
    record Entry(String quantity, String column, String unit, boolean otherWay, List<String> evidence) {}

    /**
     * A quantity that a column could be.
     *
     * @param quantity  its name in maps
     * @param words     for people
     * @param units     that its column may have
     */
    record Choice(String quantity, String words, List<String> units) {}

    static Understood of(Table table, Proposal proposal, String map) {
        return new Understood(
                table.columns().stream().map(TableColumn::header).toList(),
                proposal.reasons().stream().map(Understood::entry).toList(),
                Arrays.stream(Quantity.values())
                        .map(quantity -> choice(quantity, proposal))
                        .toList(),
                proposal.remarks(),
                map);
    }

    private static Entry entry(Proposal.Reason reason) {
        MapEntry entry = reason.entry();
        return new Entry(
                reason.quantity().name(),
                entry.column(),
                entry.unit().symbol(),
                entry.sign() < 0,
                Stream.of(reason.words(), reason.physics())
                        .filter(text -> !text.isBlank())
                        .toList());
    }

    /** Its usual units, and the one that was found where that is a special one. */
    private static Choice choice(Quantity quantity, Proposal proposal) {
        List<String> units = Stream.concat(
                        Arrays.stream(Dimension.values())
                                .filter(dimension -> Dimension.fits(quantity, dimension))
                                .flatMap(dimension -> Units.of(dimension).stream()),
                        proposal.map().entry(quantity).map(MapEntry::unit).stream())
                .map(Unit::symbol)
                .distinct()
                .toList();
        return new Choice(quantity.name(), quantity.words(), units);
    }
}
