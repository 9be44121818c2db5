/**
 * The whole car in time, with wheels that turn, lock and spin: what a simulated driver drives.
 *
 * <p>In: a {@link setwright.core.car.model.CarModel} and what hands and feet do. Out: motion, wheel speeds, loads and slips,
 * step by step. Forces and load transfer come from the same tyres, body and aerodynamics as the equilibrium and the replay;
 * what those leave out (wheel inertia, the rolling length in which a tyre builds up its force, tyres that warm up and wear,
 * bumps) is added here.
 */
@NullMarked
package setwright.core.simulation.vehicle;

import org.jspecify.annotations.NullMarked;
