package setwright.app.evidence;

import java.util.List;
import setwright.intake.map.Proposal;

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

    /** Says how the columns of a file were understood, for people. */
    public static List<ChannelNote> of(Proposal proposal) {
        return proposal.reasons().stream()
                .map(reason -> new ChannelNote(
                        reason.entry().column(),
                        reason.quantity().words() + (reason.entry().sign() < 0 ? ", counted the other way" : ""),
                        reason.entry().unit().symbol(),
                        List.of(reason.words(), reason.physics()).stream()
                                .filter(text -> !text.isBlank())
                                .toList()))
                .toList();
    }
}
