/**
 * Work that takes longer than a page may wait: done one after the other, watched and stopped from any tab. In: pieces of work. Out: how
 * far each has come, told to all who listen.
 */
@NullMarked
package setwright.app.server.job;

import org.jspecify.annotations.NullMarked;
