/**
 * What is kept from one day to the next: use cases on a logbook.
 *
 * <p>In: recordings with their car sheets, changes of setup, trials, notes. Out: stints that can be judged again at any time, versions of setups,
 * verdicts, and what was learnt of each car. The tables are {@code setwright.logbook}'s; here their rows get their meaning.
 */
@NullMarked
package setwright.app.logbook;

import org.jspecify.annotations.NullMarked;
