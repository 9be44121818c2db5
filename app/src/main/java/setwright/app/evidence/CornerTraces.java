package setwright.app.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import setwright.core.recording.Channel;

/**
 * Traces of all judged laps through one corner, on equal stations.
 *
 * @param corner    corner number
 * @param stationM  of each point, m along the reference line, unwrapped
 * @param laps      lap numbers that are drawn
 * @param bestLap   the lap that was quickest through the corner
 * @param curves    by kind
 */
public record CornerTraces(
        int corner, Channel stationM, List<Integer> laps, OptionalInt bestLap, Map<TraceKind, Curve> curves) {
    public CornerTraces {
        laps = List.copyOf(laps);
        curves = new EnumMap<>(curves);
    }

    /** Returns the curve of a kind. */
    public Curve curve(TraceKind kind) {
        Curve curve = curves.get(kind);
        if (curve == null) {
            throw new IllegalArgumentException("corner " + corner + " has no curve of " + kind);
        }
        return curve;
    }

    /**
     * One quantity over the stations; NaN where no lap has data.
     *
     * @param typical  median of the laps
     * @param low      lowest of the laps
     * @param high     highest of the laps
     * @param best     the quickest lap
     */
    public record Curve(Channel typical, Channel low, Channel high, Channel best) {}
}
