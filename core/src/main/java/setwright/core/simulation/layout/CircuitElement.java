package setwright.core.simulation.layout;

import java.util.List;

/** One part of a racing line, in driving order. */
public sealed interface CircuitElement {

    /** Returns its length along the line, m. */
    double lengthM();

    /** Returns its parts of linear curvature, in driving order; none is of no length. */
    List<CurvaturePiece> pieces();

    /**
     * A straight.
     *
     * @param lengthM  m, &gt; 0
     */
    record Straight(double lengthM) implements CircuitElement {
        public Straight {
            if (!(lengthM > 0.0 && lengthM < 1.0e5)) {
                throw new IllegalArgumentException("a straight needs a length above 0 m, got " + lengthM + " m");
            }
        }

        @Override
        public List<CurvaturePiece> pieces() {
            return List.of(new CurvaturePiece(lengthM, 0.0, 0.0));
        }
    }

    /**
     * A bend: a clothoid in, an arc, a clothoid out. Curvature grows from 0 along the first, stays, and falls to 0 along the last.
     *
     * @param radiusM   of the arc, m, &gt; 0
     * @param angleRad  by which the direction of travel turns in all, rad, left positive, not 0
     * @param inM       length of the clothoid in, m, &gt; 0
     * @param outM      length of the clothoid out, m, &gt; 0
     */
    record Bend(double radiusM, double angleRad, double inM, double outM) implements CircuitElement {
        public Bend {
            if (!(radiusM > 0.0 && inM > 0.0 && outM > 0.0 && Math.abs(angleRad) > 0.0)) {
                throw new IllegalArgumentException("a bend needs a radius, an angle and two clothoids, got " + radiusM
                        + " m, " + Math.toDegrees(angleRad) + " degrees, " + inM + " m and " + outM + " m");
            }
            if (!(arcM(radiusM, angleRad, inM, outM) >= 0.0)) {
                throw new IllegalArgumentException(String.format(
                        java.util.Locale.ROOT,
                        "the clothoids of a bend of %.1f m turn further than its %.1f degrees: shorten them to %.1f m"
                                + " together or less, or widen the bend",
                        radiusM,
                        Math.toDegrees(Math.abs(angleRad)),
                        2.0 * radiusM * Math.abs(angleRad)));
            }
        }

        /** A clothoid turns half as far as an arc of its length. */
        private static double arcM(double radiusM, double angleRad, double inM, double outM) {
            return radiusM * Math.abs(angleRad) - 0.5 * (inM + outM);
        }

        /** Returns the length of the arc between the clothoids, m. */
        public double arcM() {
            return arcM(radiusM, angleRad, inM, outM);
        }

        @Override
        public double lengthM() {
            return inM + arcM() + outM;
        }

        @Override
        public List<CurvaturePiece> pieces() {
            double peak = Math.copySign(1.0 / radiusM, angleRad);
            CurvaturePiece in = new CurvaturePiece(inM, 0.0, peak);
            CurvaturePiece out = new CurvaturePiece(outM, peak, 0.0);
            return arcM() > 0.0 ? List.of(in, new CurvaturePiece(arcM(), peak, peak), out) : List.of(in, out);
        }
    }
}
