/**
 * What is wrong with an input, said so that its owner can put it right.
 *
 * <p>In: where the trouble lies, what was expected, what was found. Out: {@link setwright.intake.problem.InputProblem}, the one exception that bad input causes.
 */
@NullMarked
package setwright.intake.problem;

import org.jspecify.annotations.NullMarked;
