/**
 * Numerical tools that the physics needs and Hipparchus lacks: zero-phase filters that respect gaps, derivatives by local
 * polynomials, periodic smoothing splines, robust statistics, lags between signals.
 *
 * <p>In and out: plain {@code double[]}; NaN marks missing samples. Nothing here knows of cars.
 */
@NullMarked
package setwright.core.numerics;

import org.jspecify.annotations.NullMarked;
