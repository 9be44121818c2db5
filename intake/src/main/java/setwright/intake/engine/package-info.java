/**
 * The SQL engine that reads and writes tables, set so that the same file gives the same rows on every machine.
 */
@NullMarked
package setwright.intake.engine;

import org.jspecify.annotations.NullMarked;
