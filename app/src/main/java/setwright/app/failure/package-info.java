/** What went wrong, in words: the same for the terminal and the page. In: any failure. Out: one message that says what to do. */
@NullMarked
package setwright.app.failure;

import org.jspecify.annotations.NullMarked;
