/**
 * Numerical kernels of the core against general-purpose libraries on the same arrays.
 *
 * <p>In: arrays drawn by chance, always the same ones. Out: first that both give the same result, then times of both. Hipparchus runs in
 * the same Java machine, SciPy in Python where there is one.
 */
@NullMarked
package setwright.benchmarks.kernel;

import org.jspecify.annotations.NullMarked;
