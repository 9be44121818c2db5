package setwright.intake.map;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import setwright.core.recording.Quantity;

/**
 * Which column holds which quantity, in which unit and direction.
 *
 * @param entries  one per known quantity; quantities that were not recorded are absent
 */
public record ChannelMap(Map<Quantity, MapEntry> entries) {
    public ChannelMap {
        Map<Quantity, MapEntry> copy = new EnumMap<>(Quantity.class);
        copy.putAll(entries);
        entries = Collections.unmodifiableMap(copy);
    }

    /** Returns the entry of a quantity. */
    public Optional<MapEntry> entry(Quantity quantity) {
        return Optional.ofNullable(entries.get(quantity));
    }

    /** Tells whether the quantity is mapped. */
    public boolean has(Quantity quantity) {
        return entries.containsKey(quantity);
    }
}
