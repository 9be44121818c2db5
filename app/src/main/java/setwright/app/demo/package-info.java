/**
 * The whole story on simulated laps: too loose to judge, coached, findings, technique, one change, back to back, verdict.
 *
 * <p>In: a car, a circuit and a fault of the invented world. Out: a {@link setwright.app.demo.DemoStory}, every figure of which was
 * computed from the laps just driven, by the same steps that a user's own files go through.
 */
@NullMarked
package setwright.app.demo;

import org.jspecify.annotations.NullMarked;
