/**
 * How often Setwright is right: its answers on practice cases with a known truth, scored and kept.
 *
 * <p>In: a folder of cases, each with recordings, car sheets and a truth file. Out: the answers beside the truth, totals, and
 * the floor under which no change may fall unnoticed. It lives among the tests because the program must not know a truth.
 */
package setwright.app.scoreboard;
