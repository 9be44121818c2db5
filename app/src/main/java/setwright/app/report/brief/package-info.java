/**
 * The brief: one sheet for the driver, in plain words, and one for the engineer.
 *
 * <p>In: an answer with what is proposed. Out: one page in well-formed XHTML, fit for a screen, a printer and the PDF writer.
 */
@NullMarked
package setwright.app.report.brief;

import org.jspecify.annotations.NullMarked;
