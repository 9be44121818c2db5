package setwright.fleet.tree;

import java.io.Serializable;

/**
 * A recording of a tree with its companions. A companion that is not there is an empty text, so that it can be sent to workers.
 *
 * @param path         of the file, below the tree's root
 * @param bytes        its size
 * @param modifiedMs   when it was changed last, milliseconds since 1970 UTC
 * @param labels       what its folders say
 * @param sheet        path of its car sheet
 * @param map          path of its channel map
 * @param circuitFile  path of the file that its circuit is kept in
 */
public record Recorded(
        String path, long bytes, long modifiedMs, Labels labels, String sheet, String map, String circuitFile)
        implements Serializable {
    /**
     * Returns the name under which recordings of the same circuit come together: what folders call the circuit, else the folder of its
     * circuit file; empty for a recording that stands alone.
     */
    public String circuit() {
        if (!labels.circuit().isEmpty() || circuitFile.isEmpty()) {
            return labels.circuit();
        }
        int end = circuitFile.lastIndexOf('/');
        return end < 0 ? "circuit" : circuitFile.substring(0, end);
    }
}
