/**
 * Pages as PDF.
 *
 * <p>In: a page as well-formed XHTML with simple styles and drawings inside it. Out: a PDF with its own font, that needs no network.
 */
@NullMarked
package setwright.app.pdf;

import org.jspecify.annotations.NullMarked;
