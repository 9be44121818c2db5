package setwright.core.replay;

/** Where a lap is on the way from a slowest to a fastest point, and where on the way back. */
final class SpeedTrend {
    /** A rise or fall of the speed by less than this share is no trend. */
    private static final double SHARE = 0.02;

    private SpeedTrend() {}

    /** Returns for each moment whether speed rises there from a slowest to a fastest point; turning points count as the latter part. */
    static boolean[] rising(DrivenLap lap) {
        int count = lap.size();
        boolean[] rising = new boolean[count];
        boolean up = true;
        int extreme = 0;
        int from = 0;
        for (int k = 1; k < count; k++) {
            double speed = lap.moments().get(k).speed();
            double best = lap.moments().get(extreme).speed();
            if (up ? speed >= best : speed <= best) {
                extreme = k;
            } else if (up ? speed < (1.0 - SHARE) * best : speed > (1.0 + SHARE) * best) {
                for (int j = from; j <= extreme; j++) {
                    rising[j] = up;
                }
                from = extreme + 1;
                up = !up;
                extreme = k;
            }
        }
        for (int j = from; j < count; j++) {
            rising[j] = up;
        }
        return rising;
    }
}
