package setwright.core.explanation;

import java.util.OptionalDouble;

/**
 * What else it could be.
 *
 * @param what         in a few words
 * @param probability  that it is so, 0..1; empty where nothing tells. They do not add up to 1: several may be so at once
 * @param why          why it is the less likely answer, in one sentence
 */
public record Alternative(String what, OptionalDouble probability, String why) {}
