package setwright.core.simulation.layout;

import java.util.List;

/**
 * Draws pieces of linear curvature one after the other.
 *
 * <p>A clothoid's end point is a Fresnel integral without a closed form; five-point Gauss-Legendre quadrature over stretches that
 * turn less than 0.2 rad is exact to rounding (error of order 0.2^10).
 */
final class Pen {
    private static final double LARGEST_TURN = 0.2;

    /** Nodes and weights of five-point Gauss-Legendre quadrature on -1..1 (Abramowitz and Stegun, table 25.4). */
    private static final double[] NODES = {
        -0.906179845938664, -0.538469310105683, 0.0, 0.538469310105683, 0.906179845938664
    };

    private static final double[] WEIGHTS = {
        0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
    };

    private double x;
    private double y;
    private double heading;

    /** Draws whole pieces. */
    void draw(List<CurvaturePiece> pieces) {
        for (CurvaturePiece piece : pieces) {
            draw(piece, 0.0, piece.lengthM());
        }
    }

    /** Draws a piece from one distance from its beginning to another, m. */
    void draw(CurvaturePiece piece, double fromM, double toM) {
        double most = Math.max(Math.abs(piece.curvature(fromM)), Math.abs(piece.curvature(toM)));
        int parts = 1 + (int) (most * (toM - fromM) / LARGEST_TURN);
        double half = 0.5 * (toM - fromM) / parts;
        double begin = heading - piece.turned(fromM);
        for (int part = 0; part < parts; part++) {
            double middle = fromM + (2 * part + 1) * half;
            for (int i = 0; i < NODES.length; i++) {
                double direction = begin + piece.turned(middle + half * NODES[i]);
                x += half * WEIGHTS[i] * Math.cos(direction);
                y += half * WEIGHTS[i] * Math.sin(direction);
            }
        }
        heading = begin + piece.turned(toM);
    }

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    double heading() {
        return heading;
    }
}
