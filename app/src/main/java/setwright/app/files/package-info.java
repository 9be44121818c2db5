/**
 * Files written whole or not at all.
 *
 * <p>In: a path and its content. Out: the file, written beside its place and then renamed.
 */
@NullMarked
package setwright.app.files;

import org.jspecify.annotations.NullMarked;
