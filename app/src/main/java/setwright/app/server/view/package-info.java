/** What every live page is made of: frame, units, day or night. In: a request. Out: a document. */
@NullMarked
package setwright.app.server.view;

import org.jspecify.annotations.NullMarked;
