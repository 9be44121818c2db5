/**
 * What is really going on in a simulated stint, read off its noiseless signals: the mark that every answer is held against.
 *
 * <p>In: {@link setwright.core.simulation.driven.DriveHistory} of the recorded car and of the same car without its fault, both
 * driven by the same driver with the same random numbers. Out: {@link setwright.core.simulation.truth.TrueProblem} (phase, speed
 * class, sign, strength, corners), {@link setwright.core.simulation.truth.TriggerWitness}, {@link
 * setwright.core.simulation.truth.TruePrice} and {@link setwright.core.simulation.truth.TrueDriving}. Nothing that judges laps may
 * use this package.
 */
@NullMarked
package setwright.core.simulation.truth;

import org.jspecify.annotations.NullMarked;
