package setwright.intake.map;

import java.util.List;
import setwright.core.recording.Quantity;

/**
 * A channel map with the reasons for it.
 *
 * @param map      the map
 * @param reasons  one per entry of the map, in the order of {@link Quantity}
 * @param remarks  what could not be told, what is odd, which columns are not used, each in a sentence
 */
public record Proposal(ChannelMap map, List<Reason> reasons, List<String> remarks) {
    public Proposal {
        reasons = List.copyOf(reasons);
        remarks = List.copyOf(remarks);
    }

    /**
     * Why a column is taken for a quantity.
     *
     * @param quantity    what it is taken for
     * @param entry       how it is read
     * @param confidence  0..1
     * @param words       what the header says, in a sentence
     * @param physics     what the data say, in a sentence with figures; empty when they say nothing
     */
    public record Reason(Quantity quantity, MapEntry entry, double confidence, String words, String physics) {}
}
