package setwright.core.replay;

import setwright.core.recording.Channel;

/**
 * A change over the lap, for plots; channels of equal length along the reference line.
 *
 * @param station      m from the start line, rising
 * @param balance      change of the balance angle, rad, middle of the draws; NaN where the car hardly corners
 * @param balanceLow   a tenth of the draws lie below, rad
 * @param balanceHigh  a tenth of the draws lie above, rad
 * @param timeS        time gained (negative) or lost since the start line, s, middle of the draws
 * @param speed        speed that was driven, m/s
 */
public record LapEffect(
        Channel station, Channel balance, Channel balanceLow, Channel balanceHigh, Channel timeS, Channel speed) {}
