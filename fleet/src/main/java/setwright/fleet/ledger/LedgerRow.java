package setwright.fleet.ledger;

import setwright.fleet.tree.Recorded;

/**
 * What came of one recording.
 *
 * @param recorded        the recording, as it was found
 * @param inputs          digest of its companions' contents
 * @param status          what came of it
 * @param verdict         what to do next; empty where there is none
 * @param reason          why that verdict, or why there is none
 * @param sharedCorners   whether its corners are those of the circuit that others are judged on, too
 * @param laps            found
 * @param judgedLaps      of them
 * @param medianLapS      median time of the judged laps, s; NaN without any
 * @param seconds         taken to judge it, s
 * @param version         of the program
 */
public record LedgerRow(
        Recorded recorded,
        String inputs,
        Status status,
        String verdict,
        String reason,
        boolean sharedCorners,
        int laps,
        int judgedLaps,
        double medianLapS,
        double seconds,
        String version) {}
