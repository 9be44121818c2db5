/**
 * Drawing: scales, axes, paths and SVG elements, nothing that knows of cars.
 *
 * <p>In: numbers. Out: {@link setwright.app.plot.Markup} whose texts and attributes are escaped.
 */
@NullMarked
package setwright.app.plot;

import org.jspecify.annotations.NullMarked;
