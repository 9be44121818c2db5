/**
 * The page of a trial: what to do with the change, each lap of each run, and what was predicted beside what was measured.
 */
@NullMarked
package setwright.app.report.trial;

import org.jspecify.annotations.NullMarked;
