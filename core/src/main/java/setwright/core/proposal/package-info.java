/**
 * What to do next: technique first, then the one change.
 *
 * <p>{@code Turns} lists what can be turned, {@code ImbalanceCost} weighs what a turn
 * does to the balance everywhere, {@code GuardRails} refuses what would do harm, {@code LimitLap} what would slow the car at its limit,
 * {@code Ties} puts first what is undone most easily, and {@link setwright.core.proposal.Proposer} chooses.
 */
@NullMarked
package setwright.core.proposal;

import org.jspecify.annotations.NullMarked;
