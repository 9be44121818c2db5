/**
 * The answer in a terminal.
 *
 * <p>In: a {@link setwright.app.story.Story} and its tables, or sums worked out. Out: lines that fit the
 * width, with colour only where wanted.
 */
@NullMarked
package setwright.app.text;

import org.jspecify.annotations.NullMarked;
