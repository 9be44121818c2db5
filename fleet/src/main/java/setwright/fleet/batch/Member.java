package setwright.fleet.batch;

import java.io.Serializable;
import setwright.fleet.tree.Recorded;

/**
 * A recording that is to be judged.
 *
 * @param recorded  with its companions
 * @param inputs    digest of the companions' contents
 */
public record Member(Recorded recorded, String inputs) implements Serializable {}
