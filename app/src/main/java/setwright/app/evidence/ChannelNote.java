package setwright.app.evidence;

import java.util.List;

/**
 * How one column of a file was understood.
 *
 * @param column    as the file's header names it
 * @param meaning   the quantity, in words
 * @param unit      unit of the column
 * @param evidence  why, one short sentence each
 */
public record ChannelNote(String column, String meaning, String unit, List<String> evidence) {
    public ChannelNote {
        evidence = List.copyOf(evidence);
    }
}
