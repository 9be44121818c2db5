package setwright.core.car.body;

/** Solves three equations with a symmetric positive definite matrix; a library's general solver would allocate in each step. */
final class Symmetric3 {
    private Symmetric3() {}

    /**
     * Solves in place.
     *
     * @param m  entries xx, xy, xz, yy, yz, zz
     * @param b  right-hand side; receives the solution
     */
    static void solve(double[] m, double[] b) {
        double l21 = m[1] / m[0];
        double l31 = m[2] / m[0];
        double d2 = m[3] - l21 * m[1];
        double l32 = (m[4] - l31 * m[1]) / d2;
        double d3 = m[5] - l31 * m[2] - l32 * l32 * d2;
        double y2 = b[1] - l21 * b[0];
        double y3 = b[2] - l31 * b[0] - l32 * y2;
        b[2] = y3 / d3;
        b[1] = y2 / d2 - l32 * b[2];
        b[0] = b[0] / m[0] - l21 * b[1] - l31 * b[2];
    }
}
