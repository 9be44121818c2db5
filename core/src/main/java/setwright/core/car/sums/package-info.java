/**
 * The everyday sums of the trade: closed formulas, each with its source, none with a state.
 *
 * <p>In: plain numbers in SI units (m, s, kg, N, Pa, rad, K), ISO 8855 signs. Out: plain numbers in SI units. A static
 * formula trusts its arguments; a record checks them. Whatever cannot be had (a circle that no speed is too fast for) is
 * empty, never a made-up number. "Value from memory" marks a constant or formula whose printed source was not at hand.
 */
@NullMarked
package setwright.core.car.sums;

import org.jspecify.annotations.NullMarked;
