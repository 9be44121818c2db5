/**
 * The report's drawings as files of their own, for slides, papers and messages.
 *
 * <p>In: what the report and the page of a change show ({@link setwright.app.report.ReportView}, {@link
 * setwright.app.report.change.PredictionView}). Out: one {@link setwright.app.report.drawings.Drawing} each, an SVG document with its
 * own style, title and description. To add one, add a line in {@link setwright.app.report.drawings.Drawings}.
 */
@NullMarked
package setwright.app.report.drawings;

import org.jspecify.annotations.NullMarked;
