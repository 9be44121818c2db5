package setwright.core.simulation.layout;

/**
 * A part of a line along which curvature changes linearly: straight, arc or clothoid.
 *
 * @param lengthM  m, &gt; 0
 * @param from     curvature where it begins, 1/m, left positive
 * @param to       curvature where it ends, 1/m
 */
public record CurvaturePiece(double lengthM, double from, double to) {

    /** Returns the curvature at a distance from its beginning, 1/m. */
    public double curvature(double alongM) {
        return from + (to - from) * alongM / lengthM;
    }

    /** Returns the angle by which the direction has turned at a distance from its beginning, rad. */
    public double turned(double alongM) {
        return alongM * (from + 0.5 * (to - from) * alongM / lengthM);
    }
}
