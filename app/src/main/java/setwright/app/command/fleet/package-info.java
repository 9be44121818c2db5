/**
 * The commands for many recordings. In: options. Out: a request to {@link setwright.app.fleet.FleetEngine}, its answer and an exit code.
 * They can be asked for help where the engine's libraries are missing, too.
 */
@NullMarked
package setwright.app.command.fleet;

import org.jspecify.annotations.NullMarked;
