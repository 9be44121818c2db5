/** The rows of the logbook's tables, each a record; an id of 0 is one that the database has yet to give. */
@NullMarked
package setwright.logbook.row;

import org.jspecify.annotations.NullMarked;
