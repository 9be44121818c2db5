/**
 * The chain of reasoning in sentences: laps, driving, balance, cause, pattern, verdict.
 *
 * <p>In: an {@link setwright.app.evidence.Answer}. Out: a {@link setwright.app.story.Story}, plain sentences with their figures, the
 * same in the terminal and in the report.
 */
@NullMarked
package setwright.app.story;

import org.jspecify.annotations.NullMarked;
