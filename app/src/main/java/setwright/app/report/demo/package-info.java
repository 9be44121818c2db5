/**
 * The page of the demo: its acts as text, and the stints drawn beside each other.
 *
 * <p>In: a {@link setwright.app.demo.DemoStory}. Out: one HTML document.
 */
@NullMarked
package setwright.app.report.demo;

import org.jspecify.annotations.NullMarked;
