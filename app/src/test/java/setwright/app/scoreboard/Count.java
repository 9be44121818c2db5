package setwright.app.scoreboard;

/**
 * How often something happened.
 *
 * @param hit  times it did
 * @param of   times it could
 */
public record Count(int hit, int of) {
    public static Count of(boolean right) {
        return new Count(right ? 1 : 0, 1);
    }

    public Count plus(Count other) {
        return new Count(hit + other.hit, of + other.of);
    }

    /** Returns hits over chances, 0..1; NaN without a chance. */
    public double share() {
        return of == 0 ? Double.NaN : (double) hit / of;
    }

    @Override
    public String toString() {
        return hit + " of " + of;
    }
}
