/**
 * Which column is what, in which unit and direction: proposed from words and from physics, checked, kept as a file.
 *
 * <p>In: a {@link setwright.intake.table.Table}. Out: {@link setwright.intake.map.ChannelMap} and the evidence for each of its entries.
 */
@NullMarked
package setwright.intake.map;

import org.jspecify.annotations.NullMarked;
