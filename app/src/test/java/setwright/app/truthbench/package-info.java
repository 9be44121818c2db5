/**
 * How often the answers are right on many random simulated stints; started by {@code ./truthbench}.
 *
 * <p>In: a seed. Out: hit rates with intervals, printed, and recorded into the page about accuracy. A case is drawn ({@code CaseDraw}),
 * driven with and without its fault, written as files, read and judged like a user's ({@code CaseRun}), and scored
 * ({@code Scoring}) against {@link setwright.core.simulation.truth}.
 */
package setwright.app.truthbench;
