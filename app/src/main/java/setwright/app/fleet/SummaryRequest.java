package setwright.app.fleet;

import java.util.Optional;

/**
 * What is asked of the tables.
 *
 * @param in       root of the tables
 * @param master   of the cluster, as Spark names it
 * @param driver   only his recordings
 * @param circuit  only recordings made there
 * @param json     whether the answer is wanted as JSON
 */
public record SummaryRequest(
        String in, String master, Optional<String> driver, Optional<String> circuit, boolean json) {}
